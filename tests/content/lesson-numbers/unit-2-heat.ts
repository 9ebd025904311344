import { numbersOf } from './lesson-number.ts';
import { lessonUnit } from './lesson-unit.ts';

const folder = 'content/lessons/02-overload-levels';
const drawings = 'src/components/figures';
const ostrel = lessonUnit('ostrel-29');
const tolbrin = lessonUnit('tolbrin-3');
const { losses, continuousLossW, network, limitC } = ostrel.model;
const minutes = (va: number, ambientC?: number, heat?: Parameters<typeof ostrel.lastsS>[2]) =>
  ostrel.lastsS(va, ambientC, heat) / 60;
const target = (va: number) => ostrel.lossesAt(va / 230) / continuousLossW;

const stopped3500 = ostrel.heatAfter(3500, ostrel.lastsS(3500));
const afterPause = (pauseMin: number) => minutes(3500, 25, ostrel.heatAfter(0, pauseMin * 60, stopped3500));
const warm = ostrel.heatAfter(2000, 3600);

const kiosk = [
  [3700, 120],
  [800, 180],
] as const;
const settled = ostrel.duty(...kiosk);
const swings = (cycles: number) => {
  let heat = ostrel.heatAfter(0, 0);
  for (let i = 1; i < cycles; i += 1) heat = ostrel.heatAfter(800, 180, ostrel.heatAfter(3700, 120, heat));
  const top = ostrel.heatAfter(3700, 120, heat);
  return 100 * (top.fast + top.slow);
};

