import equipment from '../../../content/strings/equipment.en.json' with { type: 'json' };
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

/** What the datasheet states, line by line, in the order an installer needs it. */
export function datasheetLines(sheet: InverterDatasheet): { label: string; value: string }[] {
  const ambient = formatQuantity(sheet.referenceAmbientC, 'temperature', exactly);
  const seconds = (time: number): string => formatQuantity(time, 'time', exactly);
  const line = (label: string, value: string): { label: string; value: string } => ({ label, value });
  return [
    line(
      words.output,
      fill(words.outputValue, {
        voltage: formatQuantity(sheet.acNominalV, 'voltage', exactly),
        frequency: formatQuantity(sheet.frequencyHz, 'frequency', exactly),
      }),
    ),
    line(
      words.input,
      fill(words.inputValue, { voltage: formatQuantity(sheet.dcNominalV, 'voltage', exactly) }),
    ),
    line(fill(words.continuous, { ambient }), powerText(sheet.continuous.power)),
    line(
      fill(words.hot, { ambient: formatQuantity(sheet.hot.ambientC, 'temperature', exactly) }),
      powerText(sheet.hot.power),
    ),
    line(
      fill(words.longDuration, { time: seconds(sheet.longDuration.durationS), ambient }),
      powerText(sheet.longDuration.power),
    ),
    line(fill(words.surge, { time: seconds(sheet.surge.durationS), ambient }), powerText(sheet.surge.power)),
    line(words.currentLimit, powerText(sheet.currentLimit.power)),
    line(words.idle, formatQuantity(sheet.idleLossW, 'real-power', exactly)),
    line(words.efficiency, `${percent(sheet.efficiencyHalfRatio)} / ${percent(sheet.efficiencyFullRatio)}`),
    line(words.heatSink, seconds(sheet.heatSinkTimeConstantS)),
    line(words.warning, fill(words.warningValue, { percent: percent(sheet.warnAtHeatRatio) })),
    line(
      words.voltageHeld,
      fill(words.voltageHeldValue, {
        voltage: formatQuantity(sheet.voltageHeldRatio * sheet.acNominalV, 'voltage', {
          significantDigits: 3,
        }),
        percent: percent(sheet.voltageHeldRatio),
      }),
    ),
    line(words.cycles, formatQuantity(sheet.voltageLostCycles, 'cycles', exactly)),
    line(words.wait, seconds(sheet.waitS)),
    line(words.reclaim, seconds(sheet.reclaimS)),
    line(words.lockout, fill(words.lockoutValue, { count: sheet.stopsToLockout })),
    line(
      fill(words.altitude, {
        height: formatQuantity(sheet.altitude.fromM, 'length', { ...exactly, unit: 'm' }),
      }),
      fill(words.altitudeValue, {
        percent: percent(sheet.altitude.lossPer100mRatio),
        max: formatQuantity(sheet.altitude.maxM, 'length', { ...exactly, unit: 'm' }),
      }),
    ),
    line(words.mass, formatQuantity(sheet.massKg, 'mass', exactly)),
    line(words.cost, String(sheet.costIndex)),
  ];
}
