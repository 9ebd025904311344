/** Starting by rated current, as books and tables state it. */
export type StartingMultiple = {
  from: number;
  to: number;
  /** Id of the source. */
  basis: string;
};

/** Kinds of motor that a multiple is stated for. */
export type MultipleKind =
  | 'split-phase'
  | 'capacitor-start'
  | 'single-phase-table'
  | 'three-phase-design-b-c-d'
  | 'three-phase-table';

/** The two that end in "table" are what the NEC's locked-rotor and full-load tables give when divided, over all sizes (at 460 V). */
export const startingMultiples: Readonly<Record<MultipleKind, StartingMultiple>> = {
  'split-phase': { from: 6, to: 8, basis: 'mehta-machines' },
  'capacitor-start': { from: 3.5, to: 5, basis: 'mehta-machines' },
  'single-phase-table': { from: 6, to: 6, basis: 'nec-430' },
  'three-phase-design-b-c-d': { from: 6, to: 7, basis: 'easa-handbook' },
  'three-phase-table': { from: 5.37, to: 9.09, basis: 'nec-430' },
};
