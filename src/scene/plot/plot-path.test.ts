/** Where outlines, holes and arrowheads come to lie on the screen. */
import { describe, expect, it } from 'vitest';
import { PlotLog } from '../../../tests/support/plot-log.ts';
import { pen, segment } from '../shapes/outline.ts';
import { plotPath } from './plot-path.ts';
import type { PathShape, Shape } from '../shapes/shape.ts';
import { findTheme } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

const VIEW: View = { scale: 0.5, turn: 0.4, xPx: 100, yPx: 600 };
const { roles } = findTheme('paper');

function plotted(shape: Shape, view = VIEW) {
  if (shape.kind !== 'path') throw new Error('not a path');
  const log = new PlotLog();
  plotPath(shape, roles[shape.role], view, log);
  return log.outlines;
}

const near = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

describe('an outline on the screen', () => {
  it('has its moves, lines and curves where the view has their places', () => {
    const shape = pen().move(10, 20).line(200, 30).curve(1, 2, 3, 4, 300, 400).shape('frame');
    const expected = [
      { x: 10, y: 20 },
      { x: 200, y: 30 },
      { x: 300, y: 400 },
    ].map((p) => toScreen(VIEW, p));
    plotted(shape)[0].places.forEach((place, i) => expect(near(place, expected[i])).toBeLessThan(1e-9));
  });

  it.each([
    [0.2, 1.9],
    [1.9, 0.2],
    [-2, 4],
  ])('has an arc from %d to %d rad pass through the same places as on the ground', (from, to) => {
    const [arc] = plotted(pen().arc(50, 70, 40, from, to).shape('chain'))[0].arcs;
    for (const part of [0, 0.25, 0.5, 1]) {
      const angle = from + part * (to - from);
      const ground = { x: 50 + 40 * Math.cos(angle), y: 70 + 40 * Math.sin(angle) };
      const screenAngle = arc.from + part * (arc.to - arc.from);
      const screen = {
        x: arc.x + arc.radius * Math.cos(screenAngle),
        y: arc.y + arc.radius * Math.sin(screenAngle),
      };
      expect(near(screen, toScreen(VIEW, ground))).toBeLessThan(1e-9);
    }
  });

  it('is as wide as its role says at every scale, or as wide as its mm at this one', () => {
    const line = pen().move(0, 0).line(100, 0);
    const far = { ...VIEW, scale: 2 };
    expect(plotted(line.shape('ground'))[0].paint.widthPx).toBe(roles.ground.widthPx);
    expect(plotted(line.shape('ground'), far)[0].paint.widthPx).toBe(roles.ground.widthPx);
    expect(plotted(line.shape('tube', { widthMm: 30 }))[0].paint.widthPx).toBe(15);
    expect(plotted(line.shape('tube', { widthMm: 30 }), far)[0].paint.widthPx).toBe(60);
  });

  it('has a hole where a full circle follows another outline, but not where outlines only overlap', () => {
    const rule = (shape: PathShape) => plotted(shape)[0].paint.fillRule;
    expect(rule(pen().circle(0, 0, 300).circle(0, 0, 200).shape('tyre'))).toBe('evenOdd');
    expect(rule(pen({ x: 3, y: 4, turn: 0.7 }).circle(0, 0, 300).circle(0, 0, 200).shape('tyre'))).toBe(
      'evenOdd',
    );
    expect(rule(pen().circle(0, 0, 300).shape('tyre'))).toBe('nonZero');
    const overlapping = pen().move(0, 0).line(9, 0, 9, 9).close().move(0, 0).line(9, 0, 5, 9).close();
    expect(rule(overlapping.shape('frame'))).toBe('nonZero');
  });
});

describe('arrowheads', () => {
  const from = { x: 0, y: 0 };
  const to = { x: 400, y: 300 };
  const ends = [from, to].map((p) => toScreen(VIEW, p));

  it('have their points exactly on the ends of the line, which itself ends inside them', () => {
    const [line, atEnd, atStart] = plotted(segment('highlight', from, to, { arrows: 'both' }));
    expect(near(atEnd.places[0], ends[1])).toBeLessThan(1e-9);
    expect(near(atStart.places[0], ends[0])).toBeLessThan(1e-9);
    const short = line.places.map((place, i) => near(place, ends[i]));
    for (const cut of short) {
      expect(cut).toBeGreaterThan(0);
      expect(cut).toBeLessThan(near(atEnd.places[0], atEnd.places[1]));
    }
  });

  it('stand at the end alone on a line with none at its beginning', () => {
    const outlines = plotted(segment('dimension', from, to, { arrows: 'end' }));
    expect(outlines).toHaveLength(2);
    expect(near(outlines[1].places[0], ends[1])).toBeLessThan(1e-9);
    expect(near(outlines[0].places[0], ends[0])).toBeLessThan(1e-9);
  });

  it('share a line shorter than both, and are left out on one without length', () => {
    const [, atEnd, atStart] = plotted(segment('dimension', from, { x: 12, y: 0 }, { arrows: 'both' }));
    const base = ({ places }: typeof atEnd) => ({
      x: (places[1].x + places[2].x) / 2,
      y: (places[1].y + places[2].y) / 2,
    });
    expect(near(base(atEnd), base(atStart))).toBeLessThan(1e-9);
    expect(plotted(segment('dimension', from, from, { arrows: 'both' }))).toHaveLength(1);
  });
});
