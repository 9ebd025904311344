import { describe, expect, it } from 'vitest';
import { type Complex, complexMagnitude, complexProduct, complexQuotient } from '../../ac/index.ts';
import { fieldImpedances } from './field-impedances.ts';
import { mainWindingState } from './main-winding-state.ts';
import type { SinglePhaseCircuit } from './single-phase-circuit.ts';
import { twoWindingState } from './two-winding-state.ts';

/** Circuit of fitzgerald, ex. 9.2. */
const circuit: SinglePhaseCircuit = {
  mainResistanceOhm: 2.02,
  mainReactanceOhm: 2.79,
  magnetizingReactanceOhm: 66.8,
  rotorResistanceOhm: 4.12,
  rotorReactanceOhm: 2.12,
  frequencyHz: 60,
  polePairs: 2,
  rotationalLossW: 37,
  rotationalLossSpeedRpm: 1710,
};
const auxiliary = { turnsRatio: 1.3, resistanceOhm: 7, reactanceOhm: 3.5 };
const capacitor = { re: 0, im: -30 };

const difference = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });

/** Complex elimination without row exchange; the coils' own impedances stand on the diagonal. */
function solved(equations: readonly (readonly Complex[])[]): Complex[] {
  let rows = equations.map((row) => [...row]);
  for (let k = 0; k < rows.length; k++) {
    const pivot = rows[k] ?? [];
    const unit = pivot.map((value) => complexQuotient(value, pivot[k] ?? { re: 0, im: 0 }));
    rows = rows.map((row, i) =>
      i === k
        ? unit
        : row.map((value, j) => difference(value, complexProduct(row[k] ?? value, unit[j] ?? value))),
    );
  }
  return rows.map((row) => row.at(-1) ?? { re: Number.NaN, im: Number.NaN });
}

/**
 * The same motor as four coupled coils on two axes that stand still: main winding and rotor on one, auxiliary winding
 * and rotor on the other. No revolving field occurs in it, so it is a second way to the same answer.
 */
function coupledCoils(voltageV: number, slipRatio: number) {
  const { magnetizingReactanceOhm: xm, rotorReactanceOhm: x2, rotorResistanceOhm: r2 } = circuit;
  const a = auxiliary.turnsRatio;
  const speed = 1 - slipRatio;
  const nought = { re: 0, im: 0 };
  const voltage = { re: voltageV, im: 0 };
  const rotor = { re: r2, im: x2 + xm };
  const [main = nought, aux = nought, rotorMain = nought, rotorAux = nought] = solved([
    [
      { re: circuit.mainResistanceOhm, im: circuit.mainReactanceOhm + xm },
      nought,
      { re: 0, im: xm },
      nought,
      voltage,
    ],
    [
      nought,
      { re: auxiliary.resistanceOhm, im: auxiliary.reactanceOhm + capacitor.im + a * a * xm },
      nought,
      { re: 0, im: a * xm },
      voltage,
    ],
    // Turning from the auxiliary towards the main axis.
    [{ re: 0, im: xm }, { re: -speed * a * xm, im: 0 }, rotor, { re: -speed * (x2 + xm), im: 0 }, nought],
    [{ re: speed * xm, im: 0 }, { re: 0, im: a * xm }, { re: speed * (x2 + xm), im: 0 }, rotor, nought],
  ]);
  const along = (p: Complex, q: Complex) => p.re * q.re + p.im * q.im;
  const inductanceH = xm / (2 * Math.PI * circuit.frequencyHz);
  const torqueNm = circuit.polePairs * inductanceH * (along(main, rotorAux) - a * along(aux, rotorMain));
  return { main, auxiliary: aux, torqueNm };
}

