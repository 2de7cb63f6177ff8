/** The figures of drawn links as a list from which a form is made. */
import type { LinkLayout } from '../../core/parts/rear-layout.ts';
import { SKETCH_POINTS } from '../../core/sketch/points.ts';
import { angle, length, placed } from '../../document/fields/bounds.ts';

export interface LinkField {
  /** From the links down, such as `rockerPivot.x`. */
  readonly path: string;
  readonly label: string;
  readonly value: number;
  /** What its number is, and from where to where it is saved. */
  readonly bounds: typeof placed | typeof length | typeof angle;
}

const WAYS: Readonly<Record<string, string>> = {
  x: 'forward of the pivot',
  y: 'above the pivot',
  along: 'along the swingarm',
  above: 'above the swingarm’s line',
};

function ways(path: string, name: string, point: object): LinkField[] {
  return Object.entries(point).flatMap(([key, value]): LinkField[] =>
    typeof value === 'number'
      ? [{ path: `${path}.${key}`, label: `${name}, ${WAYS[key]}`, value, bounds: placed }]
      : [],
  );
}

/** Shock first, then every bolt of the layout, then the posture of the drawing. */
export function linkFields(layout: LinkLayout): LinkField[] {
  const { shock } = layout;
  const bolts = Object.entries(layout).flatMap(([key, value]): LinkField[] => {
    const bolt = SKETCH_POINTS.find((each) => each.key === key);
    if (bolt === undefined || typeof value !== 'object') return [];
    const far = key === 'shockFarEnd' && layout.kind !== 'direct';
    return far ? ways(`${key}.at`, bolt.label, layout.shockFarEnd.at) : ways(key, bolt.label, value);
  });
  return [
    {
      path: 'shock.fullLength',
      label: 'Shock fully extended, eye to eye',
      value: shock.fullLength,
      bounds: length,
    },
    {
      path: 'shock.closedLength',
      label: 'Shock closed, eye to eye',
      value: shock.closedLength,
      bounds: length,
    },
    ...bolts,
    {
      path: 'drawnAngleDeg',
      label: 'Swingarm angle as drawn',
      value: layout.drawnAngleDeg,
      bounds: angle,
    },
  ];
}
