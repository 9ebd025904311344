import { bracketedRoot } from '../../inverter/bracketed-root.ts';
import { breakdownSlip } from './breakdown.ts';
import { type CatalogueRow, type FitTarget, fitTarget } from './catalogue-row.ts';
import type { EquivalentCircuit } from './equivalent-circuit.ts';
import { type FitAssumption, fitCandidate, fitStator } from './fit-candidate.ts';
import { rotationalTorque } from './machine-state.ts';
import { gapConductance } from './solve-phase.ts';

/** Likeliest first: the next is taken only where the row allows none before it. */
const assumptions: readonly FitAssumption[] = [0.65, 0.5, 0.8, 0.35, 0.2].flatMap((statorLossShare) =>
  [0.5, 0.4, 0.6, 0.3, 0.2, 0.1].map((statorReactanceShare) => ({ statorLossShare, statorReactanceShare })),
);

const SCAN_POINTS = 24;
const SCAN_FROM = 0.01;

function largestShaftTorque(circuit: EquivalentCircuit, target: FitTarget): number {
  const slip = breakdownSlip(circuit, 1);
  const electric = (3 * target.voltageV ** 2 * gapConductance(circuit, 1, slip)) / target.synchronousRadPerS;
  return electric - rotationalTorque(circuit, (1 - slip) * target.synchronousRadPerS);
}

/** The circuit that also has the row's pull-out torque, or what pull-out torques these assumptions allow. */
function fitUnder(
  row: CatalogueRow,
  target: FitTarget,
  assumed: FitAssumption,
): { circuit: EquivalentCircuit | null; torquesNm: readonly number[] } {
  const stator = fitStator(row, target, assumed);
  // Above this reactance the rotor cannot carry the rated power at all.
  const largestOhm = stator.gapVoltageV ** 2 / (2 * stator.gapPowerW);
  const excessAt = (reactanceOhm: number): number => {
    const circuit = fitCandidate(row, target, stator, reactanceOhm);
    return circuit === null ? Number.NaN : largestShaftTorque(circuit, target) - target.breakdownTorqueNm;
  };
  const torquesNm: number[] = [];
  let before: { reactanceOhm: number; excess: number } | null = null;
  for (let point = 0; point < SCAN_POINTS; point++) {
    const reactanceOhm = largestOhm * SCAN_FROM ** (1 - point / (SCAN_POINTS - 1));
    const excess = excessAt(reactanceOhm);
    if (Number.isNaN(excess)) {
      before = null;
      continue;
    }
    if (before && before.excess > 0 !== excess > 0) {
      const root = bracketedRoot({ lower: before.reactanceOhm, upper: reactanceOhm, valueAt: excessAt });
      return { circuit: fitCandidate(row, target, stator, root), torquesNm };
    }
    before = { reactanceOhm, excess };
    torquesNm.push(excess + target.breakdownTorqueNm);
  }
  return { circuit: null, torquesNm };
}

/**
 * Equivalent circuit of a motor from its row in a catalogue. It gives the row back: rated power, efficiency, power factor and
 * speed, locked-rotor current and torque, and pull-out torque, each to 1 part in 10⁶. Rotor values run in a straight
 * line from standstill to no slip. What a row does not say is assumed: losses outside the rotor split into stator
 * winding 65 %, iron 20 %, friction, windage and stray together 15 %; half the leakage at standstill in the stator; other
 * splits only where the row leaves no machine with these.
 *
 * @param row.ratedPowerW              power at the shaft [W], above 0
 * @param row.lineVoltageV             voltage line to line [V], above 0
 * @param row.frequencyHz              frequency [Hz], above 0
 * @param row.connection               star or delta, as joined for that voltage
 * @param row.efficiencyRatio          efficiency [1], above 0, below 1 − slip
 * @param row.powerFactor              power factor [1], above 0, below 1
 * @param row.ratedSpeedRpm            speed [1/min]; the number of poles follows from it
 * @param row.lockedRotorCurrentRatio  by rated current [1], above 1
 * @param row.lockedRotorTorqueRatio   by rated torque [1], above 0, at most breakdownTorqueRatio
 * @param row.breakdownTorqueRatio     by rated torque [1], above 1
 * @returns the circuit, of one winding
 * @throws   {RangeError} a value outside its limits, or a row that no machine of this kind can have; names the field
 * Valid for: cage motors on sinusoidal supply; between the points of the row the curve is a likely one, not a measured one.
 * Source:   derived (equivalent circuit of fitzgerald, ch. 6, solved for the row)
 * Example:  lockedRotor({ circuit: fitFromCatalogue(exampleRow), lineVoltageV: 400, frequencyHz: 50 }).lineCurrentA → 79.4
 */
export function fitFromCatalogue(row: CatalogueRow): EquivalentCircuit {
  const target = fitTarget(row);
  const torquesNm: number[] = [];
  for (const assumed of assumptions) {
    const fit = fitUnder(row, target, assumed);
    if (fit.circuit) return fit.circuit;
    torquesNm.push(...fit.torquesNm);
  }
  if (torquesNm.length === 0) {
    throw new RangeError(
      `lockedRotorCurrentRatio: expected a current that rated power factor, lockedRotorTorqueRatio and the losses leave room for, found ${row.lockedRotorCurrentRatio}`,
    );
  }
  const [from, upTo] = [Math.min(...torquesNm), Math.max(...torquesNm)].map((torqueNm) =>
    (torqueNm / target.ratedTorqueNm).toPrecision(3),
  );
  throw new RangeError(
    `breakdownTorqueRatio: expected about ${from} to ${upTo}, as the rest of the row allows, found ${row.breakdownTorqueRatio}`,
  );
}
