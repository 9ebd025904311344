import { checkedNumber } from '../../ac/checked-number.ts';

/** What a motor catalogue prints for one motor, at rated voltage and frequency. */
export type CatalogueRow = {
  /** At the shaft [W]. */
  ratedPowerW: number;
  lineVoltageV: number;
  frequencyHz: number;
  /** How the windings are joined for that voltage. */
  connection: 'star' | 'delta';
  efficiencyRatio: number;
  powerFactor: number;
  ratedSpeedRpm: number;
  /** Locked-rotor by rated current. */
  lockedRotorCurrentRatio: number;
  /** Locked-rotor by rated torque. */
  lockedRotorTorqueRatio: number;
  /** Largest by rated torque. */
  breakdownTorqueRatio: number;
};

/** A row in the units of one winding. */
export type FitTarget = {
  polePairs: number;
  synchronousRadPerS: number;
  slipRatio: number;
  /** Across one winding. */
  voltageV: number;
  /** Rated current of one winding. */
  currentA: number;
  lockedCurrentA: number;
  ratedTorqueNm: number;
  lockedTorqueNm: number;
  breakdownTorqueNm: number;
};

const fail = (field: string, expected: string, found: number): never => {
  throw new RangeError(`${field}: expected ${expected}, found ${found}`);
};

/** Checks a row for what no machine can be, and puts it in the units of one winding. */
export function fitTarget(row: CatalogueRow): FitTarget {
  const ratedPowerW = checkedNumber('ratedPowerW', row.ratedPowerW, { above: 0 });
  const lineVoltageV = checkedNumber('lineVoltageV', row.lineVoltageV, { above: 0 });
  const frequencyHz = checkedNumber('frequencyHz', row.frequencyHz, { above: 0 });
  if (row.connection !== 'star' && row.connection !== 'delta')
    throw new RangeError(`connection: expected star or delta, found ${String(row.connection)}`);
  const efficiency = checkedNumber('efficiencyRatio', row.efficiencyRatio, { above: 0, below: 1 });
  const powerFactor = checkedNumber('powerFactor', row.powerFactor, { above: 0, below: 1 });
  const speedRpm = checkedNumber('ratedSpeedRpm', row.ratedSpeedRpm, { above: 0, below: 60 * frequencyHz });
  const lockedCurrent = checkedNumber('lockedRotorCurrentRatio', row.lockedRotorCurrentRatio, { above: 1 });
  const lockedTorque = checkedNumber('lockedRotorTorqueRatio', row.lockedRotorTorqueRatio, { above: 0 });
  const topTorque = checkedNumber('breakdownTorqueRatio', row.breakdownTorqueRatio, { above: 1 });

  let polePairs = Math.floor((60 * frequencyHz) / speedRpm);
  // A speed that is exactly synchronous for some number of poles is printed rounded, or wrong: no torque at no slip.
  if ((60 * frequencyHz) / polePairs === speedRpm) polePairs = 0;
  if (polePairs === 0) return fail('ratedSpeedRpm', 'less than a synchronous speed', speedRpm);
  const synchronousRadPerS = (2 * Math.PI * frequencyHz) / polePairs;
  const slipRatio = 1 - (speedRpm * polePairs) / (60 * frequencyHz);
  if (efficiency >= 1 - slipRatio) {
    const most = (1 - slipRatio).toFixed(4);
    return fail('efficiencyRatio', `less than ${most}, which the slip at rated speed leaves`, efficiency);
  }
  if (lockedTorque > topTorque) {
    return fail('lockedRotorTorqueRatio', `at most breakdownTorqueRatio, ${topTorque}`, lockedTorque);
  }
  const windings = row.connection === 'delta' ? 1 : Math.sqrt(3);
  const voltageV = lineVoltageV / windings;
  const currentA = ratedPowerW / (efficiency * powerFactor * 3 * voltageV);
  const ratedTorqueNm = ratedPowerW / ((1 - slipRatio) * synchronousRadPerS);
  const lockedVa = 3 * voltageV * currentA * lockedCurrent;
  if (lockedTorque * ratedTorqueNm * synchronousRadPerS >= lockedVa) {
    const most = (lockedVa / (ratedTorqueNm * synchronousRadPerS)).toPrecision(3);
    return fail(
      'lockedRotorTorqueRatio',
      `less than ${most}, for which lockedRotorCurrentRatio carries the power`,
      lockedTorque,
    );
  }
  return {
    polePairs,
    synchronousRadPerS,
    slipRatio,
    voltageV,
    currentA,
    lockedCurrentA: lockedCurrent * currentA,
    ratedTorqueNm,
    lockedTorqueNm: lockedTorque * ratedTorqueNm,
    breakdownTorqueNm: topTorque * ratedTorqueNm,
  };
}
