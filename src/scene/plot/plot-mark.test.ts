/** Signs on the screen: their size, and what of them is filled. */
import { expect, it } from 'vitest';
import { PlotLog } from '../../../tests/support/plot-log.ts';
import { plotMark } from './plot-mark.ts';
import type { MarkShape } from '../shapes/shape.ts';
import { findTheme } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

const VIEW: View = { scale: 0.5, turn: 0.3, xPx: 100, yPx: 600 };
const THEME = findTheme('paper');
const STYLE = THEME.roles.centreOfGravity;
const AT = { x: 400, y: 200 };
const SCREEN = toScreen(VIEW, AT);

function plotted(sign: MarkShape['sign'], scale = VIEW.scale) {
  const log = new PlotLog();
  plotMark(
    { kind: 'mark', role: 'centreOfGravity', at: AT, sign, radiusPx: 9 },
    THEME,
    { ...VIEW, scale },
    log,
  );
  return log.outlines;
}

it('every sign reaches its radius from its place, at every scale', () => {
  for (const scale of [0.05, 0.5, 8])
    for (const sign of [
      'dot',
      'ring',
      'cross',
      'quartered',
      'diamond',
      'square',
      'triangle',
      'wedge',
    ] as const) {
      const centre = toScreen({ ...VIEW, scale }, AT);
      const reach = plotted(sign, scale).flatMap(({ places, arcs }) => [
        ...places.map((place) => Math.hypot(place.x - centre.x, place.y - centre.y)),
        ...arcs.map((arc) => Math.hypot(arc.x - centre.x, arc.y - centre.y) + arc.radius),
      ]);
      expect(Math.max(...reach)).toBeCloseTo(9, 9);
    }
});

it('a triangle points up and a wedge down', () => {
  const tip = (sign: MarkShape['sign']) => plotted(sign)[0].places[0].y - SCREEN.y;
  expect([tip('triangle'), tip('wedge')]).toEqual([-9, 9]);
});

it('a ring is filled with its role’s fill, a dot with its ink, and a cross with nothing', () => {
  expect(plotted('ring')[0].paint).toMatchObject({ fill: STYLE.fill, stroke: STYLE.stroke });
  expect(plotted('dot')[0].paint).toMatchObject({ fill: STYLE.stroke, stroke: null });
  expect(plotted('cross')[0].paint).toMatchObject({ fill: null, stroke: STYLE.stroke });
});

it('the sign of a centre of gravity has two opposite quarters inked, and stays upright in a turned view', () => {
  const [circle, quarters] = plotted('quartered');
  expect(circle.paint).toMatchObject({ fill: STYLE.fill, stroke: STYLE.stroke });
  expect(quarters.paint).toMatchObject({ fill: STYLE.stroke, stroke: null });
  expect(quarters.arcs.map(({ x, y, from, to }) => [x, y, from, to])).toEqual([
    [SCREEN.x, SCREEN.y, -Math.PI / 2, 0],
    [SCREEN.x, SCREEN.y, Math.PI / 2, Math.PI],
  ]);
});

it('a sign of a dashed line is drawn whole', () => {
  const log = new PlotLog();
  plotMark(
    { kind: 'mark', role: 'loadTransferLine', at: AT, sign: 'diamond', radiusPx: 6 },
    THEME,
    VIEW,
    log,
  );
  expect(THEME.roles.loadTransferLine.dashPx.length).toBeGreaterThan(0);
  expect(log.outlines[0].paint).toMatchObject({ dashPx: [], fill: THEME.background });
});
