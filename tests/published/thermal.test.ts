import { describe, expect, it } from 'vitest';
import {
  altitudeRatio,
  currentForLossA,
  exponentialApproach,
  exponentialTarget,
  fosterResponse,
  nodeFromReadings,
  periodicNode,
  timeToLevel,
  timeToRise,
} from '../../src/engine/inverter/index.ts';
import { fosterPairs, overloadRelayTable, type ThermalRow, thermalRows } from './rows/thermal.ts';

type Given = Record<string, number>;

/** Power that heats `heatRatio` times as much as the rated power, with losses α + p². */
const powerForHeat = (ratedKw: number, heatRatio: number, alpha: number): number =>
  ratedKw * currentForLossA({ constantW: alpha, linearWPerA: 0, squareWPerA2: 1 }, heatRatio * (1 + alpha));

const shortTimeKw = (given: Given): number => {
  const { ratedKw = 0, heatingMin = 0, shortMin = 0, constantLossRatio = 0 } = given;
  const node = { start: 0, end: 1, timeConstantS: heatingMin, durationS: shortMin };
  return powerForHeat(ratedKw, exponentialTarget(node), constantLossRatio);
};

/** Peak of the settled cycle per unit of target: the cycle is begun with the rest, so that it starts at the peak. */
const settledPeak = (given: Given): number => {
  const { heatingMin = 0, coolingMin = 0, onMin = 0, offMin = 0 } = given;
  return periodicNode({
    segments: [
      { durationS: offMin, target: 0, timeConstantS: coolingMin },
      { durationS: onMin, target: 1, timeConstantS: heatingMin },
    ],
  }).startSettled;
};

const intermittentKw = (given: Given): number =>
  powerForHeat(given.ratedKw ?? 0, 1 / settledPeak(given), given.constantLossRatio ?? 0);

const slopeAt = (start: number, { finalK = 0, timeConstantMin = 0 }: Given): number => {
  const durationS = 1e-5;
  const end = exponentialApproach({ start, target: finalK, timeConstantS: timeConstantMin, durationS });
  return (end - start) / durationS;
};

const solutions: Record<(typeof thermalRows)[number]['id'], (given: Given) => Record<string, number>> = {
  'TH-01': ({ firstK = 0, secondK = 0, intervalMin = 0 }) => {
    const node = nodeFromReadings({ start: 0, first: firstK, second: secondK, intervalS: intervalMin });
    return { timeConstantMin: node.timeConstantS, finalK: node.target };
  },
  'TH-03': ({ ambientC = 0, firstC = 0, secondC = 0, intervalH = 0, cooledToC = 0, coolingH = 0 }) => {
    const node = nodeFromReadings({ start: ambientC, first: firstC, second: secondC, intervalS: intervalH });
    const timeConstantsPassed = timeToLevel({
      start: node.target,
      target: ambientC,
      timeConstantS: 1,
      level: cooledToC,
    });
    return {
      finalC: node.target,
      timeConstantH: node.timeConstantS,
      coolingTimeConstantH: coolingH / (timeConstantsPassed ?? Number.NaN),
    };
  },
  'TH-04': (given) => ({ peakK: (given.finalK ?? 0) * settledPeak(given) }),
  'TH-05': (given) => ({
    firstSlopeKPerMin: slopeAt(given.firstK ?? 0, given),
    secondSlopeKPerMin: slopeAt(given.secondK ?? 0, given),
  }),
  'TH-07': (given) => ({ shortTimeKw: shortTimeKw(given), intermittentKw: intermittentKw(given) }),
  'TH-09': (given) => ({ shortTimeKw: shortTimeKw(given) }),
  'TH-11': (given) => ({ shortTimeKw: shortTimeKw(given), intermittentKw: intermittentKw(given) }),
  'TH-12': ({ timeConstantS = 0, loadedS = 0, unloadedS = 0, unloadedK = 0, lowestK = 0 }) => {
    const highestK = exponentialApproach({
      start: lowestK,
      target: unloadedK,
      timeConstantS,
      durationS: -unloadedS,
    });
    const loaded = { start: lowestK, end: highestK, timeConstantS, durationS: loadedS };
    return { highestK, alwaysLoadedK: exponentialTarget(loaded) };
  },
  'TH-13': (given) => ({ shortTimeKw: shortTimeKw(given) }),
  'TH-15': ({ heatingMin = 0, coolingMin = 0, finalK = 0, onMin = 0, offMin = 0 }) => {
    const hot = exponentialApproach({
      start: 0,
      target: finalK,
      timeConstantS: heatingMin,
      durationS: onMin,
    });
    const cooled = exponentialApproach({
      start: hot,
      target: 0,
      timeConstantS: coolingMin,
      durationS: offMin,
    });
    return { afterOneCycleK: cooled };
  },
  'TH-15 settled': (given) => {
    const { coolingMin = 0, offMin = 0, finalK = 0 } = given;
    const peakK = finalK * settledPeak(given);
    const rest = { start: peakK, target: 0, timeConstantS: coolingMin, durationS: offMin };
    return { peakK, troughK: exponentialApproach(rest) };
  },
  'TH-16': ({ ratedKw = 0, firstK = 0, secondK = 0, intervalH = 0, limitK = 0, shortH = 0 }) => {
    const node = nodeFromReadings({ start: 0, first: firstK, second: secondK, intervalS: intervalH });
    const overload = { start: 0, end: limitK, timeConstantS: node.timeConstantS, durationS: shortH };
    return {
      timeConstantH: node.timeConstantS,
      finalK: node.target,
      shortTimeKw: powerForHeat(ratedKw, exponentialTarget(overload) / node.target, 0),
    };
  },
  'TH-18': ({ startK = 0, finalK = 0, timeConstantH = 0, timeH = 0, ambientC = 0 }) => ({
    temperatureC:
      ambientC +
      exponentialApproach({ start: startK, target: finalK, timeConstantS: timeConstantH, durationS: timeH }),
  }),
  'TH-20': ({ resistanceOhm = 0, capacitanceF = 0, supplyV = 0 }) => {
    const timeConstantS = resistanceOhm * capacitanceF;
    const node = { start: 0, target: supplyV, timeConstantS };
    return {
      timeConstantS,
      afterOneTimeConstantV: exponentialApproach({ ...node, durationS: timeConstantS }),
      halfS: timeToLevel({ ...node, level: supplyV / 2 }) ?? Number.NaN,
    };
  },
  'TH-21': ({ supplyV = 0, timeConstantS = 0 }) => {
    const node = { start: 0, target: supplyV, timeConstantS };
    return {
      after2sV: exponentialApproach({ ...node, durationS: 2 }),
      after7250msV: exponentialApproach({ ...node, durationS: 7.25 }),
    };
  },
  'TH-36': () => {
    const nodes = fosterPairs.map(([weight, capacity]) => ({ weight, timeConstantS: weight * capacity }));
    const times = ['1e-4', '1e-3', '1e-2', '1e-1', 'Infinity'];
    return Object.fromEntries(times.map((t) => [t, fosterResponse({ nodes, durationS: Number(t) })]));
  },
  'TH-37': ({ junctionC = 0, ambientC = 0, lossW = 1, innerKPerW = 0 }) => {
    const inner = { nodes: [{ weight: innerKPerW, timeConstantS: 1 }], durationS: Number.POSITIVE_INFINITY };
    return { heatSinkKPerW: (junctionC - ambientC) / lossW - fosterResponse(inner) };
  },
  'TH-39': ({ heightM = 0, ambientRatio = 0, lowerHeightM = 0 }) => {
    const altitude = { fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 };
    const heightRatio = altitudeRatio({ altitude, altitudeM: heightM });
    return {
      lowerHeightRatio: altitudeRatio({ altitude, altitudeM: lowerHeightM }),
      heightRatio,
      bothRatio: heightRatio * ambientRatio,
    };
  },
};

