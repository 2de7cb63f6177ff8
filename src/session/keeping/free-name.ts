/** The name of a copy of a bike. */

/** The first of `X, copy`, `X, copy 2` and so on that no bike has. */
export function freeName(name: string, taken: readonly string[]): string {
  for (let count = 1; ; count++) {
    const copy = count === 1 ? `${name}, copy` : `${name}, copy ${count}`;
    if (!taken.includes(copy)) return copy;
  }
}
