import {
  type Complex,
  complexAngleDeg,
  complexMagnitude,
  complexPower,
  complexQuotient,
  correctionCapacitor,
  parallelImpedance,
  powerTriangle,
  seriesImpedance,
  threePhaseLoad,
} from '../../src/engine/ac/index.ts';
import type { Solver } from './expect-printed.ts';

/** A given of a row; a name that is not there must fail loudly. */
export function need(given: Readonly<Record<string, number>>, name: string): number {
  const value = given[name];
  if (value === undefined) throw new Error(`the row gives no ${name}`);
  return value;
}

export function onSupply(impedance: Complex, voltageV: number) {
  const voltage = { re: voltageV, im: 0 };
  const current = complexQuotient(voltage, impedance);
  return {
    currentA: complexMagnitude(current),
    currentAngleDeg: complexAngleDeg(current),
    impedanceOhm: complexMagnitude(impedance),
    ...complexPower(voltage, current),
  };
}

export const coil: Solver = (given) => {
  const impedance = seriesImpedance({
    resistanceOhm: need(given, 'resistanceOhm'),
    inductanceH: need(given, 'inductanceH'),
    frequencyHz: need(given, 'frequencyHz'),
  });
  const load = onSupply(impedance, need(given, 'voltageV'));
  const { powerFactor } = powerTriangle({
    realPowerW: load.realPowerW,
    reactivePowerVar: load.reactivePowerVar,
  });
  return { ...load, reactanceOhm: impedance.im, angleDeg: complexAngleDeg(impedance), powerFactor };
};

export const coilAndCapacitor: Solver = (given) => {
  const frequencyHz = need(given, 'frequencyHz');
  const coilOnly = coil(given);
  const branch = seriesImpedance({
    resistanceOhm: need(given, 'resistanceOhm'),
    inductanceH: need(given, 'inductanceH'),
    frequencyHz,
  });
  const capacitor = seriesImpedance({ capacitanceF: need(given, 'capacitanceF'), frequencyHz });
  const load = onSupply(parallelImpedance([branch, capacitor]), need(given, 'voltageV'));
  return {
    ...load,
    angleDeg: load.currentAngleDeg,
    coilA: coilOnly['currentA'] ?? Number.NaN,
    coilAngleDeg: coilOnly['currentAngleDeg'] ?? Number.NaN,
    capacitorA: onSupply(capacitor, need(given, 'voltageV')).currentA,
    powerFactor: load.realPowerW / load.apparentPowerVa,
  };
};

export const correction = (
  given: Readonly<Record<string, number>>,
  realPowerW: number,
  connection: 'single-phase' | 'delta',
) =>
  correctionCapacitor({
    realPowerW,
    powerFactor: need(given, 'powerFactor'),
    targetPowerFactor: need(given, 'target'),
    // Rows that ask for reactive power only give neither voltage nor frequency; both leave it unchanged.
    voltageV: given['voltageV'] ?? 230,
    frequencyHz: given['frequencyHz'] ?? 50,
    connection,
  });

export const starAndDelta: Solver = (given) => {
  const impedance = {
    re: need(given, 'resistanceOhm'),
    im:
      given['reactanceOhm'] ??
      seriesImpedance({ inductanceH: need(given, 'inductanceH'), frequencyHz: need(given, 'frequencyHz') })
        .im,
  };
  const lineVoltageV = need(given, 'lineVoltageV');
  const star = threePhaseLoad({ connection: 'star', impedance, lineVoltageV });
  const delta = threePhaseLoad({ connection: 'delta', impedance, lineVoltageV });
  return {
    starLineA: star.lineCurrentA,
    deltaPhaseA: delta.phaseCurrentA,
    deltaLineA: delta.lineCurrentA,
    lineA: delta.lineCurrentA,
    starW: star.realPowerW,
    deltaW: delta.realPowerW,
    realPowerW: delta.realPowerW,
    apparentPowerVa: delta.apparentPowerVa,
  };
};
