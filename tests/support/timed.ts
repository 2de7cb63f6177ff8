/** Timing calls that are too short to be timed once. */

/** How long each call is repeated, ms: before it is timed, and in each slice of which the median counts. */
const WARM_UP_MS = 300;
const SLICE_MS = 40;
const SLICES = 25;
/** Calls between two looks at the clock; one where a call is only tried out. */
const BATCH = 10;

/** A call to time. It gets a number that rises from call to call, and returns something of use. */
export type Run = (i: number) => number;

export interface Timer {
  /** Microseconds that one call takes. */
  readonly timed: (run: Run) => number;
  /**
   * The same for calls that are compared, which take turns slice by slice, so that whatever else the machine does slows
   * all of them alike. The first by its own median, each other one by the median of how many times as long it took.
   */
  readonly timedInTurn: (runs: readonly Run[]) => number[];
}

/** Times calls; `short` runs each twice only, which tries it out and measures nothing. */
export function timer(short: boolean): Timer {
  const timedInTurn = (runs: readonly Run[]): number[] =>
    short ? timesOf(runs, 1, 1, 0, 0) : timesOf(runs, BATCH, SLICES, WARM_UP_MS, SLICE_MS);
  return { timed: (run) => timedInTurn([run])[0], timedInTurn };
}

function timesOf(
  runs: readonly Run[],
  batch: number,
  count: number,
  warmUpMs: number,
  sliceMs: number,
): number[] {
  const slices = runs.map((run) => sliceOf(run, batch));
  for (const slice of slices) slice(warmUpMs);
  const rounds = Array.from({ length: count }, () => slices.map((slice) => slice(sliceMs)));
  const first = median(rounds.map((round) => round[0]));
  return runs.map((_, k) => first * median(rounds.map((round) => round[k] / round[0])));
}

/** Repeats a call for a number of ms and gives the microseconds that one call took. */
function sliceOf(run: Run, batch: number): (ms: number) => number {
  let i = 0;
  return (ms) => {
    const began = performance.now();
    let kept = 0;
    let calls = 0;
    for (;;) {
      for (let call = 0; call < batch; call++) kept += run(i++);
      calls += batch;
      const spent = performance.now() - began;
      if (Number.isNaN(kept)) throw new Error('What was timed gave no number');
      if (spent >= ms) return (1000 * spent) / calls;
    }
  };
}

function median(numbers: number[]): number {
  return numbers.sort((a, b) => a - b)[(numbers.length - 1) >> 1];
}
