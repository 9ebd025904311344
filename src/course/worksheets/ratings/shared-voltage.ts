import { type InverterModel, powerTriangle, voltageUnderLimit } from '../../../engine/index.ts';
import {
  difference,
  type Equation,
  equation,
  type Formula,
  fraction,
  power,
  product,
  root,
  sum,
} from '../formula.ts';

export const NOMINAL = 'unit.datasheet.acNominalV';

/** A constant-impedance load and a constant-power one on the same unit, stated at nominal voltage. */
export interface SharedLoads {
  unit: InverterModel;
  impedanceW: number;
  impedancePowerFactor: number;
  electronicsW: number;
}

const impedanceVar = ({ impedanceW, impedancePowerFactor }: SharedLoads): number =>
  powerTriangle({ realPowerW: impedanceW, powerFactor: impedancePowerFactor }).reactivePowerVar;

/** Both loads at the limit; `null` where no voltage would do. */
export function sharedVoltage(
  loads: SharedLoads,
  limitA: number,
  electronicsAs: 'power' | 'impedance',
): number | null {
  const none = { realW: 0, reactiveVar: 0 };
  const fixed = { realW: loads.impedanceW, reactiveVar: impedanceVar(loads) };
  const electronics = { realW: loads.electronicsW, reactiveVar: 0 };
  const load =
    electronicsAs === 'power'
      ? { impedance: fixed, current: none, power: electronics }
      : { impedance: { ...fixed, realW: fixed.realW + electronics.realW }, current: none, power: none };
  const found = voltageUnderLimit({ load, nominalV: loads.unit.datasheet.acNominalV, limitA });
  return found.collapsed ? null : found.voltageV;
}

/** P·V/U²: what a constant-impedance share still draws at V, as current. */
const falling = (nominalPower: Formula | string): Formula =>
  fraction(product(nominalPower, 'sharedVoltageV'), power(NOMINAL, 2));

/** The limit is what both draw together at the voltage sought. */
export function sharedVoltageEquation({ impedancePowerFactor }: SharedLoads): Equation {
  const real = sum(falling('impedanceW'), fraction('electronicsW', 'sharedVoltageV'));
  if (impedancePowerFactor === 1) return equation('limitA', real);
  const nominalVar = root(
    difference(power(fraction('impedanceW', 'impedancePowerFactor'), 2), power('impedanceW', 2)),
  );
  return equation('limitA', root(sum(power(real, 2), power(falling(nominalVar), 2))));
}
