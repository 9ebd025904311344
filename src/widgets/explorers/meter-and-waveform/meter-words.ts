import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { formatQuantity } from '../../../engine/index.ts';
import type { Readout } from '../../shared/explorer/Readouts.tsx';
import { amperes, fill, plain, words } from '../words.ts';
import { type MeterAnswer, type MeterSetting, meterAnswer, shapeKinds } from './meter-answer.ts';

const text = words.meter;

/** Below half a per cent no one would call the meter wrong. */
const unseenRatio = 0.005;

const errorSize = (ratio: number): string =>
  `${formatQuantity(Math.abs(ratio) * 100, 'ratio', { significantDigits: 2 })}\u202f%`;

/** "−29 %", "+11 %" or the word for none. */
function errorText(ratio: number): string {
  if (Math.abs(ratio) < unseenRatio) return text.noError;
  return `${ratio < 0 ? '\u2212' : '+'}${errorSize(ratio)}`;
}

export function meterSummary(setting: MeterSetting, answer: MeterAnswer): string {
  const { errorRatio } = answer;
  const right = Math.abs(errorRatio) < unseenRatio;
  const sentence = right ? text.summaryRight : errorRatio < 0 ? text.summaryLow : text.summaryHigh;
  return fill(sentence, {
    shape: text.inSentence[setting.shape],
    rms: amperes(setting.rmsA),
    crest: plain(answer.crestFactor),
    reading: amperes(answer.readingA),
    error: errorSize(errorRatio),
  });
}

export function meterReadouts(setting: MeterSetting, answer: MeterAnswer): Readout[] {
  return [
    { name: text.readTrue, value: amperes(setting.rmsA) },
    { name: text.readMeter, value: amperes(answer.readingA), main: true },
    { name: text.readError, value: errorText(answer.errorRatio) },
    { name: text.readCrest, value: plain(answer.crestFactor) },
    { name: text.readPeak, value: amperes(answer.peakA) },
  ];
}

export function meterTable(setting: MeterSetting): PrintedTable {
  return {
    caption: fill(text.tableCaption, {
      rms: amperes(setting.rmsA),
      coupling: text.couplings[setting.coupling],
    }),
    columns: [text.colShape, text.colCrest, text.colPeak, text.colReading, text.colError],
    rows: shapeKinds.map((shape) => {
      const answer = meterAnswer({ ...setting, shape });
      return [
        text.shapes[shape],
        plain(answer.crestFactor),
        amperes(answer.peakA),
        amperes(answer.readingA),
        errorText(answer.errorRatio),
      ];
    }),
  };
}
