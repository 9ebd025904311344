import { loadCurrent, powerTriangle, rmsOfSegments, waveformFactors } from '../../../src/engine/index.ts';
import { numbersOf } from './lesson-number.ts';
import { amperes, lessonUnit } from './lesson-unit.ts';

const folder = 'content/lessons/01-current-power-meters';
const ostrel = lessonUnit('ostrel-29');
const wenlo = lessonUnit('wenlo-4');
const load = (realPowerW: number, powerFactor = 1) =>
  loadCurrent({ realPowerW, powerFactor, voltageV: 230, phases: 1 });
const { losses } = ostrel.model;
const pumpA = load(1500, 0.75).currentA;
const heaterA = load(1500).currentA;

const milkRoom = [
  powerTriangle({ realPowerW: 1200, powerFactor: 1 }),
  powerTriangle({ realPowerW: 900, powerFactor: 0.75 }),
  powerTriangle({ realPowerW: 400, powerFactor: 0.6 }),
];
const together = powerTriangle({
  realPowerW: milkRoom.reduce((sum, { realPowerW }) => sum + realPowerW, 0),
  reactivePowerVar: milkRoom.reduce((sum, { reactivePowerVar }) => sum + reactivePowerVar, 0),
});
const galley = (lowA: number) =>
  rmsOfSegments([
    { durationS: 10, from: 18 },
    { durationS: 20, from: lowA },
  ]);
/** The galley's cycle, 18 A for a third of the time and 6 A for the rest, stretched. */
const stretched = (cycleS: number) =>
  [
    [4140, cycleS / 3],
    [1380, (cycleS * 2) / 3],
  ] as const;
const peakPercent = (cycleS: number) => 100 * ostrel.duty(...stretched(cycleS)).peakHeatRatio;
const bites = (widthRatio: number) => waveformFactors({ kind: 'truncated-cosine', widthRatio });
const kofiA = 10.3 / 0.58;

