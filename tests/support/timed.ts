/** Timing a call that is too short to be timed once. */

/** How long each call is repeated before and while it is timed, ms. */
const WARM_UP_MS = 300;
const TIMED_MS = 1000;
/** Timed in this many slices, of which the median counts. */
const SLICES = 11;
/** Calls between two looks at the clock. */
const BATCH = 10;

/** Microseconds that one call takes. `run` gets a number that rises from call to call, and returns something of use. */
export function timed(run: (i: number) => number): number {
  let kept = 0;
  let i = 0;
  const slice = (ms: number): number => {
    const began = performance.now();
    let calls = 0;
    let spent = 0;
    while (spent < ms) {
      for (let call = 0; call < BATCH; call++) kept += run(i++);
      calls += BATCH;
      spent = performance.now() - began;
    }
    return (1000 * spent) / calls;
  };
  slice(WARM_UP_MS);
  const slices = Array.from({ length: SLICES }, () => slice(TIMED_MS / SLICES)).sort((a, b) => a - b);
  if (Number.isNaN(kept)) throw new Error('What was timed gave no number');
  return slices[(SLICES - 1) / 2];
}
