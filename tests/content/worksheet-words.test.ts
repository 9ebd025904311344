import { describe, expect, it } from 'vitest';
import { readWorksheetTexts } from '../../src/content-reader/read-exercises.ts';
import { readYamlFolder } from '../../src/content-reader/read-yaml-folder.ts';
import { exerciseSchema } from '../../src/course/schema/exercise.ts';
import { loadWorksheet, worksheetIds } from '../../src/course/worksheets/registry.ts';
import type { Worksheet } from '../../src/course/worksheets/worksheet.ts';

const texts = new Map(readWorksheetTexts().map(({ slug, data }) => [slug, data]));

const slipIds = (worksheet: Worksheet): string[] =>
  worksheet.steps.flatMap((step) => step.slips.map((slip) => slip.id));

describe.each(worksheetIds)('words of %s', (id) => {
  it('name every given, step and slip of the worksheet, and nothing else', async () => {
    const worksheet = await loadWorksheet(id);
    const text = texts.get(id);
    expect(worksheet.id).toBe(id);
    expect(Object.keys(text?.steps ?? {}).sort()).toEqual(worksheet.steps.map((step) => step.id).sort());
    for (const step of worksheet.steps) {
      const slips = step.slips.map((slip) => slip.id).sort();
      expect(Object.keys(text?.steps[step.id]?.slips ?? {}).sort(), step.id).toEqual(slips);
      expect(new Set(slips).size, `${step.id}: slip ids`).toBe(slips.length);
    }
    const printed = Object.entries(worksheet.givens).filter(([, spec]) => !spec.kind.startsWith('inverter'));
    for (const [name] of printed) expect(text?.givens, name).toHaveProperty(name);
    for (const name of Object.keys(text?.givens ?? {})) expect(worksheet.givens, name).toHaveProperty(name);
  });

  it('has at least three slips, and words for every fixed option', async () => {
    const worksheet = await loadWorksheet(id);
    expect(slipIds(worksheet).length).toBeGreaterThanOrEqual(3);
    for (const step of worksheet.steps) {
      if (step.kind === 'numeric' || typeof step.options === 'function') continue;
      expect(Object.keys(texts.get(id)?.steps[step.id]?.options ?? {}).sort()).toEqual(
        [...step.options].sort(),
      );
    }
  });
});

describe('the set of worksheets', () => {
  it('is complete: no words without a worksheet, at least 12 worksheets and 40 slips', async () => {
    expect([...texts.keys()].sort()).toEqual([...worksheetIds].sort());
    const worksheets = await Promise.all(worksheetIds.map(loadWorksheet));
    expect(worksheets.length).toBeGreaterThanOrEqual(12);
    const slips = worksheets.flatMap(slipIds);
    expect(slips.length).toBeGreaterThanOrEqual(40);
  });

  it('is used: every worksheet has an exercise, every exercise lists all steps, uids are unique', async () => {
    const exercises = readYamlFolder('exercises', exerciseSchema);
    expect(new Set(exercises.map(({ data }) => data.uid)).size).toBe(exercises.length);
    expect(new Set(exercises.map(({ slug }) => slug)).size).toBe(exercises.length);
    expect([...new Set(exercises.map(({ data }) => data.worksheet))].sort()).toEqual(
      [...worksheetIds].sort(),
    );
    for (const { slug, data } of exercises) {
      const worksheet = await loadWorksheet(data.worksheet);
      expect(Object.keys(data.steps).sort(), slug).toEqual(worksheet.steps.map((step) => step.id).sort());
      if (data.harder) expect(exercises.map((other) => other.slug)).toContain(data.harder);
    }
    expect(exercises.length).toBeGreaterThanOrEqual(16);
  });
});
