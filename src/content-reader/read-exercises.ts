import { type Exercise, exerciseSchema } from '../course/schema/exercise.ts';
import { inverterSchema } from '../course/schema/inverter.ts';
import { type WorksheetText, worksheetTextSchema } from '../course/schema/worksheet-text.ts';
import { type InverterDatasheet, type InverterModel, solveHeatNetwork } from '../engine/index.ts';
import { type ContentFile, readYamlFolder } from './read-yaml-folder.ts';

/** Everything an exercise needs besides its worksheet's code: what the page fetches as one JSON file. */
export interface ExerciseData {
  slug: string;
  /** Path of its YAML file, for messages. */
  file: string;
  unitFolder: string;
  exercise: Exercise;
  text: WorksheetText;
  /** The inverters that the exercise names, by id, solved: a browser need not fit a heat network again. */
  inverters: Record<string, InverterModel>;
}

const once = <T>(read: () => T): (() => T) => {
  let known: { value: T } | null = null;
  return () => {
    known ??= { value: read() };
    return known.value;
  };
};

export const readInverters: () => ContentFile<InverterDatasheet>[] = once(() =>
  readYamlFolder('equipment/inverters', inverterSchema),
);

export const readWorksheetTexts: () => ContentFile<WorksheetText>[] = once(() =>
  readYamlFolder('strings/worksheets', worksheetTextSchema),
);

/** All exercises, joined to their words and inverters. @throws {Error} naming file and field when a reference leads nowhere */
export const readExercises: () => ExerciseData[] = once(() =>
  readYamlFolder('exercises', exerciseSchema).map(({ slug, folder, file, data }) => {
    const text = readWorksheetTexts().find((candidate) => candidate.slug === data.worksheet);
    if (!text) {
      throw new Error(
        `${file}: worksheet: expected words in content/strings/worksheets/${data.worksheet}.en.yaml, found no such file`,
      );
    }
    return {
      slug,
      file,
      unitFolder: folder,
      exercise: data,
      text: text.data,
      inverters: namedInverters(data),
    };
  }),
);

/** @throws {Error} for an unknown slug, listing those that exist */
export function readExercise(slug: string): ExerciseData {
  const found = readExercises().find((candidate) => candidate.slug === slug);
  if (found) return found;
  const known = readExercises().map((candidate) => candidate.slug);
  throw new Error(`exercise: expected one of\n  ${known.join('\n  ')}\nfound "${slug}"`);
}

/** Only the inverters an exercise can draw travel with it. */
function namedInverters(exercise: Exercise): Record<string, InverterModel> {
  const words = new Set(JSON.stringify(exercise.given).match(/[a-z0-9-]+/g));
  return Object.fromEntries(
    readInverters()
      .filter(({ data }) => words.has(data.id))
      .map(({ data }) => [data.id, solveHeatNetwork(data)]),
  );
}
