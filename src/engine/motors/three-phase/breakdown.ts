import { checkSupply, type EquivalentCircuit, type MachineSupply } from './equivalent-circuit.ts';
import { machineState } from './machine-state.ts';
import { gapConductance } from './solve-phase.ts';
import { breakdownSlipOf } from './thevenin.ts';

const SCAN_FROM = 1e-3;
const SCAN_POINTS = 48;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Slip of the largest value between two slips: golden section, to half the digits of a number, as flat tops allow. */
function topBetween(lower: number, upper: number, valueAt: (slip: number) => number): number {
  let a = lower;
  let b = upper;
  let c = b - GOLDEN * (b - a);
  let d = a + GOLDEN * (b - a);
  let atC = valueAt(c);
  let atD = valueAt(d);
  while (b - a > 1e-8 * b) {
    if (atC > atD) {
      b = d;
      d = c;
      atD = atC;
      c = b - GOLDEN * (b - a);
      atC = valueAt(c);
    } else {
      a = c;
      c = d;
      atC = atD;
      d = a + GOLDEN * (b - a);
      atD = valueAt(d);
    }
  }
  return (a + b) / 2;
}

/** Slip at which a machine's torque is largest, by search where its rotor values change with slip. */
export function breakdownSlip(circuit: EquivalentCircuit, frequencyRatio: number): number {
  const { atStandstill } = circuit;
  if (!atStandstill) {
    return breakdownSlipOf(circuit, frequencyRatio, circuit.rotorResistanceOhm, circuit.rotorReactanceOhm);
  }
  const valueAt = (slip: number): number => gapConductance(circuit, frequencyRatio, slip);
  // From here on the rotor keeps its standstill values, so a top beyond has the closed form again.
  const endOfChange = 1 / frequencyRatio;
  const slipAt = (point: number): number =>
    endOfChange * SCAN_FROM ** (1 - Math.min(SCAN_POINTS, Math.max(0, point)) / SCAN_POINTS);
  let best = SCAN_POINTS;
  for (let point = 0; point < SCAN_POINTS; point++) {
    if (valueAt(slipAt(point)) > valueAt(slipAt(best))) best = point;
  }
  const beyond = breakdownSlipOf(
    circuit,
    frequencyRatio,
    atStandstill.rotorResistanceOhm,
    atStandstill.rotorReactanceOhm,
  );
  const within = topBetween(slipAt(best - 1), slipAt(best + 1), valueAt);
  return beyond > endOfChange && valueAt(beyond) > valueAt(within) ? beyond : within;
}

/**
 * The largest torque a machine can give, and where: loaded beyond it, it stalls. In closed form where the rotor values
 * are constant, by search where they change with slip.
 *
 * @param given.circuit       the machine, see EquivalentCircuit
 * @param given.lineVoltageV  voltage line to line [V], 0 or more
 * @param given.frequencyHz   supply frequency [Hz], above 0
 * @returns slipRatio [1] (above 1 if torque still rises at standstill), speedRpm [1/min], torqueNm, the electromagnetic
 *          torque there [N·m], shaftTorqueNm [N·m] and lineCurrentA [A]
 * @throws   {RangeError} a value outside its limits
 * Formula:  s = R2/√(R_th² + (X_th + X2)²);  T = 3·V_th²/(2·ω_s·(R_th + √(R_th² + (X_th + X2)²)))
 * Valid for: balanced sinusoidal supply, steady state.
 * Source:   fitzgerald, ch. 6
 * Example:  breakdown({ circuit: exampleCircuit, lineVoltageV: 400, frequencyHz: 50 }).slipRatio → 0.231
 */
export function breakdown(given: MachineSupply): {
  slipRatio: number;
  speedRpm: number;
  torqueNm: number;
  shaftTorqueNm: number;
  lineCurrentA: number;
} {
  checkSupply(given);
  const { circuit, frequencyHz } = given;
  const slipRatio = breakdownSlip(circuit, frequencyHz / circuit.referenceFrequencyHz);
  const state = machineState({ ...given, slipRatio });
  return {
    slipRatio,
    speedRpm: state.speedRpm,
    torqueNm: state.electromagneticTorqueNm,
    shaftTorqueNm: state.shaftTorqueNm,
    lineCurrentA: state.lineCurrentA,
  };
}
