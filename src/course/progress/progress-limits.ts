/**
 * Caps on a progress record. The everyday readers and the file importer share them, so whatever can be saved can
 * also be exported and read back. Each is far above what a learner can reach by hand.
 */
export const progressLimits = {
  /** Characters of an imported file, checked before parsing: 50 000 attempts of four steps take about 25 million. */
  fileCharacters: 32 * 1024 * 1024,
  /** A slip's text, the deepest value of a valid file, sits inside seven containers. */
  fileDepth: 7,
  attempts: 50_000,
  drafts: 20_000,
  lessons: 5_000,
  stepsPerAttempt: 100,
  slipsPerStep: 20,
  answersPerDraft: 100,
  canDoPerLesson: 200,
  /** Characters of an id. */
  id: 200,
  /** Characters of a typed answer; a longer one is cut here, far beyond any figure or choice. */
  typed: 2_000,
} as const;

/** Keys that could reach an object's prototype; refused as ids and anywhere in an imported file. */
export const forbiddenKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);
