/** A refusal is why there is no answer: a reason and the figures behind it, as data, for words to make a sentence of. */

/** The figures that advice shows; any of them may be missing. */
export interface Figures {
  /** The number in the way, and what it would have to be. */
  readonly found?: number;
  readonly limit?: number;
  /** The end of the bike that it concerns. */
  readonly end?: 'front' | 'rear';
}

/** Reasons are unions of strings, one for each kind of failure; `More` holds figures that only some failures have. */
export type Refusal<Reason extends string, More = unknown> = {
  readonly ok: false;
  readonly reason: Reason;
} & Figures &
  More;

/**
 * Refuses with a reason and its figures. If the number in the way is not a number, that becomes the reason, so that
 * no advice shows NaN; such a limit is left out.
 */
export function refuse<Reason extends string, const More extends Figures>(
  reason: Reason,
  figures?: More,
): Refusal<Reason | 'inputNotANumber', Partial<Omit<More, keyof Figures>>> {
  if (figures === undefined) return { ok: false, reason } as Refusal<Reason, object>;
  const { limit, ...rest } = figures;
  const { found, end } = figures;
  if (found !== undefined && !Number.isFinite(found))
    return { ok: false, reason: 'inputNotANumber', ...(end && { end }) } as Refusal<
      'inputNotANumber',
      object
    >;
  return {
    ok: false,
    reason,
    ...rest,
    ...(limit !== undefined && Number.isFinite(limit) && { limit }),
  } as Refusal<Reason, object>;
}
