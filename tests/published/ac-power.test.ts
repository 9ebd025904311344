import { describe, expect, it } from 'vitest';
import {
  type Complex,
  complexAngleDeg,
  complexMagnitude,
  complexPower,
  complexSum,
  loadCurrent,
  neutralCurrent,
  phasor,
  powerTriangle,
  reactivePowerCapacitor,
  rmsOfHarmonics,
  seriesImpedance,
  twoWattmeter,
} from '../../src/engine/ac/index.ts';
import { coil, coilAndCapacitor, correction, need, onSupply, starAndDelta } from './ac-solvers.ts';
import { type Solver, testRows } from './expect-printed.ts';
import { acPowerRows } from './rows/ac-power.ts';

const solvers: Record<string, Solver> = {
  'AC-01': coil,
  'AC-02': coilAndCapacitor,
  'AC-04': coil,
  'AC-05': (given) => {
    const resistanceOhm = need(given, 'directV') / need(given, 'directA');
    const currentA = need(given, 'currentA');
    const { reactivePowerVar } = powerTriangle({
      realPowerW: currentA ** 2 * resistanceOhm,
      apparentPowerVa: need(given, 'voltageV') * currentA,
    });
    const reactanceOhm = reactivePowerVar / currentA ** 2;
    const inductanceH = reactanceOhm / (2 * Math.PI * need(given, 'frequencyHz'));
    const impedance = seriesImpedance({
      resistanceOhm,
      inductanceH,
      frequencyHz: need(given, 'frequencyHz'),
    });
    return {
      resistanceOhm,
      impedanceOhm: complexMagnitude(impedance),
      reactanceOhm: impedance.im,
      inductanceH,
    };
  },
  'AC-07': coilAndCapacitor,
  'AC-08': (given) =>
    complexPower(
      { re: need(given, 'voltageRe'), im: need(given, 'voltageIm') },
      { re: need(given, 'currentRe'), im: need(given, 'currentIm') },
    ),
  'AC-10': (given) => {
    const load = onSupply(
      { re: need(given, 'resistanceOhm'), im: need(given, 'reactanceOhm') },
      need(given, 'voltageV'),
    );
    const { powerFactor } = powerTriangle({
      realPowerW: load.realPowerW,
      apparentPowerVa: load.apparentPowerVa,
    });
    const added = correction({ ...given, powerFactor }, load.realPowerW, 'single-phase');
    return { ...load, correctionVar: added.reactivePowerVar, capacitanceF: added.capacitanceF };
  },
  'AC-11': (given) => {
    const apparentPowerVa = Math.sqrt(3) * need(given, 'lineVoltageV') * need(given, 'currentA');
    const { powerFactor } = powerTriangle({ realPowerW: need(given, 'realPowerW'), apparentPowerVa });
    return { powerFactor };
  },
  'AC-12': (given) => {
    const { realPowerW } = powerTriangle({
      apparentPowerVa: need(given, 'voltageV') * need(given, 'currentA'),
      powerFactor: need(given, 'powerFactor'),
    });
    const supply = loadCurrent({
      realPowerW,
      powerFactor: need(given, 'target'),
      voltageV: need(given, 'voltageV'),
      phases: 1,
    });
    return {
      capacitorA: correction(given, realPowerW, 'single-phase').lineCurrentA,
      supplyA: supply.currentA,
    };
  },
  'AC-13': (given) => {
    const nameplate = {
      realPowerW: need(given, 'outputW'),
      efficiencyRatio: need(given, 'efficiencyRatio'),
      voltageV: need(given, 'voltageV'),
      phases: 1,
    } as const;
    const added = correction(given, nameplate.realPowerW / nameplate.efficiencyRatio, 'single-phase');
    return {
      currentA: loadCurrent({ ...nameplate, powerFactor: need(given, 'powerFactor') }).currentA,
      supplyA: loadCurrent({ ...nameplate, powerFactor: need(given, 'target') }).currentA,
      capacitorA: added.lineCurrentA,
      capacitanceF: added.capacitanceF,
      correctionVar: added.reactivePowerVar,
    };
  },
  'AC-15': (given) => {
    const { realPowerW } = powerTriangle({
      apparentPowerVa: need(given, 'apparentPowerVa'),
      powerFactor: need(given, 'powerFactor'),
    });
    return { correctionVar: correction(given, realPowerW, 'delta').reactivePowerVar };
  },
  'AC-18': (given) => {
    const { reactivePowerVar } = correction(given, need(given, 'realPowerW'), 'delta');
    return { correctionVar: reactivePowerVar, perPhaseVar: reactivePowerVar / 3 };
  },
  'AC-19': (given) => {
    const added = correction(given, need(given, 'outputW') / need(given, 'efficiencyRatio'), 'delta');
    // Equal capacitors in series: the branch has a quarter of one unit's capacitance.
    return { unitCapacitanceF: added.capacitanceF * need(given, 'unitsInSeries') };
  },
  'AC-20': (given) =>
    reactivePowerCapacitor({
      reactivePowerVar: need(given, 'correctionVar'),
      voltageV: need(given, 'voltageV'),
      frequencyHz: need(given, 'frequencyHz'),
      connection: 'single-phase',
    }),
  'AC-21': (given) => {
    const voltageV = need(given, 'phaseVoltageV');
    const currentOf = (name: string) =>
      loadCurrent({ realPowerW: need(given, name), voltageV, phases: 1 }).currentA;
    const [firstA, secondA, thirdA] = [currentOf('firstW'), currentOf('secondW'), currentOf('thirdW')];
    const phases = [{ currentA: firstA }, { currentA: secondA }, { currentA: thirdA }] as const;
    return { firstA, secondA, thirdA, neutralA: neutralCurrent({ phases }).currentA };
  },
  'AC-23': (given) => {
    const lamps = ['firstA', 'secondA', 'thirdA'].map((name) => need(given, name));
    const [first = 0, second = 0, third = 0] = lamps;
    const motorLagDeg = (Math.acos(need(given, 'motorPowerFactor')) * 180) / Math.PI;
    const lines = lamps.map((lampA) =>
      complexSum([phasor(lampA, 0), phasor(need(given, 'motorA'), -motorLagDeg)]),
    );
    const asPhase = (line: Complex | undefined) => ({
      currentA: complexMagnitude(line ?? { re: 0, im: 0 }),
      lagDeg: -complexAngleDeg(line ?? { re: 0, im: 0 }),
    });
    const withMotor = [asPhase(lines[0]), asPhase(lines[1]), asPhase(lines[2])] as const;
    const motor = powerTriangle({
      apparentPowerVa: Math.sqrt(3) * need(given, 'lineVoltageV') * need(given, 'motorA'),
      powerFactor: need(given, 'motorPowerFactor'),
    });
    return {
      neutralA: neutralCurrent({ phases: [{ currentA: first }, { currentA: second }, { currentA: third }] })
        .currentA,
      neutralWithMotorA: neutralCurrent({ phases: withMotor }).currentA,
      firstLineA: withMotor[0].currentA,
      secondLineA: withMotor[1].currentA,
      thirdLineA: withMotor[2].currentA,
      lampsW: complexPower({ re: need(given, 'phaseVoltageV'), im: 0 }, { re: first + second + third, im: 0 })
        .realPowerW,
      motorW: motor.realPowerW,
    };
  },
  'AC-24': (given) => {
    const supply = { voltageV: need(given, 'phaseVoltageV'), phases: 1 } as const;
    const firstA = loadCurrent({ ...supply, realPowerW: need(given, 'firstW') }).currentA;
    const secondA = loadCurrent({ ...supply, apparentPowerVa: need(given, 'secondVa') }).currentA;
    const thirdA = loadCurrent({ ...supply, apparentPowerVa: need(given, 'thirdVa') }).currentA;
    const lagDeg = need(given, 'lagDeg');
    const first = { currentA: firstA };
    const second = { currentA: secondA, lagDeg };
    return {
      firstA,
      secondA,
      thirdA,
      neutralA: neutralCurrent({ phases: [first, second, { currentA: thirdA, lagDeg: -lagDeg }] }).currentA,
      neutralThirdOffA: neutralCurrent({ phases: [first, second, { currentA: 0 }] }).currentA,
    };
  },
  'AC-26': starAndDelta,
  'AC-27': starAndDelta,
  'AC-29': starAndDelta,
  'AC-31': (given) => {
    const { realPowerW, powerFactor } = twoWattmeter({
      firstW: need(given, 'firstW'),
      secondW: need(given, 'secondW'),
    });
    return { realPowerW, powerFactor };
  },
  'AC-33': (given) => {
    const neutral = (currentA: number, harmonicOrder: number) =>
      neutralCurrent({ phases: [{ currentA }, { currentA }, { currentA }], harmonicOrder }).currentA;
    return {
      thirdNeutralA: neutral(need(given, 'harmonicA'), 3),
      fifthNeutralA: neutral(need(given, 'harmonicA'), 5),
      ninthNeutralA: neutral(need(given, 'harmonicA'), 9),
      fundamentalNeutralA: neutral(need(given, 'fundamentalA'), 1),
    };
  },
  'AC-34': (given) => {
    const fundamentalA = need(given, 'fundamentalA');
    const thirdA = need(given, 'thirdA');
    const phaseA = rmsOfHarmonics({ peaks: [fundamentalA * Math.SQRT2, thirdA * Math.SQRT2] });
    const third = { currentA: thirdA };
    const neutralA = neutralCurrent({ phases: [third, third, third], harmonicOrder: 3 }).currentA;
    return { phaseA, neutralA, neutralToPhase: neutralA / phaseA };
  },
  'AC-35': coil,
};

describe('published AC power', () => {
  testRows(acPowerRows, solvers);

  it('AC-24 would have about half the neutral current if both loads lagged, as one reprint has it', () => {
    const phases = [
      { currentA: 20_000 / 230 },
      { currentA: 125, lagDeg: 30 },
      { currentA: 125, lagDeg: 30 },
    ] as const;
    // By hand: R + Y∠−150° + B∠90° = R − 125·cos 30° + j(125 − 62.5).
    const byHand = Math.hypot(20_000 / 230 - 125 * Math.cos(Math.PI / 6), 62.5);
    expect(neutralCurrent({ phases }).currentA).toBeCloseTo(byHand, 9);
    expect(byHand).toBeCloseTo(66.03, 2);
  });

  it('AC-02 keeps lagging after correction', () => {
    const row = acPowerRows.find((candidate) => candidate.id === 'AC-02');
    expect(coilAndCapacitor(row?.given ?? {})['angleDeg']).toBeCloseTo(-0.27, 2);
  });
});