/** Half of the last printed digit. */
const toleranceOf = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1] ?? '').length;

const expectPrinted = (found: number | undefined, printed: string): void => {
  expect(
    Math.abs((found ?? Number.NaN) - Number(printed)),
    `${found} against ${printed}`,
  ).toBeLessThanOrEqual(toleranceOf(printed) * (1 + 1e-9));
};

describe('published heating, cooling and short-time ratings', () => {
  it.each<ThermalRow>(thermalRows)('$id $source, $place', (row) => {
    const results = solutions[row.id as keyof typeof solutions](row.given);
    expect(Object.keys(results).toSorted()).toEqual(Object.keys(row.printed).toSorted());
    for (const [result, printed] of Object.entries(row.printed)) expectPrinted(results[result], printed);
    for (const trap of row.traps ?? []) {
      const distance = Math.abs((results[trap.result] ?? Number.NaN) - Number(trap.printed));
      expect(distance).toBeGreaterThan(toleranceOf(trap.printed));
    }
  });
});

describe(`${overloadRelayTable.cold.source}, ${overloadRelayTable.cold.place}`, () => {
  const { multiples, printedByTimeConstantS } = overloadRelayTable.cold;
  const rows = Object.entries(printedByTimeConstantS).flatMap(([timeConstantS, column]) =>
    column.map((printed, i) => ({
      timeConstantS: Number(timeConstantS),
      multiple: multiples[i] ?? Number.NaN,
      printed,
    })),
  );

  it.each(rows)('gives $printed s at $multiple times the setting, time constant $timeConstantS s', (row) => {
    const target = row.multiple ** 2;
    expectPrinted(
      timeToLevel({ start: 0, target, timeConstantS: row.timeConstantS, level: 1 }) ?? undefined,
      row.printed,
    );
  });

  it.each(rows)(
    'is met by two nodes of one time constant: $printed s at $multiple, $timeConstantS s',
    (row) => {
      // The inverter's own root finder, its two nodes made (almost) equal.
      const target = row.multiple ** 2;
      const curve = {
        steady: target,
        fastPart: -0.4 * target,
        slowPart: -0.6 * target,
        fastTimeConstantS: row.timeConstantS * (1 - 1e-9),
        slowTimeConstantS: row.timeConstantS,
      };
      expectPrinted(timeToRise({ curve, level: 1 }) ?? undefined, row.printed);
    },
  );
});

describe(`${overloadRelayTable.hot.source}, ${overloadRelayTable.hot.place}`, () => {
  const { multiples, previousRatio, timeConstantS, printed } = overloadRelayTable.hot;

  it.each(multiples.map((multiple, i) => ({ multiple, printed: printed[i] ?? '' })))(
    'gives $printed s at $multiple times the setting',
    (row) => {
      const node = { start: previousRatio ** 2, target: row.multiple ** 2, timeConstantS, level: 1 };
      expectPrinted(timeToLevel(node) ?? undefined, row.printed);
    },
  );
});
