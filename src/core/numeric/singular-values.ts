/** Singular values and vectors of a matrix, by plane rotations of its columns. */

/** `rows[i][k]` is row i of the left vectors times their singular value k; `right[k]` is the right vector of value k. */
export interface SingularValues {
  /** Largest first. */
  readonly values: readonly number[];
  readonly right: readonly (readonly number[])[];
  /** Left vectors of length one, `left[k]` that of value k; all zeros where the value is zero. */
  readonly left: readonly (readonly number[])[];
}

/** Columns whose cosine is below this stand square to one another. */
const SQUARE = 1e-15;
/** A few rounds are enough; each squares what is left. */
const MOST_ROUNDS = 40;

/**
 * Singular values of a matrix given by its columns, each a list of as many numbers (one-sided Jacobi, Hestenes 1958).
 * Small values come out as exactly as large ones, which a product of the matrix with itself would lose.
 */
export function singularValues(columns: readonly (readonly number[])[]): SingularValues {
  const n = columns.length;
  const work = columns.map((column) => Float64Array.from(column));
  const right = columns.map((_, k) => {
    const unit = new Float64Array(n);
    unit[k] = 1;
    return unit;
  });
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let turned = false;
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) {
        const a = work[p];
        const b = work[q];
        let aa = 0;
        let bb = 0;
        let ab = 0;
        for (let i = 0; i < a.length; i++) {
          aa += a[i] * a[i];
          bb += b[i] * b[i];
          ab += a[i] * b[i];
        }
        if (ab === 0 || Math.abs(ab) <= SQUARE * Math.sqrt(aa * bb)) continue;
        turned = true;
        const ratio = (bb - aa) / (2 * ab);
        const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.sqrt(1 + ratio * ratio));
        const cosine = 1 / Math.sqrt(1 + tangent * tangent);
        turn(a, b, cosine, cosine * tangent);
        turn(right[p], right[q], cosine, cosine * tangent);
      }
    }
    if (!turned) break;
  }
  const sizes = work.map((column) => Math.hypot(...column));
  const order = sizes.map((_, k) => k).sort((a, b) => sizes[b] - sizes[a]);
  return {
    values: order.map((k) => sizes[k]),
    right: order.map((k) => [...right[k]]),
    left: order.map((k) => [...work[k]].map((each) => (sizes[k] > 0 ? each / sizes[k] : 0))),
  };
}

function turn(a: Float64Array, b: Float64Array, cosine: number, sine: number): void {
  for (let i = 0; i < a.length; i++) {
    const x = a[i];
    const y = b[i];
    a[i] = cosine * x - sine * y;
    b[i] = sine * x + cosine * y;
  }
}