export const heatNumbers = [
  ...numbersOf(`${folder}/02-reading-a-datasheet.mdx`, [
    ['| Continuous, hot | And when the air is hot? | [[2530]] VA at 40 °C |', () => ostrel.continuousVa(40)],
    ['| by the heat model of this course | | [[2806]] VA | |', () => tolbrin.continuousVa(40)],
    [
      'The Tolbrin 3, by a tenth.',
      () => Math.abs(tolbrin.continuousVa(40) / ostrel.continuousVa(40) - 1.1) < 0.02,
    ],
    ['stops after [[2.5]] min at 4500 VA', () => minutes(4500)],
    ['In a loft at 40 °C it takes less than one and a half', () => minutes(4500, 40) < 1.5],
    ['It carries 2830 VA for about [[70]] minutes at 40 °C', () => minutes(2830, 40)],
    ['half-hour rating in that air is [[3146]] VA', () => ostrel.vaFor(1800, 40)],
    ['with [[3513]] VA for half an hour at 40 °C', () => tolbrin.vaFor(1800, 40)],
    ['has [[24]] %. Their surges', () => 100 * (tolbrin.vaFor(1800, 40) / 2830 - 1)],
    [
      'the Ostrel is four kilograms lighter',
      () => tolbrin.model.datasheet.massKg - ostrel.model.datasheet.massKg === 4,
    ],
  ]),
  ...numbersOf(`${folder}/03-minutes-and-heat.mdx`, [
    ['One day it lasts the whole meal, [[38]] minutes', () => minutes(3500)],
    ['stops after [[22]], and once', () => minutes(3500, 25, warm)],
    ['in July, after [[17]]. Same pans', () => minutes(3500, 35)],
    ['[[78]] s and 70 min', () => network.fastTimeConstantS],
    ['contributes [[0.49]] and the big one', () => network.fastShareRatio],
    ['| 2900 VA | for ever |', () => ostrel.lastsS(2900) === Number.POSITIVE_INFINITY],
    ['| 2900 VA | for ever | [[58]] min |', () => minutes(2900, 40)],
    ['| 3600 VA | [[30]] min |', () => minutes(3600)],
    ['| 3600 VA | 30 min | [[5.3]] min |', () => minutes(3600, 40)],
    ['| 4000 VA | [[8.5]] min |', () => minutes(4000)],
    ['| 4000 VA | 8.5 min | [[2.3]] min |', () => minutes(4000, 40)],
    ['| 5000 VA | [[96]] s |', () => ostrel.lastsS(5000)],
    ['| 5000 VA | 96 s | [[63]] s |', () => ostrel.lastsS(5000, 40)],
    ['| 5800 VA | 60 s | [[42]] s |', () => ostrel.lastsS(5800, 40)],
    ['At 4300 VA it is 1400 VA, and you have less than four.', () => minutes(4300) > 3 && minutes(4300) < 4],
    ['At 3500 VA the Ostrel 29 loses [[351]] W', () => ostrel.lossesAt(3500 / 230)],
    ['$351 / 252 = [[1.393]]$', () => target(3500)],
    ['The small part: $0.488 \\cdot 1.393 = [[0.680]]$', () => 0.488 * target(3500)],
    ['The small part: $[[0.488]] \\cdot', () => network.fastShareRatio],
    ['heat allowed is then [[0.861]] instead of 1', () => ostrel.allowedAt(35)],
    ['its big part stands at [[0.175]]. How long', () => warm.slow],
    ['gives [[38.1]], 16.9 and 22.1 minutes', () => minutes(3500)],
    ['gives 38.1, [[16.9]] and 22.1 minutes', () => minutes(3500, 35)],
    ['gives 38.1, 16.9 and [[22.1]] minutes', () => minutes(3500, 25, warm)],
    ['that works out as [[97]] °C', () => limitC],
    ['falls from 2900 to [[2659]] VA, by 8 %', () => ostrel.continuousVa(35)],
    ['loses [[0.85]] % per kelvin up to 40 °C', () => (100 * (1 - ostrel.continuousVa(40) / 2900)) / 15],
    ['10 K more turn 30 minutes into [[12]].', () => minutes(3600, 35)],
    ['| 1 min | [[3.9]] |', () => afterPause(1)],
    ['| 5 min | [[5.3]] |', () => afterPause(5)],
    ['| 10 min | [[7.0]] |', () => afterPause(10)],
    ['| 30 min | [[16]] |', () => afterPause(30)],
    ['| 1 h | [[24]] |', () => afterPause(60)],
    ['| a night | [[38]] |', () => afterPause(600)],
  ]),
  ...numbersOf(`${folder}/04-duty-all-day.mdx`, [
    ['The first swing peaks at [[65]] %', () => swings(1)],
    ['After an hour they peak at [[86]] %', () => swings(13)],
    ['after two at [[93]] %, and in the end', () => swings(25)],
    ['and in the end at [[99]] %', () => 100 * settled.peakHeatRatio],
    ['| 25 °C | never; warns from', () => ostrel.dutyNeverStops(kiosk, 25)],
    ['| 25 °C | never; warns from [[92]] min on |', () => ostrel.dutyWarnsS(kiosk, 25) / 60],
    ['| 28 °C | after 2 h [[47]] min |', () => ostrel.dutyStopsS(kiosk, 28) / 60 - 120],
    ['| 30 °C | after 2 h [[2]] min |', () => ostrel.dutyStopsS(kiosk, 30) / 60 - 120],
    ['| 32 °C | after 1 h [[32]] min |', () => ostrel.dutyStopsS(kiosk, 32) / 60 - 60],
    ['| 35 °C | after 1 h [[7]] min |', () => ostrel.dutyStopsS(kiosk, 35) / 60 - 60],
    ['The r.m.s. value of it is [[2421]] VA', () => Math.sqrt((3700 ** 2 * 2 + 800 ** 2 * 3) / 5)],
    ['Loss of the Ostrel 29: [[388]] W at 3700 VA', () => ostrel.lossesAt(3700 / 230)],
    ['388 W at 3700 VA, [[42]] W at 800 VA', () => ostrel.lossesAt(800 / 230)],
    ['\\cdot 3}{5} = [[0.716]]', () => settled.meanHeatRatio],
    ['at the kiosk nearly [[2]] %.', () => 100 * settled.peakHeatRatio - swings(43)],
    ['At 30 °C, where [[0.931]] is?', () => ostrel.allowedAt(30)],
    ['The simulation gives [[0.990]]', () => settled.peakHeatRatio],
    ['3700 → 3400 VA | both | [[0.86]] |', () => ostrel.duty([3400, 120], [800, 180]).peakHeatRatio],
    ['1 min on, 1.5 min off | swing | [[0.87]] |', () => ostrel.duty([3700, 60], [800, 90]).peakHeatRatio],
    ['2 min on, 5 min off | mean | [[0.90]] |', () => ostrel.duty([3700, 120], [800, 300]).peakHeatRatio],
    ['| room to the limit | [[0.93]] |', () => settled.peakHeatRatio / ostrel.allowedAt(20)],
  ]),
  ...numbersOf(`${drawings}/TwoHeatNodes.astro`, [
    ['[[18]] W idle, 252 W at 12.6 A', () => losses.constantW],
    ['18 W idle, [[252]] W at 12.6 A', () => continuousLossW],
  ]),
  ...numbersOf(`${drawings}/InverseTime.astro`, [
    ['8 and a half minutes at 4.0', () => Math.abs(minutes(4000) - 8.5) < 0.25],
    ['for ever only at [[2.5]], and 5 minutes at 3.6', () => ostrel.continuousVa(40) / 1000],
  ]),
];
