import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { type InverterModel, settledHeat } from '../../../engine/index.ts';
import type { Readout } from '../../shared/explorer/Readouts.tsx';
import { amperes, celsius, cycles, duration, fill, percent, voltAmperes, words } from '../words.ts';
import { type StopAnswer, type StopSetting, stopTime } from './overload-curve.ts';

const text = words.timeToStop;

/** A time to stop as people say it. */
export function stopTimeText(timeS: number | null): string {
  if (timeS === null) return text.never;
  return timeS === 0 ? text.atOnce : duration(timeS);
}

export function stopSummary(model: InverterModel, setting: StopSetting, answer: StopAnswer): string {
  const { datasheet } = model;
  const { level, timeS, bounds } = answer;
  const values = {
    name: datasheet.name,
    current: amperes(setting.loadA),
    ambient: celsius(setting.ambientC),
    time: stopTimeText(timeS),
    level: words.levels[level].toLowerCase(),
    continuous: amperes(bounds.continuousA),
    limit: amperes(model.limitA),
    held: percent(datasheet.voltageHeldRatio),
    cycles: cycles(datasheet.voltageLostCycles),
  };
  if (timeS === 0) return fill(text.summaryAtOnce, values);
  if (level === 'voltage-lost') return fill(text.summaryLost, values);
  return fill(timeS === null ? text.summaryNever : text.summaryStop, values);
}

export function stopReadouts(model: InverterModel, setting: StopSetting, answer: StopAnswer): Readout[] {
  return [
    { name: text.readTime, value: stopTimeText(answer.timeS), main: true },
    { name: text.readLevel, value: words.levels[answer.level] },
    { name: text.readShare, value: percent(setting.loadA / model.continuousA) },
    { name: text.readForEver, value: amperes(answer.bounds.continuousA) },
  ];
}

/** Shares of the continuous rating, as rows. */
const rowShares = [0.75, 1, 1.1, 1.2, 1.3, 1.5, 1.75, 2] as const;

export function stopTable(model: InverterModel, setting: StopSetting): PrintedTable {
  const { datasheet, continuousA } = model;
  const { ambientC, altitudeM, beforeA } = setting;
  const here = { model, ambientC, altitudeM, heat: settledHeat(model, beforeA) };
  const reference = { model, ambientC: datasheet.referenceAmbientC };
  return {
    caption: fill(text.tableCaption, { name: datasheet.name }),
    columns: [
      text.colCurrent,
      text.colPower,
      text.colHere,
      fill(text.colReference, { ambient: celsius(datasheet.referenceAmbientC) }),
    ],
    rows: rowShares
      .map((share) => share * continuousA)
      .concat(setting.loadA)
      .sort((a, b) => a - b)
      .map((currentA) => [
        amperes(currentA),
        voltAmperes(currentA * datasheet.acNominalV),
        stopTimeText(stopTime({ ...here, currentA })),
        stopTimeText(stopTime({ ...reference, currentA })),
      ]),
  };
}
