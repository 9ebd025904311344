import { readInverters } from '../../../src/content-reader/read-exercises.ts';
import { noLoad, simulateSystem, timeToStop, voltageUnderLimit } from '../../../src/engine/index.ts';
import { found, numbersOf } from './lesson-number.ts';
import { lessonUnit } from './lesson-unit.ts';

const folder = 'content/lessons/02-overload-levels';
const drawings = 'src/components/figures';
const ostrel = lessonUnit('ostrel-29');
const { model } = ostrel;
const lasts = (currentA: number) => found(timeToStop({ model, currentA, ambientC: 25 }).timeS);
const heaters = (realW: number) => ({ ...noLoad, impedance: { realW, reactiveVar: 0 } });
const under = (watts: number, electronicsW = 0) =>
  voltageUnderLimit({
    load: { ...heaters(watts - electronicsW), power: { realW: electronicsW, reactiveVar: 0 } },
    nominalV: 230,
    limitA: model.limitA,
  });
const countS = (id: string) => {
  const { voltageLostCycles, frequencyHz } = lessonUnit(id).model.datasheet;
  return voltageLostCycles / frequencyHz;
};

/** What an Ostrel 29 does when a load is left on: moments of one kind of event. */
function left(watts: number, kind: string, untilS = 3600): number[] {
  const { events } = simulateSystem({
    units: [{ id: 'a', phase: 'L1', model, ambientC: 25, loads: [{ startS: 0, load: heaters(watts) }] }],
    untilS,
    stopsTogether: true,
  });
  return events.filter((event) => event.kind === kind).map(({ timeS }) => timeS);
}
const stop = (watts: number, number: number) => found(left(watts, 'stop')[number - 1]);
const restart = (watts: number, number: number) => found(left(watts, 'restart')[number - 1]);
const cycleCounts = readInverters().map(({ data }) => data.voltageLostCycles);

export const limitNumbers = [
  ...numbersOf(`${folder}/01-three-levels.mdx`, [
    ['On Monday it gave up after three quarters of an hour.', () => Math.abs(lasts(15) / 3600 - 0.75) < 0.06],
    ['That made 24 A, and it took about a minute.', () => lasts(24) > 50 && lasts(24) < 75],
    ['from a unit that carries [[12.6]] A for ever', () => model.continuousA],
    [
      'ten minutes of it would have been harmless',
      () => {
        const { fast, slow } = ostrel.heatAfter(15 * 230, 600);
        return fast + slow < model.datasheet.warnAtHeatRatio;
      },
    ],
    ['3600 VA is [[15.7]] A, and 6100 VA', () => model.longDurationA],
    ['and 6100 VA is [[26.5]] A', () => model.limitA],
    ['{33\\,\\mathrm{A}} = [[185]]\\,\\mathrm{V}', () => under(33 * 230).voltageV],
    ['90 % of nominal, which is [[207]] V', () => 230 * model.datasheet.voltageHeldRatio],
    ['At 27 A the output would settle at [[226]] V', () => under(27 * 230).voltageV],
    ['voltage is lost from about [[29.5]] A on', () => model.limitA / model.datasheet.voltageHeldRatio],
    ['until heat ends it after less than a minute', () => lasts(model.limitA) < 60],
    [
      '**a fraction of a second**, on a few units a whole one',
      () => countS('ostrel-29') < 1 && countS('marrish-15') === 1,
    ],
  ]),
  ...numbersOf(`${folder}/05-voltage-lost.mdx`, [
    ['It was asked for [[31.7]] A', () => 7300 / 230],
    ['\\frac{26.5}{31.7} = [[192]]\\,\\mathrm{V}', () => under(7300).voltageV],
    ['192 V is [[84]] % of 230 V', () => 100 * under(7300).voltageRatio],
    [
      '6100 / 0.9 = [[6780]]\\,\\mathrm{W}',
      () => (230 * model.limitA) / model.datasheet.voltageHeldRatio,
      10,
    ],
    ['There is no voltage at which the loads are content.', () => under(7300, 7300 / 4).collapsed],
    [
      'With 30 % electronics among them it is [[13]] %',
      () => 100 * (1 - under(6100 * 1.05, 6100 * 1.05 * 0.3).voltageRatio),
    ],
    ['| none | [[216]] V | yes, 94 % |', () => under(6500).voltageV],
    ['| none | 216 V | yes, [[94]] % |', () => 100 * under(6500).voltageRatio],
    ['| 1500 W | [[202]] V | no, 88 % |', () => under(6500, 1500).voltageV],
    ['| 2000 W | [[184]] V | no, 80 % |', () => under(6500, 2000).voltageV],
    ['| 2300 W | nowhere: it collapses | no |', () => under(6500, 2300).collapsed],
    ['[[5]] cycles in one of our invented sheets', () => Math.min(...cycleCounts)],
    ['in one of our invented sheets, [[50]] in another', () => Math.max(...cycleCounts)],
    ['At 60 Hz, 25 cycles are [[0.42]] s', () => 25 / 60],
  ]),
  ...numbersOf(`${folder}/06-after-a-stop.mdx`, [
    ['Look at the runs: [[152]] s, then', () => stop(4500, 1)],
    ['then [[76]] s, then 71 s', () => stop(4500, 2) - restart(4500, 1)],
    ['then 76 s, then [[71]] s', () => stop(4500, 3) - restart(4500, 2)],
    ['Look at the gaps: [[30]] s and 30 s', () => restart(4500, 1) - stop(4500, 1)],
    ['| First stop | after 2 min [[32]] s, warning before |', () => stop(4500, 1) - 120],
    ['Third stop: lockout | [[6]] min after the beginning |', () => found(left(4500, 'lockout')[0]) / 60],
    ['| 6 min after the beginning | [[61.5]] s after the beginning |', () => found(left(7300, 'lockout')[0])],
    [
      'only the seventh stop locks the unit out',
      () => left(3600, 'lockout').length === 1 && left(3600, 'stop').length === 7,
    ],
    [
      "The joinery's three Ostrel 52 share them with the Ostrel 29",
      () => {
        const other = lessonUnit('ostrel-52').model.datasheet;
        const own = model.datasheet;
        return (
          other.waitS === own.waitS &&
          other.reclaimS === own.reclaimS &&
          other.stopsToLockout === own.stopsToLockout &&
          other.warnAtHeatRatio === own.warnAtHeatRatio
        );
      },
    ],
  ]),
  ...numbersOf(`${drawings}/StopSequence.astro`, [
    ['The unit runs for [[115]] seconds, warns for 37', () => found(left(4500, 'warning-on')[0])],
    ['warns for [[37]], stops', () => stop(4500, 1) - found(left(4500, 'warning-on')[0])],
  ]),
  ...numbersOf(`${drawings}/VoltsHeld.astro`, [
    ['it slides down: [[192]] volts at 7.3 kilowatts', () => under(7300).voltageV],
  ]),
];
