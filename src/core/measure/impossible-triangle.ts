/** Finds three distances of one state that make no triangle. */
import type { ReadRow } from './read-rows.ts';

/**
 * A longest side may exceed the other two by this many of their common standard deviations: less is a slip, which the
 * fit shows beside all others.
 */
const LEEWAY = 20;

/** The longest side and the two others, as places in the sheet; null where every triangle closes. */
export function impossibleTriangle(rows: readonly ReadRow[]): readonly [number, number, number] | null {
  const byEnds = new Map<string, ReadRow>();
  const partsIn = new Map<string, Set<string>>();
  const ends = (state: string, a: string, b: string): string => [state, ...[a, b].sort()].join(' ');
  for (const each of rows) {
    const { kind, row } = each;
    if (kind.key !== 'distance') continue;
    const [a, b] = row.parts;
    byEnds.set(ends(row.state, a, b), each);
    for (const [from, to] of [
      [a, b],
      [b, a],
    ])
      partsIn.set(`${row.state} ${from}`, (partsIn.get(`${row.state} ${from}`) ?? new Set()).add(to));
  }
  for (const side of byEnds.values()) {
    const { state, parts } = side.row;
    const [a, b] = parts;
    for (const third of partsIn.get(`${state} ${a}`) ?? []) {
      const one = byEnds.get(ends(state, a, third));
      const two = byEnds.get(ends(state, b, third));
      if (one === undefined || two === undefined || third === b) continue;
      const spare = one.measured + two.measured - flat(side);
      if (spare < -LEEWAY * Math.hypot(side.sd, one.sd, two.sd)) return [side.index, one.index, two.index];
    }
  }
  return null;
}

/** The distance in the side view, without what lies out of plane. */
function flat({ measured, row }: ReadRow): number {
  return Math.sqrt(Math.max(0, measured * measured - row.outOfPlane * row.outOfPlane));
}
