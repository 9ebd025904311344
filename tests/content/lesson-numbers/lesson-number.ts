import { readInverters } from '../../../src/content-reader/read-exercises.ts';
import { type InverterModel, solveHeatNetwork } from '../../../src/engine/index.ts';

/** A number that a lesson or a drawing prints, beside the calculation that must give it. */
export interface LessonNumber {
  /** Path below content/lessons, or of a drawing. */
  readonly file: string;
  /**
   * Words of the file as they stand there, blanks of any kind written as one space. The number that is held stands
   * in double brackets: "it lasts [[38]] minutes". Without brackets, `is` says whether the sentence is true.
   */
  readonly says: string;
  readonly is: () => number | boolean;
  /** The step to which the printed number is rounded, where its digits do not tell: 10 for "2380 VA". */
  readonly roundedTo?: number;
}

type Row = readonly [says: string, is: () => number | boolean, roundedTo?: number];

/** Rows of one file. */
export const numbersOf = (file: string, rows: readonly Row[]): LessonNumber[] =>
  rows.map(([says, is, roundedTo]) => ({
    file,
    says,
    is,
    ...(roundedTo === undefined ? {} : { roundedTo }),
  }));

export function unit(id: string): InverterModel {
  const found = readInverters().find(({ data }) => data.id === id);
  if (!found) throw new Error(`lesson numbers: expected the data sheet ${id}, found none`);
  return solveHeatNetwork(found.data);
}

/** For a calculation that may find nothing: the lesson says that it finds something. */
export function found(value: number | null | undefined): number {
  if (value === null || value === undefined)
    throw new Error('expected a number, found that it never happens');
  return value;
}
