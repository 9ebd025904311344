/** Band of locked-rotor kilovolt-amperes per horsepower; the lower end belongs to it, the upper to the next letter. */
export type CodeLetterBand = {
  letter: string;
  fromKvaPerHp: number;
  /** null for the last letter, which has no upper end. */
  toKvaPerHp: number | null;
};

/** The upper ends; the lower end of each band is the upper end of the one before. I, O and Q are not used. */
const upperEnds: readonly (readonly [string, number | null])[] = [
  ['A', 3.15],
  ['B', 3.55],
  ['C', 4.0],
  ['D', 4.5],
  ['E', 5.0],
  ['F', 5.6],
  ['G', 6.3],
  ['H', 7.1],
  ['J', 8.0],
  ['K', 9.0],
  ['L', 10.0],
  ['M', 11.2],
  ['N', 12.5],
  ['P', 14.0],
  ['R', 16.0],
  ['S', 18.0],
  ['T', 20.0],
  ['U', 22.4],
  ['V', null],
];

/** Locked-rotor code letters of nameplates (NEMA MG 1, 10.37.2; NEC table 430.7(B) prints the upper ends one digit lower). */
export const codeLetters: readonly CodeLetterBand[] = upperEnds.map(([letter, toKvaPerHp], at) => ({
  letter,
  fromKvaPerHp: upperEnds[at - 1]?.[1] ?? 0,
  toKvaPerHp,
}));
