/** Lower factor of a covariance matrix, and what is solved with it. */

/** L with L·Lᵀ the matrix: row i holds L from column 0 to i. */
export type LowerFactor = readonly (readonly number[])[];

/** Factor of a symmetric matrix (Cholesky); null where it is not positive definite to rounding, or no number. */
export function lowerFactor(matrix: readonly (readonly number[])[]): LowerFactor | null {
  const factor: number[][] = [];
  for (let i = 0; i < matrix.length; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i][j];
      const other = j === i ? row : factor[j];
      for (let k = 0; k < j; k++) rest -= row[k] * other[k];
      if (j < i) row.push(rest / factor[j][j]);
      else if (rest > 0) row.push(Math.sqrt(rest));
      else return null;
    }
    factor.push(row);
  }
  return factor;
}

/** z with L·z = right. */
export function forwardSolved(factor: LowerFactor, right: readonly number[]): number[] {
  const found: number[] = [];
  for (let i = 0; i < factor.length; i++) {
    let rest = right[i];
    for (let k = 0; k < i; k++) rest -= factor[i][k] * found[k];
    found.push(rest / factor[i][i]);
  }
  return found;
}

/** z with Lᵀ·z = right. */
export function backSolved(factor: LowerFactor, right: readonly number[]): number[] {
  const found = [...right];
  for (let i = factor.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < factor.length; k++) found[i] -= factor[k][i] * found[k];
    found[i] /= factor[i][i];
  }
  return found;
}
