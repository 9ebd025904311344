import { type Complex, complexProduct, complexQuotient } from '../../src/engine/ac/index.ts';

type Matrix = readonly (readonly number[])[];

const cell = (matrix: Matrix, row: number, column: number): number => matrix[row]?.[column] ?? Number.NaN;

const product = (a: Matrix, b: Matrix): number[][] =>
  a.map((row) => a.map((_, column) => row.reduce((sum, value, k) => sum + value * cell(b, k, column), 0)));

/** Coefficients of the characteristic polynomial, highest power first (Faddeev and LeVerrier). */
const characteristic = (matrix: Matrix): number[] => {
  const coefficients = [1];
  let helper: number[][] = matrix.map((row) => row.map(() => 0));
  for (let k = 1; k <= matrix.length; k++) {
    const last = coefficients[k - 1] ?? 0;
    helper = product(matrix, helper).map((row, i) => row.map((value, j) => value + (i === j ? last : 0)));
    const trace = product(matrix, helper).reduce((sum, row, i) => sum + (row[i] ?? 0), 0);
    coefficients.push(-trace / k);
  }
  return coefficients;
};

/** Eigenvalues of a small matrix, largest imaginary part first (roots of its polynomial after Durand and Kerner). */
export const eigenvalues = (matrix: Matrix): Complex[] => {
  const scale = Math.max(...matrix.flat().map(Math.abs));
  const coefficients = characteristic(matrix.map((row) => row.map((value) => value / scale)));
  let roots: Complex[] = matrix.map((_, n) => {
    const angle = (2 * Math.PI * n) / matrix.length + 0.4;
    return { re: Math.cos(angle), im: Math.sin(angle) };
  });
  for (let round = 0; round < 500; round++) {
    roots = roots.map((root, n) => {
      let value: Complex = { re: 0, im: 0 };
      for (const coefficient of coefficients) {
        const next = complexProduct(value, root);
        value = { re: next.re + coefficient, im: next.im };
      }
      const others = roots.filter((_, k) => k !== n);
      const spread = others.reduce<Complex>(
        (all, other) => complexProduct(all, { re: root.re - other.re, im: root.im - other.im }),
        { re: 1, im: 0 },
      );
      const step = complexQuotient(value, spread);
      return { re: root.re - step.re, im: root.im - step.im };
    });
  }
  return roots.map(({ re, im }) => ({ re: re * scale, im: im * scale })).sort((a, b) => b.im - a.im);
};

/** Solves A·x = b by elimination with pivots. */
export const solveLinear = (matrix: Matrix, right: readonly number[]): number[] => {
  const rows = matrix.map((row, n) => [...row, right[n] ?? 0]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    rows.sort((a, b) => {
      const done = rows.indexOf(a) < k || rows.indexOf(b) < k;
      return done ? 0 : Math.abs(b[k] ?? 0) - Math.abs(a[k] ?? 0);
    });
    for (let i = k + 1; i < size; i++) {
      const factor = cell(rows, i, k) / cell(rows, k, k);
      rows[i] = (rows[i] ?? []).map((value, j) => value - factor * cell(rows, k, j));
    }
  }
  const found = right.map(() => 0);
  for (let k = size - 1; k >= 0; k--) {
    const known = found.reduce((sum, value, j) => (j > k ? sum + cell(rows, k, j) * value : sum), 0);
    found[k] = (cell(rows, k, size) - known) / cell(rows, k, k);
  }
  return found;
};
