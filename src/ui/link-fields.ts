/** The figures of drawn links as a list from which a form is made. */
import type { LinkLayout } from '../core/chassis/rear-layout.ts';
import type { QuantityKey } from '../core/units/quantity.ts';

export interface LinkField {
  /** From the links down, such as `rockerPivot.x`. */
  readonly path: string;
  readonly label: string;
  readonly quantity: QuantityKey;
  readonly value: number;
}

const BOLTS: Readonly<Record<string, string>> = {
  shockOnFrame: 'Shock on frame',
  shockOnArm: 'Shock on swingarm',
  rockerPivot: 'Rocker pivot',
  rodOnRocker: 'Rod on rocker',
  shockOnRocker: 'Shock on rocker',
  rodOnArm: 'Rod on swingarm',
  rodOnFrame: 'Rod on frame',
};
const WAYS: Readonly<Record<string, string>> = {
  x: 'forward of the pivot',
  y: 'above the pivot',
  along: 'along the swingarm',
  above: 'above the swingarm’s line',
};

function ways(path: string, name: string, point: object): LinkField[] {
  return Object.entries(point).flatMap(([key, value]): LinkField[] =>
    typeof value === 'number'
      ? [{ path: `${path}.${key}`, label: `${name}, ${WAYS[key]}`, quantity: 'length', value }]
      : [],
  );
}

/** Shock first, then every bolt of the layout, then the posture of the drawing. */
export function linkFields(layout: LinkLayout): LinkField[] {
  const { shock } = layout;
  const bolts = Object.entries(layout).flatMap(([key, value]): LinkField[] =>
    key in BOLTS && typeof value === 'object' ? ways(key, BOLTS[key], value) : [],
  );
  const far =
    layout.kind === 'direct' ? [] : ways('shockFarEnd.at', 'Shock, other end', layout.shockFarEnd.at);
  const length = (path: string, label: string, value: number): LinkField => ({
    path,
    label,
    quantity: 'length',
    value,
  });
  return [
    length('shock.fullLength', 'Shock fully extended, eye to eye', shock.fullLength),
    length('shock.closedLength', 'Shock closed, eye to eye', shock.closedLength),
    ...bolts,
    ...far,
    {
      path: 'drawnAngleDeg',
      label: 'Swingarm angle as drawn',
      quantity: 'angle',
      value: layout.drawnAngleDeg,
    },
  ];
}
