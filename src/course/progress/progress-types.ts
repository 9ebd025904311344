/** One step of a submitted exercise, with what the learner typed and what it earned. */
export interface AttemptStep {
  readonly stepId: string;
  /** The answer exactly as typed, so that a later, better parser can still be shown what was meant. */
  readonly given: string;
  /** Marks [1], 0 … possible. */
  readonly earned: number;
  readonly possible: number;
  /** True when the step was right only given the learner's own wrong earlier step. */
  readonly carried: boolean;
  /** Ids of the slips that explain a wrong figure; empty when none was found. */
  readonly slips: readonly string[];
}

/** One graded submission. Never changed once recorded. */
export interface Attempt {
  /** Unique on every device: two records with one id are the same attempt. */
  readonly id: string;
  readonly exerciseUid: string;
  readonly seed: number;
  /** Moment of submission by the device's clock [ms since 1970]; may run backwards between attempts. */
  readonly at: number;
  readonly steps: readonly AttemptStep[];
  readonly earned: number;
  readonly possible: number;
  readonly hintsUsed: number;
}

/** Typed but not yet submitted: step id → text as typed. */
export interface Draft {
  readonly exerciseUid: string;
  readonly seed: number;
  readonly answers: Readonly<Record<string, string>>;
  readonly at: number;
}

export interface LessonMark {
  readonly lessonUid: string;
  /** Ids of the ticked "I can …" lines, sorted. */
  readonly canDo: readonly string[];
  readonly visitedAt: number;
  readonly doneAt: number | null;
}

export type Theme = 'auto' | 'light' | 'dark';

export interface Settings {
  readonly theme: Theme;
}

/** Everything but the attempts: small, rewritten at each change, kept apart from the log. */
export interface Snapshot {
  /** Keyed by `draftKey`. */
  readonly drafts: Readonly<Record<string, Draft>>;
  /** Keyed by lesson uid. */
  readonly lessons: Readonly<Record<string, LessonMark>>;
  readonly settings: Settings;
}

export interface Progress extends Snapshot {
  /** Sorted by time, then id; each id once. */
  readonly attempts: readonly Attempt[];
}

export const emptyProgress: Progress = { attempts: [], drafts: {}, lessons: {}, settings: { theme: 'auto' } };
