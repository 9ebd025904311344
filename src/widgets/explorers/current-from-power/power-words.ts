import type { PrintedTable } from '../../../course/exercises/given-rows.ts';
import { formatQuantity } from '../../../engine/index.ts';
import type { Readout } from '../../shared/explorer/Readouts.tsx';
import { amperes, fill, plain, voltAmperes, watts, words } from '../words.ts';
import type { PowerAnswer, PowerSetting } from './two-loads.ts';

const text = words.power;

export function powerSummary(setting: PowerSetting, { a, b, currentRatio, heatRatio }: PowerAnswer): string {
  if (setting.powerFactorA === setting.powerFactorB) {
    return fill(text.summarySame, {
      watts: watts(setting.realPowerW),
      factor: plain(setting.powerFactorA),
      current: amperes(a.currentA),
    });
  }
  return fill(text.summary, {
    watts: watts(setting.realPowerW),
    factorA: plain(setting.powerFactorA),
    factorB: plain(setting.powerFactorB),
    currentA: amperes(a.currentA),
    currentB: amperes(b.currentA),
    ratio: plain(currentRatio),
    heat: plain(heatRatio),
  });
}

export function powerReadouts({ a, b, currentRatio, heatRatio }: PowerAnswer): Readout[] {
  return [
    { name: text.readCurrentA, value: amperes(a.currentA) },
    { name: text.readCurrentB, value: amperes(b.currentA), main: true },
    { name: text.readRatio, value: fill(text.times, { ratio: plain(currentRatio) }) },
    { name: text.readHeat, value: fill(text.times, { ratio: plain(heatRatio) }) },
  ];
}

export function powerTable(setting: PowerSetting, answer: PowerAnswer): PrintedTable {
  const rows = [
    { name: text.loadA, load: answer.a, factor: setting.powerFactorA, heat: 1 },
    { name: text.loadB, load: answer.b, factor: setting.powerFactorB, heat: answer.heatRatio },
  ];
  return {
    caption: text.tableCaption,
    columns: [
      text.colLoad,
      text.colFactor,
      text.colReal,
      text.colReactive,
      text.colApparent,
      text.colCurrent,
      text.colHeat,
    ],
    rows: rows.map(({ name, load, factor, heat }) => [
      name,
      plain(factor),
      watts(load.realPowerW),
      formatQuantity(load.reactivePowerVar, 'reactive-power'),
      voltAmperes(load.apparentPowerVa),
      amperes(load.currentA),
      plain(heat),
    ]),
  };
}