export const unit1Numbers = [
  ...numbersOf(`${folder}/01-current-decides.mdx`, [
    ['the inverter has to supply [[1429]] VA', () => load(1000, 0.7).apparentPowerVa],
    [
      'also carries [[1020]] var',
      () => powerTriangle({ realPowerW: 1000, powerFactor: 0.7 }).reactivePowerVar,
    ],
    ['the numbers are $a = [[18]]\\,\\mathrm{W}$', () => losses.constantW],
    ['$b = [[2.49]]\\,\\mathrm{W/A}$', () => losses.linearWPerA],
    ['$c = [[1.276]]\\,\\mathrm{W/A^2}$', () => losses.squareWPerA2],
    ['| 4.35 A | [[53]] W | the heater: 1000 W |', () => ostrel.lossesAt(load(1000).currentA)],
    ['| 6.21 A | [[83]] W | the pump: 1000 W |', () => ostrel.lossesAt(load(1000, 0.7).currentA)],
    ['| [[12.6]] A | 252 W | all it may carry for ever at 25 °C |', () => ostrel.model.continuousA],
    ['| 12.6 A | [[252]] W | all it may carry for ever at 25 °C |', () => ostrel.model.continuousLossW],
    ['| 25.2 A | [[891]] W | twice that: three and a half times the heat |', () => ostrel.lossesAt(25.2)],
    ['2500 W are [[3125]] VA: 13.6 A through', () => load(2500, 0.8).apparentPowerVa],
    ['= 18 + 21.7 + 96.6 = [[136]]\\,\\mathrm{W}', () => ostrel.lossesAt(pumpA)],
    ['The current is [[6.5]] A, the loss 88 W', () => heaterA],
    ['the loss [[88]] W instead of 136 W', () => ostrel.lossesAt(heaterA)],
    ['The battery supplies [[1588]] W instead of 1636 W', () => 1500 + ostrel.lossesAt(heaterA)],
    [
      'over a third less heat to get rid of',
      () => 1 - ostrel.lossesAt(heaterA) / ostrel.lossesAt(pumpA) > 1 / 3,
    ],
    [
      '0.73 are [[1507]] W from the cable',
      () =>
        loadCurrent({ realPowerW: 1100, efficiencyRatio: 0.73, voltageV: 230, phases: 1 }).apparentPowerVa,
    ],
  ]),
  ...numbersOf(`${folder}/02-adding-loads.mdx`, [
    ['the straight line: [[2830]] VA', () => together.apparentPowerVa, 10],
    [
      '| **2500 W** | | [[3067]] VA | **1327 var** |',
      () => milkRoom.reduce((sum, one) => sum + one.apparentPowerVa, 0),
    ],
    ['| 3067 VA | **[[1327]] var** |', () => together.reactivePowerVar],
    ['That is [[12.3]] A at 230 V', () => amperes(together.apparentPowerVa)],
    ['\\sqrt{132} = [[11.5]]\\,\\mathrm{A}', () => galley(6)],
    ['the root is [[12.7]] A. Just too much.', () => galley(9)],
    ['| 30 s | 10 s | [[87]] %: runs for ever |', () => peakPercent(30)],
    ['| 1 min | 20 s | [[91]] %: runs for ever, warns |', () => peakPercent(60)],
    ['| 2 min | 40 s | [[98]] %: only just |', () => peakPercent(120)],
    ['| 3 min | 1 min | [[104]] %: stops |', () => peakPercent(180)],
    ['| 6 min | 2 min | [[120]] %: stops |', () => peakPercent(360)],
    ['| 30 min | 10 min | [[139]] %: stops in its first cycle |', () => peakPercent(1800)],
    ['stops in its first cycle', () => ostrel.dutyStopsS(stretched(1800), 25) < 600],
    ['it stops within five', () => ostrel.lastsS(4140) < 300],
    ['The mean heat is [[84]] % in every line', () => 100 * ostrel.duty(...stretched(30)).meanHeatRatio],
    ['is [[78]] s. Try both ends', () => ostrel.model.network.fastTimeConstantS],
    ['18 A is below [[26.5]] A', () => ostrel.model.limitA],
    [
      'lies some [[5]] % above the mean',
      () => peakPercent(40) / ostrel.duty(...stretched(40)).meanHeatRatio - 100,
    ],
    [
      'this unit can give, it is about [[10]] %',
      () => {
        const { peakHeatRatio, meanHeatRatio } = ostrel.duty([6100, 8], [0, 32]);
        return 100 * (peakHeatRatio / meanHeatRatio - 1);
      },
    ],
    ['[[211]] W against 215 W', () => (10 * ostrel.lossesAt(18) + 20 * ostrel.lossesAt(6)) / 30],
    ['211 W against [[215]] W', () => ostrel.lossesAt(galley(6))],
  ]),
  ...numbersOf(`${folder}/03-meters.mdx`, [
    ['Their Wenlo 4 carries [[17.4]] A for ever at 20 °C', () => wenlo.model.continuousA],
    ['it is loaded to [[59]] %', () => (100 * 10.3) / wenlo.model.continuousA],
    [
      '| Triangle | 10 A | [[9.6]] A | 17 A |',
      () => 10 * waveformFactors({ kind: 'triangle' }).averagingMeterRatio,
    ],
    [
      'a heater on a simple inverter | 10 A | [[11.1]] A | 10 A |',
      () => 10 * waveformFactors({ kind: 'square' }).averagingMeterRatio,
    ],
    ['bites half of the time | 10 A | [[7.1]] A | 20 A |', () => 10 * bites(1 / 2).averagingMeterRatio],
    ['a third of the time | 10 A | [[5.8]] A | 24 A |', () => 10 * bites(1 / 3).averagingMeterRatio],
    ['a third of the time | 10 A | 5.8 A | [[24]] A |', () => 10 * bites(1 / 3).crestFactor],
    ['a quarter of the time | 10 A | [[5.0]] A | 28 A |', () => 10 * bites(1 / 4).averagingMeterRatio],
    ['a quarter of the time | 10 A | 5.0 A | [[28]] A |', () => 10 * bites(1 / 4).crestFactor],
    ['$17.8 / 17.4 = [[1.02]]$', () => kofiA / wenlo.model.continuousA],
    ['after an hour and three quarters', () => Math.abs(wenlo.lastsS(kofiA * 230) / 3600 - 1.75) < 0.125],
    ['or [[83]] %. Then the inverter is not overloaded', () => (100 * 10.3) / 0.71 / wenlo.model.continuousA],
    ['take [[1.7]] times what the averaging meter shows', () => 1 / bites(1 / 3).averagingMeterRatio],
  ]),
];
