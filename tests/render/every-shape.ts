/** A scene with every kind of shape, sign, spot and arrow in it, and every role at least once. */
import { pen, segment } from '../../src/scene/shapes/outline.ts';
import type { LabelSpot, Role, Scene, Shape } from '../../src/scene/shapes/shape.ts';
import { findTheme } from '../../src/scene/shapes/theme.ts';
import type { View } from '../../src/scene/shapes/view.ts';

export const ROLES = Object.keys(findTheme('paper').roles) as Role[];

/** Turned, so that an angle with the wrong sign shows. */
export const TURNED_VIEW: View = { scale: 0.4, turn: 0.3, xPx: 120.5, yPx: 500.25 };

const rows: Shape[] = ROLES.map((role, i) =>
  pen({ x: 40 * i, y: 20, turn: 0.1 * i })
    .move(0, 0)
    .line(30, 0, 30, 20)
    .curve(20, 40, 10, 40, 0, 20)
    .close()
    .shape(role),
);

const arcs: Shape[] = [
  pen().circle(300, 300, 150).circle(300, 300, 90).shape('tyre'),
  pen({ x: 800, y: 300, turn: 1 })
    .move(50, 0)
    .arc(0, 0, 50, 0, 2)
    .arc(100, 0, 30, 3, -2)
    .close()
    .arc(200, 0, 10, 0, -4)
    .shape('chain'),
  pen().arc(500, 100, 40, -1, 1).shape('disc'),
];

const lines: Shape[] = [
  segment('wheelbaseLine', { x: 0, y: -95 }, { x: 1400, y: -95 }, { arrows: 'both' }),
  segment('highlight', { x: 0, y: 0 }, { x: 3, y: 4 }, { arrows: 'both' }),
  segment('heightLine', { x: 700, y: 0 }, { x: 700, y: 400 }, { arrows: 'end' }),
  segment('dimension', { x: 700, y: 0 }, { x: 700, y: 0 }, { arrows: 'both' }),
  pen().move(20, 700).line(800, 720).shape('tube', { widthMm: 30 }),
];

const marks: Shape[] = (
  ['dot', 'ring', 'cross', 'quartered', 'diamond', 'square', 'triangle', 'wedge'] as const
).map((sign, i) => ({
  kind: 'mark',
  role: 'centreOfGravity',
  at: { x: 200 * i, y: 900 },
  sign,
  radiusPx: 9,
}));

const spots: readonly LabelSpot[] = ['right', 'left', 'above', 'below', 'centre'];
const labels: Shape[] = spots.map((spot, i) => ({
  kind: 'label',
  role: i === 4 ? 'zoneName' : 'trailLine',
  text: `<${spot}> & "98,8" mm ≥ 3′`,
  at: { x: 200 * i, y: 1100 },
  spot,
  shiftPx: { x: 3 * i, y: -20 * i },
  sizePx: 13,
  leader: i % 2 === 1,
}));

export const EVERY_SHAPE: Scene = [
  { name: 'zones', ink: 1, shapes: rows },
  { name: 'shadow', ink: 0.9, shapes: arcs },
  { name: 'bike', ink: 0.3, shapes: lines },
  { name: 'construction', ink: 1, shapes: marks },
  { name: 'labels', ink: 1, shapes: labels },
];
