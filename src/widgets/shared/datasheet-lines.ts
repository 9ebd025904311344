import equipment from '../../../content/strings/equipment.en.json' with { type: 'json' };
import type { DatasheetLine } from '../../course/worksheets/datasheet-line.ts';
import { formatQuantity, type InverterDatasheet, type StatedPower } from '../../engine/index.ts';
import { fill } from '../strings/fill.ts';

const words = equipment.datasheet;
const exactly = { significantDigits: 'as-is' } as const;
const percent = (ratio: number): string => formatQuantity(ratio, 'ratio', { ...exactly, unit: '%' });

/** Watts stay watts and volt-amperes stay volt-amperes: reading the difference is part of the job. */
function powerText({ value, unit, powerFactor }: StatedPower): string {
  const power = formatQuantity(value, unit === 'W' ? 'real-power' : 'apparent-power', exactly);
  return unit === 'W' && powerFactor < 1 ? fill(words.atPowerFactor, { power, powerFactor }) : power;
}

export interface PrintedLine {
  id: DatasheetLine;
  label: string;
  value: string;
}

/** What the datasheet states, line by line, in the order an installer needs it. */
export function datasheetLines(sheet: InverterDatasheet): PrintedLine[] {
  const ambient = formatQuantity(sheet.referenceAmbientC, 'temperature', exactly);
  const seconds = (time: number): string => formatQuantity(time, 'time', exactly);
  const line = (id: DatasheetLine, label: string, value: string): PrintedLine => ({ id, label, value });
  return [
    line(
      'output',
      words.output,
      fill(words.outputValue, {
        voltage: formatQuantity(sheet.acNominalV, 'voltage', exactly),
        frequency: formatQuantity(sheet.frequencyHz, 'frequency', exactly),
      }),
    ),
    line(
      'input',
      words.input,
      fill(words.inputValue, { voltage: formatQuantity(sheet.dcNominalV, 'voltage', exactly) }),
    ),
    line('continuous', fill(words.continuous, { ambient }), powerText(sheet.continuous.power)),
    line(
      'hot',
      fill(words.hot, { ambient: formatQuantity(sheet.hot.ambientC, 'temperature', exactly) }),
      powerText(sheet.hot.power),
    ),
    line(
      'longDuration',
      fill(words.longDuration, { time: seconds(sheet.longDuration.durationS), ambient }),
      powerText(sheet.longDuration.power),
    ),
    line(
      'surge',
      fill(words.surge, { time: seconds(sheet.surge.durationS), ambient }),
      powerText(sheet.surge.power),
    ),
    line('currentLimit', words.currentLimit, powerText(sheet.currentLimit.power)),
    line('idle', words.idle, formatQuantity(sheet.idleLossW, 'real-power', exactly)),
    line(
      'efficiency',
      words.efficiency,
      `${percent(sheet.efficiencyHalfRatio)} / ${percent(sheet.efficiencyFullRatio)}`,
    ),
    line('heatSink', words.heatSink, seconds(sheet.heatSinkTimeConstantS)),
    line('warning', words.warning, fill(words.warningValue, { percent: percent(sheet.warnAtHeatRatio) })),
    line(
      'voltageHeld',
      words.voltageHeld,
      fill(words.voltageHeldValue, {
        voltage: formatQuantity(sheet.voltageHeldRatio * sheet.acNominalV, 'voltage', {
          significantDigits: 3,
        }),
        percent: percent(sheet.voltageHeldRatio),
      }),
    ),
    line('cycles', words.cycles, formatQuantity(sheet.voltageLostCycles, 'cycles', exactly)),
    line('wait', words.wait, seconds(sheet.waitS)),
    line('reclaim', words.reclaim, seconds(sheet.reclaimS)),
    line('lockout', words.lockout, fill(words.lockoutValue, { count: sheet.stopsToLockout })),
    line(
      'altitude',
      fill(words.altitude, {
        height: formatQuantity(sheet.altitude.fromM, 'length', { ...exactly, unit: 'm' }),
      }),
      fill(words.altitudeValue, {
        percent: percent(sheet.altitude.lossPer100mRatio),
        max: formatQuantity(sheet.altitude.maxM, 'length', { ...exactly, unit: 'm' }),
      }),
    ),
    line('mass', words.mass, formatQuantity(sheet.massKg, 'mass', exactly)),
    line('cost', words.cost, String(sheet.costIndex)),
  ];
}
