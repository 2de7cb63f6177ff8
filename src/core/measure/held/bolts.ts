/** The bolts of a link layout as pairs of numbers, to be read and written one after another. */
import { drawnPoints, type LinkPointKey } from '../../linkage/link-drawing.ts';
import { mapBolts } from '../../linkage/map-bolts.ts';
import type { LinkLayout } from '../../parts/rear-layout.ts';
import type { Point } from '../../plane/point.ts';

export interface Bolt {
  readonly key: LinkPointKey;
  readonly on: 'frame' | 'arm';
  /** As stored, mm: ahead of and over the pivot; on the arm, along it and above it. */
  readonly at: Point;
}

/** Every bolt as the layout stores it; `mapBolts` and `drawnPoints` go through them in one order. */
export function boltsOf(layout: LinkLayout): readonly Bolt[] {
  const found: Omit<Bolt, 'key'>[] = [];
  mapBolts(layout, {
    onFrame: (p) => {
      found.push({ on: 'frame', at: p });
      return p;
    },
    onArm: (p) => {
      found.push({ on: 'arm', at: { x: p.along, y: p.above } });
      return p;
    },
  });
  return drawnPoints(layout, 0).map(({ key }, i) => ({ key, ...found[i] }));
}

/** The layout with every bolt where `at` says, in the order of `boltsOf`. */
export function withBolts(layout: LinkLayout, at: (bolt: number) => Point): LinkLayout {
  let next = 0;
  return mapBolts(layout, {
    onFrame: () => at(next++),
    onArm: () => {
      const { x, y } = at(next++);
      return { along: x, above: y };
    },
  });
}
