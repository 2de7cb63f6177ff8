/** Waiting for a state that no event tells of, in trials outside the test runner. */

/** How long a state may take to come about on a busy machine, ms. */
export const PATIENCE_MS = 60_000;

/** Asks until the answer is yes. */
export async function until(what: string, look: () => Promise<boolean>): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  while (!(await look())) if (performance.now() > end) throw new Error(`${what} did not come about`);
}
