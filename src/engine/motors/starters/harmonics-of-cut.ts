import { phaseCutWave } from './phase-cut-wave.ts';

const angleStepDeg = 10;
const angles = 9;
const ratioStep = 0.05;
const ratios = Math.round(1 / ratioStep) + 1;

/** Harmonic ratio against fundamental voltage, for one load angle: a row of the table. */
const rowFor = (loadAngleDeg: number): number[] => {
  const row = Array.from({ length: ratios }, () => 0);
  let before = { voltageFundamentalRatio: 1, harmonicRatio: 0 };
  let place = ratios - 2;
  const firings = 80;
  for (let n = 1; n < firings && place >= 0; n++) {
    const firingDeg = loadAngleDeg + ((180 - loadAngleDeg) * n) / firings;
    const wave = phaseCutWave({ firingDeg, loadAngleDeg });
    while (place >= 0 && place * ratioStep >= wave.voltageFundamentalRatio) {
      const span = before.voltageFundamentalRatio - wave.voltageFundamentalRatio;
      const share = span > 0 ? (before.voltageFundamentalRatio - place * ratioStep) / span : 1;
      row[place] = before.harmonicRatio + share * (wave.harmonicRatio - before.harmonicRatio);
      place -= 1;
    }
    before = wave;
  }
  // Almost nothing let through: as distorted as the last wave tried.
  for (; place >= 0; place--) row[place] = before.harmonicRatio;
  return row;
};

let table: Float64Array | null = null;

const filledTable = (): Float64Array => {
  const rows = Array.from({ length: angles }, (_, n) => rowFor(n * angleStepDeg));
  return Float64Array.from(rows.flat());
};

/**
 * Harmonics of the current behind a phase-cutting starter by its fundamental, from a table of `phaseCutWave` over
 * load angle (steps of 10°, up to 80°) and fundamental voltage (steps of 0.05), read between its points.
 */
export const harmonicsOfCut = (fundamentalRatio: number, loadAngleDeg: number): number => {
  table ??= filledTable();
  const x = Math.min(angles - 1, Math.max(0, loadAngleDeg / angleStepDeg));
  const y = Math.min(ratios - 1, Math.max(0, fundamentalRatio / ratioStep));
  const i = Math.min(angles - 2, Math.floor(x));
  const j = Math.min(ratios - 2, Math.floor(y));
  const at = (m: number, n: number): number => table?.[m * ratios + n] as number;
  const low = at(i, j) + (y - j) * (at(i, j + 1) - at(i, j));
  const high = at(i + 1, j) + (y - j) * (at(i + 1, j + 1) - at(i + 1, j));
  return low + (x - i) * (high - low);
};
