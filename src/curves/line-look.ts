/** What each curve differs by besides its colour: its line and its sign. */
import type { MarkShape, Role } from '../scene/shapes/shape.ts';
import type { PlacedCurve } from './curve-set.ts';

export interface LineLook {
  readonly role: Role;
  /** The sign where the bike stands, filled with the paper. */
  readonly sign: MarkShape['sign'];
}

const NOW: LineLook = { role: 'curveNow', sign: 'ring' };
const BASELINE: LineLook = { role: 'curveBaseline', sign: 'dot' };

/** For the curves beside those two, each with its own dash and sign. */
const BESIDE: readonly LineLook[] = [
  { role: 'curveBeside1', sign: 'square' },
  { role: 'curveBeside2', sign: 'triangle' },
  { role: 'curveBeside3', sign: 'diamond' },
  { role: 'curveBeside4', sign: 'wedge' },
  { role: 'curveBeside5', sign: 'quartered' },
  { role: 'curveBeside6', sign: 'cross' },
];

/** For setups laid side by side, on the side view and on charts alike. */
const COMPARED: readonly LineLook[] = [
  { role: 'compared1', sign: 'ring' },
  { role: 'compared2', sign: 'square' },
  { role: 'curveBeside5', sign: 'triangle' },
  { role: 'curveBeside4', sign: 'diamond' },
];

/** As many lines beside the present one and the baseline as a reader can tell apart. */
export const MOST_BESIDE = BESIDE.length;

export function lookOf({ of, slot }: Pick<PlacedCurve, 'of' | 'slot'>): LineLook {
  if (of === 'compared') return COMPARED[(slot ?? 0) % COMPARED.length];
  if (slot !== null) return BESIDE[slot % BESIDE.length];
  return of === 'baseline' ? BASELINE : NOW;
}
