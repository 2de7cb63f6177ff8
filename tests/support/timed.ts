/** Timing a call that is too short to be timed once. */

/** How long each call is repeated before and while it is timed, ms. */
const WARM_UP_MS = 300;
const TIMED_MS = 1000;
/** Timed in this many slices, of which the median counts. */
const SLICES = 11;
/** Calls between two looks at the clock. */
const BATCH = 10;

/** Microseconds that one call takes. `run` gets a number that rises from call to call, and returns something of use. */
export type Timed = (run: (i: number) => number) => number;

/** What times calls; `short` runs each a few times only, which tries it out and measures nothing. */
export function timer(short: boolean): Timed {
  return (run) => (short ? timeOf(run, 0, 0) : timeOf(run, WARM_UP_MS, TIMED_MS));
}

function timeOf(run: (i: number) => number, warmUpMs: number, timedMs: number): number {
  let kept = 0;
  let i = 0;
  const slice = (ms: number): number => {
    const began = performance.now();
    let calls = 0;
    for (;;) {
      for (let call = 0; call < BATCH; call++) kept += run(i++);
      calls += BATCH;
      const spent = performance.now() - began;
      if (spent >= ms) return (1000 * spent) / calls;
    }
  };
  slice(warmUpMs);
  const slices = Array.from({ length: SLICES }, () => slice(timedMs / SLICES)).sort((a, b) => a - b);
  if (Number.isNaN(kept)) throw new Error('What was timed gave no number');
  return slices[(SLICES - 1) / 2];
}
