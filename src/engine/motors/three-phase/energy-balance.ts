import { checkedNumber } from '../../ac/checked-number.ts';

/**
 * From the shaft back to the supply: input, air-gap power and slip of a motor whose efficiency and separate losses are known.
 *
 * @param given.shaftPowerW      power at the shaft [W], above 0
 * @param given.efficiencyRatio  shaft by input power [1], above 0 up to 1
 * @param given.statorLossW      loss in the stator winding [W], 0 or more
 * @param given.coreLossW        loss in the stator's iron [W], 0 or more
 * @param given.rotorLossW       loss in the rotor's conductors [W], 0 or more
 * @returns inputPowerW [W], airGapPowerW [W], slipRatio [1] and rotationalLossW, what is left of the losses [W]
 * @throws   {RangeError} a value outside its limits, or losses that are more than input less output
 * Formula:  P_in = P/η;  P_gap = P_in − stator − core;  s = rotor loss/P_gap
 * Valid for: steady running.
 * Source:   hubert, ex. 4.6
 * Example:  energyBalance({ shaftPowerW: 74600, efficiencyRatio: 0.91, statorLossW: 2803, coreLossW: 1697, rotorLossW: 1549 }).slipRatio → 0.02
 */
export function energyBalance(given: {
  shaftPowerW: number;
  efficiencyRatio: number;
  statorLossW: number;
  coreLossW: number;
  rotorLossW: number;
}): { inputPowerW: number; airGapPowerW: number; slipRatio: number; rotationalLossW: number } {
  const shaftPowerW = checkedNumber('shaftPowerW', given.shaftPowerW, { above: 0 });
  const inputPowerW =
    shaftPowerW / checkedNumber('efficiencyRatio', given.efficiencyRatio, { above: 0, max: 1 });
  const statorLossW = checkedNumber('statorLossW', given.statorLossW, { min: 0 });
  const coreLossW = checkedNumber('coreLossW', given.coreLossW, { min: 0 });
  const airGapPowerW = inputPowerW - statorLossW - coreLossW;
  const rotorLossW = checkedNumber('rotorLossW', given.rotorLossW, {
    min: 0,
    max: Math.max(0, airGapPowerW - shaftPowerW),
  });
  return {
    inputPowerW,
    airGapPowerW,
    slipRatio: rotorLossW / airGapPowerW,
    rotationalLossW: airGapPowerW - rotorLossW - shaftPowerW,
  };
}
