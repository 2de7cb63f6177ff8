/** Every measurement that could be taken next on this bike, in the states of its sheet. */
import { MEASURE_KINDS, type MeasureKindKey } from './kinds/all-kinds.ts';
import type { MeasureStateKey } from './held/all-measure-states.ts';
import { TOUCH_KEYS } from '../parts/touch-parts.ts';
import { measureStateOf } from './held/all-measure-states.ts';
import type { Fit } from './fit-values.ts';
import type { MeasureKind } from './held/measure-kind.ts';
import { MEASURE_PART_KEYS, MEASURE_PARTS, type MeasurePartKey } from './held/measure-parts.ts';
import type { AskedRow } from './row-figures.ts';

const TOUCHING: ReadonlySet<string> = new Set(TOUCH_KEYS);

export interface Candidate extends AskedRow {
  readonly kind: MeasureKind & { readonly key: MeasureKindKey };
}

/** Kinds times parts times states, repeats of rows included; marks only where the sheet has them. */
export function candidateRows({ origin, rows }: Fit): readonly Candidate[] {
  const states = new Set<MeasureStateKey>([origin.readIn]);
  const named = new Set<MeasurePartKey>();
  for (const { row, kind } of rows) {
    if (!kind.anyState) states.add(row.state);
    if (row.otherState !== null) states.add(row.otherState);
    for (const part of row.parts) named.add(part);
  }
  states.delete('makersPosture');
  const parts = MEASURE_PART_KEYS.filter(
    (key) =>
      MEASURE_PARTS[key].applies(origin.bike) && (MEASURE_PARTS[key].shape !== 'mark' || named.has(key)),
  );
  const found: Candidate[] = [];
  for (const kind of MEASURE_KINDS) {
    if (kind.read !== 'number' || kind.betweenStates || kind.state === 'makersPosture') continue;
    for (const chosen of choices(kind, parts, named))
      for (const state of kind.anyState ? [origin.readIn] : states)
        if (kind.quantity !== 'mass' || measureStateOf(state).weighed)
          found.push({ kind, row: { parts: chosen, state, otherState: null, outOfPlane: 0 } });
  }
  return found;
}

/** The parts that a kind can be held to; a pair once. */
function choices(
  { takes }: MeasureKind,
  parts: readonly MeasurePartKey[],
  named: ReadonlySet<MeasurePartKey>,
): readonly (readonly MeasurePartKey[])[] {
  // What may touch the ground is measured from it; pairs with each of them would only make the list long.
  const isAside = (key: MeasurePartKey): boolean => takes.length > 1 && TOUCHING.has(key) && !named.has(key);
  const fits = takes.map((shapes) =>
    parts.filter((key) => shapes.includes(MEASURE_PARTS[key].shape) && !isAside(key)),
  );
  if (fits.length === 0) return [[]];
  if (fits.length === 1) return fits[0].map((key) => [key]);
  return fits[0].flatMap((from, i) => fits[1].slice(i + 1).map((to) => [from, to]));
}