describe('two windings', () => {
  it.each([1, 0.7, 0.3, 0.05, 0, -0.05, 1.4, 2])('agree with four coupled coils at slip %f', (slipRatio) => {
    const coils = coupledCoils(110, slipRatio);
    const state = twoWindingState(circuit, { auxiliary, series: capacitor }, { voltageV: 110, slipRatio });
    expect(complexMagnitude(difference(state.mainCurrent, coils.main))).toBeLessThan(1e-11);
    expect(complexMagnitude(difference(state.auxiliaryCurrent, coils.auxiliary))).toBeLessThan(1e-11);
    expect(state.torqueNm).toBeCloseTo(coils.torqueNm, 11);
  });

  it('start in proportion to both currents and the sine of the angle between them', () => {
    const state = twoWindingState(circuit, { auxiliary, series: capacitor }, { voltageV: 110, slipRatio: 1 });
    const { mainCurrent: main, auxiliaryCurrent: aux } = state;
    const product = main.re * aux.im - main.im * aux.re;
    // By hand: |F|² − |B|² = 4·a·I_m·I_a·sin α, times R_f, over ω_s = 2π·30 rad/s; rotorOhm is 2·R_f.
    const rotorOhm = 2 * fieldImpedances(circuit, 1).forwardOhm;
    expect(state.torqueNm).toBeCloseTo(
      (2 * auxiliary.turnsRatio * rotorOhm * product) / (2 * Math.PI * 30),
      12,
    );
    expect(state.torqueNm).toBeGreaterThan(0);
  });

  it('draw the capacitor’s current over its reactance', () => {
    const state = twoWindingState(circuit, { auxiliary, series: capacitor }, { voltageV: 110, slipRatio: 1 });
    expect(state.capacitorVoltageV).toBeCloseTo(30 * complexMagnitude(state.auxiliaryCurrent), 12);
  });

  it('are one winding when the auxiliary branch lets nothing through', () => {
    const cut = { auxiliary, series: { re: 1e9, im: 0 } };
    const two = twoWindingState(circuit, cut, { voltageV: 110, slipRatio: 0.05 });
    const one = mainWindingState(circuit, { voltageV: 110, slipRatio: 0.05 });
    expect(two.torqueNm).toBeCloseTo(one.torqueNm, 6);
    expect(two.currentA).toBeCloseTo(one.currentA, 6);
  });

  it('refuse values that cannot be, by name', () => {
    const at = { voltageV: 110, slipRatio: 1 };
    const branch = { auxiliary, series: capacitor };
    expect(() => twoWindingState({ ...circuit, rotorResistanceOhm: 0 }, branch, at)).toThrow(
      /rotorResistanceOhm/,
    );
    expect(() => twoWindingState({ ...circuit, polePairs: 1.5 }, branch, at)).toThrow(/polePairs/);
    expect(() => twoWindingState(circuit, branch, { ...at, voltageV: -1 })).toThrow(/voltageV/);
    expect(() =>
      twoWindingState(circuit, { ...branch, auxiliary: { ...auxiliary, turnsRatio: 0 } }, at),
    ).toThrow(/turnsRatio/);
  });
});

describe('the main winding alone', () => {
  it('turns at synchronous speed with a brake from the backward field only', () => {
    const state = mainWindingState(circuit, { voltageV: 110, slipRatio: 0 });
    expect(state.forwardTorqueNm).toBe(0);
    expect(state.torqueNm).toBeLessThan(0);
    expect(state.efficiencyRatio).toBe(0);
  });

  it('loses nothing to rotation at standstill, and the stated loss at the stated speed', () => {
    expect(mainWindingState(circuit, { voltageV: 110, slipRatio: 1 }).rotationalLossW).toBe(0);
    expect(mainWindingState(circuit, { voltageV: 110, slipRatio: 0.05 }).rotationalLossW).toBeCloseTo(37, 12);
  });

  it('draws nothing without voltage', () => {
    const state = mainWindingState(circuit, { voltageV: 0, slipRatio: 0.05 });
    expect([state.currentA, state.powerFactor, state.torqueNm]).toEqual([0, 0, 0]);
  });
});
