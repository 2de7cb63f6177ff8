/** Where words, their backing and the line back to their place come to lie on the screen. */
import { expect, it } from 'vitest';
import { PlotLog } from '../../../tests/support/plot-log.ts';
import { labelBox } from '../shapes/label-placing.ts';
import { plotLabel } from './plot-label.ts';
import type { LabelShape } from '../shapes/shape.ts';
import { findTheme } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

const VIEW: View = { scale: 0.5, turn: 0, xPx: 100, yPx: 600 };
const THEME = findTheme('paper');
const LABEL: LabelShape = {
  kind: 'label',
  role: 'trailLine',
  text: 'Trail 98 mm',
  at: { x: 400, y: 200 },
  spot: 'right',
  shiftPx: { x: 30, y: -40 },
  sizePx: 13,
  leader: true,
};

function plotted(label: LabelShape) {
  const log = new PlotLog();
  plotLabel(label, THEME, VIEW, log);
  return log;
}

it('words stand in the middle of the box in which labels were kept apart, on a backing no larger than it', () => {
  const box = labelBox(LABEL.text, 13, 'right', toScreen(VIEW, LABEL.at), LABEL.shiftPx);
  const { written, outlines } = plotted({ ...LABEL, leader: false });
  // A little aside for the bar.
  expect(written[0].xPx - (box.left + box.right) / 2).toBeGreaterThan(0);
  expect(written[0].xPx - (box.left + box.right) / 2).toBeLessThan(3);
  expect(written[0].yPx).toBeGreaterThan((box.top + box.bottom) / 2);
  expect(written[0].yPx).toBeLessThan(box.bottom);
  const [backing] = outlines;
  expect(backing.paint.fill).toBe(THEME.labelBacking);
  const reach = backing.arcs.map((arc) => [
    arc.x - arc.radius,
    arc.x + arc.radius,
    arc.y - arc.radius,
    arc.y + arc.radius,
  ]);
  expect(Math.min(...reach.map(([left]) => left))).toBeCloseTo(box.left, 9);
  expect(Math.max(...reach.map(([, right]) => right))).toBeCloseTo(box.right, 9);
  expect(Math.min(...reach.map(([, , top]) => top))).toBeCloseTo(box.top, 9);
  expect(Math.max(...reach.map(([, , , bottom]) => bottom))).toBeCloseTo(box.bottom, 9);
});

it('a label that moved away has a line from its place to the edge of its box', () => {
  const screen = toScreen(VIEW, LABEL.at);
  const box = labelBox(LABEL.text, 13, 'right', screen, LABEL.shiftPx);
  const [leader] = plotted(LABEL).outlines;
  expect(leader.places[0]).toEqual(screen);
  expect(leader.places[1]).toEqual({ x: box.left, y: box.bottom });
  expect(leader.paint.stroke).toBe(THEME.roles.trailLine.stroke);
});

it('a bar in the colour of what is named stands at the side of its place', () => {
  const bar = (spot: 'left' | 'right') => {
    const box = labelBox(LABEL.text, 13, spot, toScreen(VIEW, LABEL.at), LABEL.shiftPx);
    const outline = plotted({ ...LABEL, spot, leader: false }).outlines[1];
    expect(outline.paint.fill).toBe(THEME.roles.trailLine.stroke);
    return { box, xs: outline.places.map((place) => place.x) };
  };
  const right = bar('right');
  expect(Math.min(...right.xs)).toBeCloseTo(right.box.left, 9);
  const left = bar('left');
  expect(Math.max(...left.xs)).toBeCloseTo(left.box.right, 9);
});

it('the name of an area is bold and stands on the area itself', () => {
  const { written, outlines } = plotted({ ...LABEL, role: 'zoneName', leader: false });
  expect(outlines).toEqual([]);
  expect(written[0].bold).toBe(true);
  expect(written[0].colour).toBe(THEME.roles.zoneName.stroke);
});
