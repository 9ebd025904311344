import { difference, type Equation, equation, fraction, power, product, sum } from '../formula.ts';
import type { Quantity } from '../worksheet.ts';

/**
 * Where the losses at the current are the losses at the rating, scaled by the room left below the internal limit:
 * P_0 + b·I + c·I² = P_cont · (T_stop − T_site) / (T_stop − T_ref).
 *
 * @param unit  path of the unit's model among the values
 */
export function continuousCurrentEquation(unit: string, currentId: string, ambientId: string): Equation {
  return equation(
    sum(
      `${unit}.losses.constantW`,
      product(`${unit}.losses.linearWPerA`, currentId),
      product(`${unit}.losses.squareWPerA2`, power(currentId, 2)),
    ),
    product(
      `${unit}.continuousLossW`,
      fraction(
        difference(`${unit}.limitC`, ambientId),
        difference(`${unit}.limitC`, `${unit}.datasheet.referenceAmbientC`),
      ),
    ),
  );
}

/** How the quantities of that equation are written. Watts per ampere are volts, per square ampere ohms. */
export const continuousCurrentQuantities = (unit: string): Record<string, Quantity> => ({
  [`${unit}.losses.constantW`]: { symbol: 'P_0', dimension: 'real-power', unit: 'W' },
  [`${unit}.losses.linearWPerA`]: { symbol: 'b', dimension: 'voltage', unit: 'V' },
  [`${unit}.losses.squareWPerA2`]: { symbol: 'c', dimension: 'resistance', unit: 'Ω' },
  [`${unit}.continuousLossW`]: { symbol: 'P_cont', dimension: 'real-power', unit: 'W' },
  [`${unit}.limitC`]: { symbol: 'T_stop', dimension: 'temperature' },
  [`${unit}.datasheet.referenceAmbientC`]: { symbol: 'T_ref', dimension: 'temperature' },
});
