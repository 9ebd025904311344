import { checkedNumber } from '../../ac/index.ts';

/** How the auxiliary winding of a single-phase motor is fed. */
export type SinglePhaseKind = 'split-phase' | 'capacitor-start' | 'capacitor-run' | 'permanent-capacitor';

/** Slip at which a centrifugal switch opens when nothing else is known: 75 % of synchronous speed. */
export const SWITCH_OPENS_AT_SLIP = 0.25;

/** Slip at which a switch that has opened closes again when nothing else is known: half of synchronous speed. */
export const SWITCH_CLOSES_AT_SLIP = 0.5;

/** What is in circuit beside the main winding. */
export interface AuxiliaryInCircuit {
  /** false: the main winding runs alone */
  readonly isConnected: boolean;
  readonly hasStartCapacitor: boolean;
  readonly hasRunCapacitor: boolean;
  /** whether the centrifugal switch is open; always false for a motor without one */
  readonly isSwitchOpen: boolean;
}

/**
 * What the centrifugal switch leaves in circuit beside the main winding.
 *
 * @param motor.kind               how the auxiliary winding is fed; 'capacitor-run' has a start and a run capacitor, 'permanent-capacitor' no switch
 * @param motor.slipRatio          slip [1]
 * @param motor.switchSlipRatio    slip at which the switch opens [1], 0–1; default 0.25
 * @param motor.recloseSlipRatio   slip above which an open switch closes again [1], from switchSlipRatio to 1; default 0.5
 * @param motor.wasSwitchOpen      true when the motor comes from a higher speed with its switch open; default false
 * @returns whether the winding, the start and the run capacitor are in circuit, and whether the switch is open
 * @throws  {RangeError} a value outside its limits
 * Valid for: motors started forwards; an electronic or current relay opens by its own rule.
 * Source:  common-practice (both default speeds)
 * Example: auxiliaryFor({ kind: 'capacitor-start', slipRatio: 0.2 }).isConnected → false
 */
export const auxiliaryFor = (motor: {
  kind: SinglePhaseKind;
  slipRatio: number;
  switchSlipRatio?: number;
  recloseSlipRatio?: number;
  wasSwitchOpen?: boolean;
}): AuxiliaryInCircuit => {
  const opens = checkedNumber('switchSlipRatio', motor.switchSlipRatio ?? SWITCH_OPENS_AT_SLIP, {
    above: 0,
    below: 1,
  });
  const closes = checkedNumber(
    'recloseSlipRatio',
    motor.recloseSlipRatio ?? Math.max(opens, SWITCH_CLOSES_AT_SLIP),
    { min: opens, max: 1 },
  );
  checkedNumber('slipRatio', motor.slipRatio);
  const hasSwitch = motor.kind !== 'permanent-capacitor';
  const isSwitchOpen = hasSwitch && motor.slipRatio <= (motor.wasSwitchOpen ? closes : opens);
  const hasRunCapacitor = motor.kind === 'capacitor-run' || motor.kind === 'permanent-capacitor';
  return {
    isConnected: hasRunCapacitor || !isSwitchOpen,
    hasStartCapacitor: !isSwitchOpen && (motor.kind === 'capacitor-start' || motor.kind === 'capacitor-run'),
    hasRunCapacitor,
    isSwitchOpen,
  };
};
