/** A small square system of equations, by elimination with row exchange. */
const solveLinear = (matrix: readonly (readonly number[])[], right: readonly number[]): number[] => {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const size = rows.length;
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let i = column + 1; i < size; i++)
      if (Math.abs(at(i, column)) > Math.abs(at(best, column))) best = i;
    const pivotRow = rows[best] ?? [];
    rows[best] = rows[column] ?? [];
    rows[column] = pivotRow;
    for (let i = column + 1; i < size; i++) {
      const factor = at(i, column) / at(column, column);
      rows[i] = (rows[i] ?? []).map((value, j) => value - factor * at(column, j));
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    const known = solution.reduce((sum, value, j) => (j > i ? sum + at(i, j) * value : sum), 0);
    solution[i] = (at(i, size) - known) / at(i, i);
  }
  return solution;
};

const sumOfSquares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value ** 2, 0);

const STEP = 1e-6;

/**
 * A root near the start of a system with more unknowns than equations: damped Newton steps, each the shortest that
 * serves, so that what the equations leave open stays near its start.
 */
export const nearestRoot = (problem: {
  start: readonly number[];
  residualsAt: (point: readonly number[]) => readonly number[];
  rounds: number;
}): { point: readonly number[]; residuals: readonly number[] } => {
  const { residualsAt } = problem;
  let point = problem.start;
  let residuals = residualsAt(point);
  let damping = 1e-2;
  for (let round = 0; round < problem.rounds && sumOfSquares(residuals) > 1e-24; round++) {
    const columns = point.map((_, j) => {
      const moved = residualsAt(point.map((value, i) => (i === j ? value + STEP : value)));
      return moved.map((value, i) => (value - (residuals[i] ?? 0)) / STEP);
    });
    const products = residuals.map((_, i) =>
      residuals.map((__, k) => columns.reduce((sum, column) => sum + (column[i] ?? 0) * (column[k] ?? 0), 0)),
    );
    let isBetter = false;
    for (let attempt = 0; attempt < 12 && !isBetter; attempt++) {
      const damped = products.map((row, i) => row.map((value, k) => (i === k ? value + damping : value)));
      const weights = solveLinear(damped, residuals);
      const step = columns.map(
        (column) => -column.reduce((sum, value, i) => sum + value * (weights[i] ?? 0), 0),
      );
      const longest = Math.max(...step.map(Math.abs));
      const scale = longest > 0.5 ? 0.5 / longest : 1;
      const next = point.map((value, i) => value + scale * (step[i] ?? 0));
      const nextResiduals = residualsAt(next);
      isBetter = sumOfSquares(nextResiduals) < sumOfSquares(residuals);
      if (isBetter) {
        point = next;
        residuals = nextResiduals;
      }
      damping *= isBetter ? 0.1 : 8;
    }
    if (!isBetter) break;
  }
  return { point, residuals };
};
