import { checkedNumber } from '../../ac/checked-number.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';

/** Readings of a three-phase test. */
export type TestReadings = { lineVoltageV: number; currentA: number; inputPowerW: number };

function seriesOf(name: string, readings: TestReadings): { resistanceOhm: number; reactanceOhm: number } {
  const voltageV = checkedNumber(`${name}.lineVoltageV`, readings.lineVoltageV, { above: 0 });
  const currentA = checkedNumber(`${name}.currentA`, readings.currentA, { above: 0 });
  const impedanceOhm = voltageV / (Math.sqrt(3) * currentA);
  const inputPowerW = checkedNumber(`${name}.inputPowerW`, readings.inputPowerW, {
    min: 0,
    max: Math.sqrt(3) * voltageV * currentA,
  });
  const resistanceOhm = inputPowerW / (3 * currentA ** 2);
  return { resistanceOhm, reactanceOhm: Math.sqrt(impedanceOhm ** 2 - resistanceOhm ** 2) };
}

/**
 * Circuit of a machine from its no-load and its locked-rotor test, as one phase in star.
 *
 * @param given.polePairs             pole pairs, 1 or more
 * @param given.frequencyHz           rated frequency, that of the no-load test [Hz], above 0
 * @param given.statorResistanceOhm   resistance of one phase in star [Ω], 0 or more
 * @param given.statorToRotorRatio    stator by rotor leakage reactance [1], above 0
 * @param given.noLoad                lineVoltageV [V], currentA [A] and inputPowerW [W], running free
 * @param given.lockedRotor           the same with the rotor held, at reduced voltage and frequencyHz [Hz]
 * @returns the circuit; its rotational loss holds friction, windage and iron together
 * @throws   {RangeError} a value outside its limits, more watts than volt-amperes, or readings that leave a value negative
 * Formula:  X_nl = X1 + Xm;  X_lr = X1 + X2·Xm/(X2 + Xm);  R2 = (R_lr − R1)·((X2 + Xm)/Xm)²
 * Valid for: a locked-rotor test at reduced frequency gives the rotor as it is when running, one at full frequency as at standstill.
 * Source:   fitzgerald, ex. 6.5
 * Example:  circuitFromTests({ polePairs: 2, frequencyHz: 60, statorResistanceOhm: 0.262, statorToRotorRatio: 0.429, noLoad: { lineVoltageV: 219, currentA: 5.7, inputPowerW: 380 }, lockedRotor: { lineVoltageV: 26.5, currentA: 18.57, inputPowerW: 675, frequencyHz: 15 } }).rotorResistanceOhm → 0.447
 */
export function circuitFromTests(given: {
  polePairs: number;
  frequencyHz: number;
  statorResistanceOhm: number;
  statorToRotorRatio: number;
  noLoad: TestReadings;
  lockedRotor: TestReadings & { frequencyHz: number };
}): EquivalentCircuit {
  const { polePairs } = given;
  const frequencyHz = checkedNumber('frequencyHz', given.frequencyHz, { above: 0 });
  const statorResistanceOhm = checkedNumber('statorResistanceOhm', given.statorResistanceOhm, { min: 0 });
  const ratio = checkedNumber('statorToRotorRatio', given.statorToRotorRatio, { above: 0 });
  const testHz = checkedNumber('lockedRotor.frequencyHz', given.lockedRotor.frequencyHz, { above: 0 });
  const free = seriesOf('noLoad', given.noLoad);
  const held = seriesOf('lockedRotor', given.lockedRotor);
  const heldReactanceOhm = (held.reactanceOhm * frequencyHz) / testHz;

  // X1 = k·X2 in X_lr = X1 + X2·Xm/(X2 + Xm) with Xm = X_nl − X1 leaves one quadratic for X2.
  const a = ratio * (1 - ratio) - ratio;
  const b = free.reactanceOhm * (ratio + 1) - heldReactanceOhm * (1 - ratio);
  const c = -heldReactanceOhm * free.reactanceOhm;
  const rotorReactanceOhm = (-2 * c) / (b + Math.sqrt(Math.max(0, b * b - 4 * a * c)));
  const statorReactanceOhm = ratio * rotorReactanceOhm;
  const magnetisingReactanceOhm = free.reactanceOhm - statorReactanceOhm;
  if (!(magnetisingReactanceOhm > 0) || !(b * b >= 4 * a * c)) {
    throw new RangeError(
      `lockedRotor.lineVoltageV: expected a reactance well below that at no load (${free.reactanceOhm.toPrecision(3)} Ω), found ${heldReactanceOhm.toPrecision(3)} Ω at ${frequencyHz} Hz`,
    );
  }
  if (!(held.resistanceOhm > statorResistanceOhm)) {
    throw new RangeError(
      `statorResistanceOhm: expected less than the resistance with the rotor held (${held.resistanceOhm.toPrecision(3)} Ω), found ${statorResistanceOhm} Ω`,
    );
  }
  const statorLossW = 3 * given.noLoad.currentA ** 2 * statorResistanceOhm;
  const rotationalLossW =
    checkedNumber('noLoad.inputPowerW', given.noLoad.inputPowerW, { min: statorLossW }) - statorLossW;
  return {
    connection: 'star',
    polePairs,
    referenceFrequencyHz: frequencyHz,
    statorResistanceOhm,
    statorReactanceOhm,
    magnetisingReactanceOhm,
    coreLossResistanceOhm: null,
    rotorResistanceOhm:
      (held.resistanceOhm - statorResistanceOhm) *
      ((rotorReactanceOhm + magnetisingReactanceOhm) / magnetisingReactanceOhm) ** 2,
    rotorReactanceOhm,
    rotationalLossW,
  };
}
