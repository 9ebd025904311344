import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { type InverterModel, zipCurrentA } from '../../../engine/index.ts';
import type { Readout } from '../../shared/explorer/Readouts.tsx';
import { amperes, cycles, duration, fill, percent, volts, words } from '../words.ts';
import { type VoltsAnswer, type VoltsOutcome, type VoltsSetting, zipLoadOf } from './volts-answer.ts';

const text = words.volts;

const sentences: Readonly<Record<VoltsOutcome, string>> = {
  held: text.summaryHeld,
  sagging: text.summarySagging,
  lost: text.summaryLost,
  collapse: text.summaryCollapse,
};

export function voltsSummary({ datasheet, limitA }: InverterModel, answer: VoltsAnswer): string {
  return fill(sentences[answer.outcome], {
    demand: amperes(answer.demandA),
    limit: amperes(limitA),
    voltage: volts(answer.voltageV),
    ratio: percent(answer.voltageRatio),
    cycles: cycles(datasheet.voltageLostCycles),
    time: duration(answer.stopS ?? 0),
  });
}

export function voltsReadouts(answer: VoltsAnswer): Readout[] {
  const { stopS } = answer;
  return [
    {
      name: stopS === null ? text.readHeld : text.readNotHeld,
      value: volts(answer.voltageV),
      main: true,
    },
    { name: text.readCurrent, value: amperes(answer.currentA) },
    {
      name: text.readStop,
      value: stopS === null ? text.noStop : duration(stopS),
    },
  ];
}

const rowRatios = [1.1, 1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2] as const;

export function voltsTable(model: InverterModel, setting: VoltsSetting): PrintedTable {
  const load = zipLoadOf(setting);
  return {
    caption: text.tableCaption,
    columns: [text.colVoltage, text.colDraw, text.colLimit, text.colEnough],
    rows: rowRatios.map((ratio) => {
      const currentA = zipCurrentA(load, model.datasheet.acNominalV, ratio);
      return [
        percent(ratio),
        amperes(currentA),
        amperes(model.limitA),
        currentA <= model.limitA * (1 + 1e-9) ? text.yes : text.no,
      ];
    }),
  };
}
