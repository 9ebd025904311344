import { type Complex, checkedNumber } from '../../ac/index.ts';
import { auxiliaryFor, type SinglePhaseKind } from './auxiliary-for.ts';
import { mainWindingState } from './main-winding-state.ts';
import type { AuxiliaryWinding, SinglePhaseCircuit } from './single-phase-circuit.ts';
import type { SinglePhaseState } from './single-phase-state.ts';
import { twoWindingState } from './two-winding-state.ts';

/** A single-phase motor with its auxiliary winding, capacitors and centrifugal switch. */
export interface SinglePhaseMotor {
  readonly kind: SinglePhaseKind;
  readonly circuit: SinglePhaseCircuit;
  readonly auxiliary: AuxiliaryWinding;
  /** for 'capacitor-start' and 'capacitor-run' [F]; with the run capacitor it stands in parallel */
  readonly startCapacitorF?: number;
  /** for 'capacitor-run' and 'permanent-capacitor' [F] */
  readonly runCapacitorF?: number;
  /** slip at which the switch opens and, once open, closes again [1]; see auxiliaryFor */
  readonly switchSlipRatio?: number;
  readonly recloseSlipRatio?: number;
}

const capacitorOf = (name: string, value: number | undefined): number =>
  checkedNumber(name, value ?? Number.NaN, { above: 0 });

const seriesFor = (motor: SinglePhaseMotor, capacitors: { start: boolean; run: boolean }): Complex => {
  if (!capacitors.start && !capacitors.run) return { re: 0, im: 0 };
  const start = capacitors.start ? capacitorOf('startCapacitorF', motor.startCapacitorF) : 0;
  const run = capacitors.run ? capacitorOf('runCapacitorF', motor.runCapacitorF) : 0;
  return { re: 0, im: -1 / (2 * Math.PI * motor.circuit.frequencyHz * (start + run)) };
};

/**
 * A single-phase motor at any slip, with what its centrifugal switch leaves in circuit there.
 *
 * @param motor                the motor
 * @param point.voltageV       supply voltage [V], ≥ 0
 * @param point.slipRatio      slip [1]: 1 at standstill
 * @param point.wasSwitchOpen  true when the switch had opened before; default false
 * @returns currents of main winding, auxiliary winding and line [A], capacitor voltage [V], powers [W], torques [N·m], and isSwitchOpen
 * @throws  {RangeError} a value outside its limits, or a capacitor that the kind needs and the motor lacks
 * Valid for: as twoWindingState; capacitors without loss.
 * Source:  fitzgerald, ch. 9; derived (symmetrical components of the two windings)
 * Example: singlePhaseMotorState(exampleSinglePhaseMotor('capacitor-start'), { voltageV: 230, slipRatio: 0.2 }).isSwitchOpen → true
 */
export const singlePhaseMotorState = (
  motor: SinglePhaseMotor,
  point: { voltageV: number; slipRatio: number; wasSwitchOpen?: boolean },
): SinglePhaseState & { readonly isSwitchOpen: boolean } => {
  const { isConnected, hasStartCapacitor, hasRunCapacitor, isSwitchOpen } = auxiliaryFor({
    kind: motor.kind,
    slipRatio: point.slipRatio,
    ...(motor.switchSlipRatio === undefined ? {} : { switchSlipRatio: motor.switchSlipRatio }),
    ...(motor.recloseSlipRatio === undefined ? {} : { recloseSlipRatio: motor.recloseSlipRatio }),
    wasSwitchOpen: point.wasSwitchOpen ?? false,
  });
  if (!isConnected) return { ...mainWindingState(motor.circuit, point), isSwitchOpen };
  const series = seriesFor(motor, { start: hasStartCapacitor, run: hasRunCapacitor });
  return {
    ...twoWindingState(motor.circuit, { auxiliary: motor.auxiliary, series }, point),
    isSwitchOpen,
  };
};
