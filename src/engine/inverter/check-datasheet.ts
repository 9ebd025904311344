import type { InverterDatasheet } from './datasheet.ts';
import { datasheetError } from './datasheet-error.ts';

type Rule = [field: string, found: number, unit: string, ok: (value: number) => boolean, expected: string];

const positive = (value: number): boolean => value > 0 && Number.isFinite(value);
const notNegative = (value: number): boolean => value >= 0 && Number.isFinite(value);
const insideRatio = (value: number): boolean => value > 0 && value < 1;
const wholeFromOne = (value: number): boolean => Number.isInteger(value) && value >= 1;

/**
 * Refuses a datasheet with a figure that cannot be by itself; how figures fit together is for `solveHeatNetwork`.
 *
 * @param datasheet  as printed, SI units
 * @returns nothing
 * @throws  {RangeError} naming the first figure out of bounds, what was expected and found
 * Source:  none (bounds of meaning)
 * Example: checkDatasheet(exampleDatasheet) → undefined
 */
export const checkDatasheet = (datasheet: InverterDatasheet): void => {
  const { altitude } = datasheet;
  const rules: Rule[] = [
    ['acNominalV', datasheet.acNominalV, 'V', positive, 'more than 0 V'],
    ['frequencyHz', datasheet.frequencyHz, 'Hz', positive, 'more than 0 Hz'],
    ['referenceAmbientC', datasheet.referenceAmbientC, '°C', Number.isFinite, 'a temperature'],
    [
      'hot.ambientC',
      datasheet.hot.ambientC,
      '°C',
      (v) => v > datasheet.referenceAmbientC,
      'hotter than the reference ambient',
    ],
    ['longDuration.durationS', datasheet.longDuration.durationS, 's', positive, 'more than 0 s'],
    ['surge.durationS', datasheet.surge.durationS, 's', positive, 'more than 0 s'],
    ['heatSinkTimeConstantS', datasheet.heatSinkTimeConstantS, 's', positive, 'more than 0 s'],
    ['idleLossW', datasheet.idleLossW, 'W', notNegative, '0 W or more'],
    ['efficiencyHalfRatio', datasheet.efficiencyHalfRatio, '', insideRatio, 'between 0 and 1'],
    ['efficiencyFullRatio', datasheet.efficiencyFullRatio, '', insideRatio, 'between 0 and 1'],
    ['warnAtHeatRatio', datasheet.warnAtHeatRatio, '', insideRatio, 'between 0 and 1'],
    ['voltageHeldRatio', datasheet.voltageHeldRatio, '', insideRatio, 'between 0 and 1'],
    ['voltageLostCycles', datasheet.voltageLostCycles, 'cycles', wholeFromOne, 'a whole number from 1'],
    ['waitS', datasheet.waitS, 's', positive, 'more than 0 s'],
    ['reclaimS', datasheet.reclaimS, 's', positive, 'more than 0 s'],
    ['stopsToLockout', datasheet.stopsToLockout, '', wholeFromOne, 'a whole number from 1'],
    ['altitude.fromM', altitude.fromM, 'm', notNegative, '0 m or more'],
    [
      'altitude.maxM',
      altitude.maxM,
      'm',
      (v) => v >= altitude.fromM && Number.isFinite(v),
      'altitude.fromM or more',
    ],
    [
      'altitude.lossPer100mRatio',
      altitude.lossPer100mRatio,
      '',
      (v) => v >= 0 && (v * (altitude.maxM - altitude.fromM)) / 100 < 1,
      '0 or more, and some rating left at altitude.maxM',
    ],
  ];
  for (const [field, found, unit, ok, expected] of rules) {
    if (!ok(found)) {
      throw datasheetError({ field, expected, found: `${found} ${unit}`.trim(), change: `correct ${field}` });
    }
  }
};
