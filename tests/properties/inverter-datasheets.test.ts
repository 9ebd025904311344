import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { inverterSchema } from '../../src/course/schema/inverter.ts';
import {
  allowedHeat,
  heatAfter,
  type InverterDatasheet,
  settledHeat,
  solveHeatNetwork,
  timeToStop,
} from '../../src/engine/inverter/index.ts';

const folder = new URL('../../content/equipment/inverters/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
const read = (file: string): unknown => parse(readFileSync(new URL(file, folder), 'utf8'));
const sheets: InverterDatasheet[] = files.map((file) => inverterSchema.parse(read(file)));

describe('the invented inverter datasheets', () => {
  it.each(files)('%s names itself as its file', (file) => {
    expect(inverterSchema.parse(read(file)).id).toBe(file.replace('.yaml', ''));
  });

  it.each(sheets)('$id reproduces its own points', (datasheet) => {
    const model = solveHeatNetwork(datasheet);
    const { referenceAmbientC: ambientC, longDuration, surge, hot } = datasheet;
    const heat = settledHeat(model, 0);
    for (const [currentA, durationS] of [
      [model.longDurationA, longDuration.durationS],
      [model.surgeA, surge.durationS],
    ] as const) {
      const after = heatAfter({ model, heat, currentA, durationS });
      expect(Math.abs(after.fast + after.slow - 1)).toBeLessThan(1e-9);
      expect(Math.abs((timeToStop({ model, currentA, ambientC }).timeS ?? 0) / durationS - 1)).toBeLessThan(
        1e-9,
      );
    }
    const settled = (currentA: number) =>
      settledHeat(model, currentA).fast + settledHeat(model, currentA).slow;
    expect(Math.abs(settled(model.continuousA) - 1)).toBeLessThan(1e-9);
    expect(Math.abs(settled(model.hotA) - allowedHeat({ model, ambientC: hot.ambientC }))).toBeLessThan(1e-9);
    expect(timeToStop({ model, currentA: model.continuousA, ambientC }).timeS).toBeNull();
    expect(timeToStop({ model, currentA: model.continuousA * 1.001, ambientC }).timeS).not.toBeNull();
  });

  it.each(sheets)('$id keeps the proportions of real units', (datasheet) => {
    const model = solveHeatNetwork(datasheet);
    const within = (value: number, from: number, upTo: number): void => {
      expect(value).toBeGreaterThanOrEqual(from);
      expect(value).toBeLessThanOrEqual(upTo);
    };
    within(model.surgeA / model.continuousA, 1.6, 2.2);
    within(model.limitA / model.surgeA, 1, 1.1);
    within(datasheet.idleLossW, 8, 60);
    within(datasheet.efficiencyFullRatio, 0.88, 0.96);
    within(datasheet.efficiencyHalfRatio, datasheet.efficiencyFullRatio, 0.96);
    within(model.continuousA * datasheet.acNominalV, 800, 15_000);
    within(model.network.fastTimeConstantS, 10, 300);
    within(model.network.fastShareRatio, 0.3, 0.7);
  });

  it('differ as much as the exercises need', () => {
    const kinds = (pick: (sheet: InverterDatasheet) => unknown) => new Set(sheets.map(pick)).size;
    expect(sheets.length).toBeGreaterThanOrEqual(12);
    expect(kinds((sheet) => sheet.dcNominalV)).toBe(3);
    expect(kinds((sheet) => sheet.frequencyHz)).toBe(2);
    expect(kinds((sheet) => sheet.continuous.power.unit)).toBe(2);
    expect(kinds((sheet) => sheet.referenceAmbientC)).toBe(4);
    expect(sheets.some((sheet) => sheet.hot.power.unit !== sheet.continuous.power.unit)).toBe(true);
    expect(kinds((sheet) => sheet.voltageLostCycles)).toBeGreaterThan(5);
    expect(kinds((sheet) => sheet.stopsToLockout)).toBeGreaterThan(3);
  });

  it('include a range of four sizes that differ in rating alone, not in manners', () => {
    const range = sheets.filter((sheet) => sheet.range !== undefined);
    expect(range).toHaveLength(4);
    expect(new Set(range.map((sheet) => sheet.range)).size).toBe(1);
    for (const pick of [
      'waitS',
      'reclaimS',
      'stopsToLockout',
      'voltageLostCycles',
      'referenceAmbientC',
    ] as const) {
      expect(new Set(range.map((sheet) => sheet[pick])).size).toBe(1);
    }
    const ratings = range.map((sheet) => solveHeatNetwork(sheet).continuousA);
    const order = (of: number[]) => of.map((_, i) => i).toSorted((a, b) => (of[a] ?? 0) - (of[b] ?? 0));
    expect(order(range.map((sheet) => sheet.costIndex))).toEqual(order(ratings));
    expect(order(range.map((sheet) => sheet.massKg))).toEqual(order(ratings));
  });

  it('would not accept an impossible one, and name the point', () => {
    const written = read(files[0] ?? '') as Record<string, unknown>;
    const result = inverterSchema.safeParse({ ...written, surge: { power: '40 kVA', for: '100 s' } });
    expect(result.success).toBe(false);
    expect(result.error?.issues[0]?.path).toEqual(['current-limit', 'power']);
  });
});
