/** A finger on the thumb of a slider: only the thumb takes it, along the slider, from where the thumb is. */

export type ThumbInput =
  | {
      readonly type: 'down';
      readonly id: number;
      readonly xPx: number;
      readonly yPx: number;
      /** Where the thumb's middle is, and how long its way from end to end. */
      readonly thumbPx: number;
      readonly runPx: number;
      /** Where the thumb stands on its way, 0 to 1. */
      readonly part: number;
    }
  | { readonly type: 'move' | 'up'; readonly id: number; readonly xPx: number; readonly yPx: number }
  | { readonly type: 'cancel'; readonly id: number };

export type ThumbEffect =
  /** The thumb goes to this part of its way; a draft. */
  | { readonly kind: 'slide'; readonly part: number }
  /** The draft becomes one entry of the history. */
  | { readonly kind: 'commit' }
  /** The thumb goes back to where it was. */
  | { readonly kind: 'restore' };

interface ThumbPress {
  readonly id: number;
  readonly fromXPx: number;
  readonly fromYPx: number;
  readonly fromPart: number;
  readonly runPx: number;
  /** Spent: the finger turned out to be on its way across the slider. */
  readonly phase: 'waiting' | 'sliding' | 'spent';
}

/** The finger that is down on the thumb; null while none is. */
export type Thumb = ThumbPress | null;

export interface ThumbStep {
  readonly thumb: Thumb;
  readonly effects: readonly ThumbEffect[];
}

/** How far beside the thumb's middle a finger still takes it, px: half of the 44 px target of WCAG 2.2. */
const REACH_PX = 22;
/** Movement, px, that is still a tap. */
const DEAD_ZONE_PX = 4;
/** The whole range takes a finger at least this far, px, however short the slider. */
const LEAST_RUN_PX = 150;

/** The finger after one more input, and what to do because of it. */
export function thumbStep(thumb: Thumb, input: ThumbInput): ThumbStep {
  if (input.type === 'down') return thumb === null ? pressed(input) : { thumb, effects: [] };
  if (thumb === null || input.id !== thumb.id) return { thumb, effects: [] };
  const slid = thumb.phase === 'sliding';
  switch (input.type) {
    case 'move':
      return moved(thumb, input.xPx, input.yPx);
    case 'up':
      return { thumb: null, effects: slid ? [{ kind: 'commit' }] : [] };
    case 'cancel':
      return { thumb: null, effects: slid ? [{ kind: 'restore' }] : [] };
  }
}

function pressed(input: Extract<ThumbInput, { type: 'down' }>): ThumbStep {
  const { id, xPx, yPx, thumbPx, runPx, part } = input;
  if (Math.abs(xPx - thumbPx) > REACH_PX) return { thumb: null, effects: [] };
  return {
    thumb: { id, fromXPx: xPx, fromYPx: yPx, fromPart: part, runPx, phase: 'waiting' },
    effects: [],
  };
}

function moved(thumb: ThumbPress, xPx: number, yPx: number): ThumbStep {
  const alongPx = xPx - thumb.fromXPx;
  if (thumb.phase === 'sliding') {
    const part = thumb.fromPart + alongPx / Math.max(thumb.runPx, LEAST_RUN_PX);
    return { thumb, effects: [{ kind: 'slide', part: Math.min(1, Math.max(0, part)) }] };
  }
  const acrossPx = Math.abs(yPx - thumb.fromYPx);
  if (thumb.phase === 'spent' || Math.max(Math.abs(alongPx), acrossPx) <= DEAD_ZONE_PX)
    return { thumb, effects: [] };
  // The slide begins where it is known to be one, so that the thumb does not jump over the way until then.
  const next: ThumbPress =
    Math.abs(alongPx) > acrossPx
      ? { ...thumb, fromXPx: xPx, phase: 'sliding' }
      : { ...thumb, phase: 'spent' };
  return { thumb: next, effects: [] };
}
