import { checkedNumber } from '../../ac/checked-number.ts';
import type { SinglePhaseMotor } from '../single-phase/single-phase-motor-state.ts';

/**
 * A motor with a permanent capacitor after a hard-start kit has been added: a start capacitor beside the run
 * capacitor, taken out again by a relay near running speed.
 *
 * @param motor             a motor of the kind 'permanent-capacitor'
 * @param kit.capacitanceF  of the start capacitor [F], > 0
 * @param kit.opensAtSlip   slip at which the relay opens (0–1), default 0.25
 * @returns the motor with its kit
 * @throws  {RangeError} a motor of another kind, a value outside its limits
 * Valid for: a relay that answers to speed; one that answers to time or current opens elsewhere
 * Source:  common-practice
 * Example: hardStartKit(exampleSinglePhaseMotor('permanent-capacitor'), { capacitanceF: 120e-6 }).kind → capacitor-run
 */
export const hardStartKit = (
  motor: SinglePhaseMotor,
  kit: { capacitanceF: number; opensAtSlip?: number },
): SinglePhaseMotor => {
  if (motor.kind !== 'permanent-capacitor') {
    throw new RangeError(`motor.kind: expected permanent-capacitor, found ${motor.kind}`);
  }
  return {
    ...motor,
    kind: 'capacitor-run',
    startCapacitorF: checkedNumber('capacitanceF', kit.capacitanceF, { above: 0 }),
    switchSlipRatio: checkedNumber('opensAtSlip', kit.opensAtSlip ?? 0.25, { above: 0, below: 1 }),
  };
};
