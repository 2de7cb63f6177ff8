/** Dragging the label of a number sideways to change the number. */

export type ScrubInput =
  | {
      readonly type: 'down' | 'move' | 'up';
      readonly id: number;
      readonly xPx: number;
      readonly shift: boolean;
      readonly alt: boolean;
    }
  | { readonly type: 'cancel'; readonly id: number }
  | { readonly type: 'escape' };

export type ScrubEffect =
  /** The number is this many of its steps from where it was when the press began; a draft. */
  | { readonly kind: 'scrub'; readonly steps: number }
  /** The draft becomes one entry of the history. */
  | { readonly kind: 'commit' }
  /** The number goes back to where it was. */
  | { readonly kind: 'restore' }
  /** The label was pressed without being dragged. */
  | { readonly kind: 'tap' };

interface ScrubPress {
  readonly id: number;
  readonly lastXPx: number;
  /** Px moved to the right beyond the dead zone, each multiplied as Shift and Alt were then. */
  readonly weighedPx: number;
  readonly phase: 'waiting' | 'scrubbing' | 'spent';
}

/** The pointer that is down; null while none is. */
export type Scrub = ScrubPress | null;

export interface ScrubStep {
  readonly scrub: Scrub;
  readonly effects: readonly ScrubEffect[];
}

/** Movement, px, that is still a tap. */
const SCRUB_DEAD_ZONE_PX = 3;
/** Movement, px, for one step of the number. */
const STEP_PX = 4;
const SHIFT_TIMES = 10;
const ALT_TIMES = 0.1;

/** The scrub after one more input, and what to do because of it. */
export function scrubStep(scrub: Scrub, input: ScrubInput): ScrubStep {
  if (input.type === 'down') {
    if (scrub !== null) return { scrub, effects: [] };
    return { scrub: { id: input.id, lastXPx: input.xPx, weighedPx: 0, phase: 'waiting' }, effects: [] };
  }
  if (scrub === null) return { scrub, effects: [] };
  if (input.type === 'escape') return { scrub: { ...scrub, phase: 'spent' }, effects: takenBack(scrub) };
  if (input.id !== scrub.id) return { scrub, effects: [] };
  switch (input.type) {
    case 'cancel':
      return { scrub: null, effects: takenBack(scrub) };
    case 'move':
      return moved(scrub, input);
    case 'up': {
      const last = input.xPx === scrub.lastXPx ? { scrub, effects: [] } : moved(scrub, input);
      return { scrub: null, effects: [...last.effects, ...endOf(last.scrub)] };
    }
  }
}

function takenBack({ phase }: ScrubPress): ScrubEffect[] {
  return phase === 'scrubbing' ? [{ kind: 'restore' }] : [];
}

function endOf({ phase }: ScrubPress): ScrubEffect[] {
  if (phase === 'spent') return [];
  return [{ kind: phase === 'scrubbing' ? 'commit' : 'tap' }];
}

interface Sideways {
  readonly xPx: number;
  readonly shift: boolean;
  readonly alt: boolean;
}

function moved(
  scrub: ScrubPress,
  { xPx, shift, alt }: Sideways,
): { scrub: ScrubPress; effects: ScrubEffect[] } {
  if (scrub.phase === 'spent') return { scrub, effects: [] };
  const byPx = xPx - scrub.lastXPx;
  if (scrub.phase === 'waiting' && Math.abs(byPx) <= SCRUB_DEAD_ZONE_PX) return { scrub, effects: [] };
  const countedPx = scrub.phase === 'waiting' ? byPx - Math.sign(byPx) * SCRUB_DEAD_ZONE_PX : byPx;
  // Weighed as it goes, so that Shift pressed on the way changes only what follows.
  const weighedPx = scrub.weighedPx + countedPx * (shift ? SHIFT_TIMES : 1) * (alt ? ALT_TIMES : 1);
  return {
    scrub: { ...scrub, lastXPx: xPx, weighedPx, phase: 'scrubbing' },
    effects: [{ kind: 'scrub', steps: stepsOf(weighedPx, alt) }],
  };
}

/** Whole steps; tenths while Alt is held. Never −0, which is not the same as 0. */
function stepsOf(weighedPx: number, alt: boolean): number {
  const parts = alt ? 10 : 1;
  // Trunc and not round, so that the way to the first step is as long as the way from step to step; the sum of
  // many small moves may fall short of a step by its rounding.
  return Math.trunc((weighedPx / STEP_PX) * parts + Math.sign(weighedPx) * 1e-6) / parts + 0;
}
