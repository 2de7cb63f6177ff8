/** Holds the picture on the canvas against the one in the SVG, outline by outline. */
import { describe, expect, it } from 'vitest';
import { CanvasPlotter } from '../../src/render/canvas/canvas-plotter.ts';
import { sceneSvg, type SvgPage } from '../../src/render/svg/scene-svg.ts';
import { plotLayer } from '../../src/scene/plot/plot.ts';
import { findTheme, THEMES } from '../../src/scene/shapes/theme.ts';
import { EVERY_SHAPE, TURNED_VIEW } from './every-shape.ts';
import { leaves, readPath, readSvg, type Element } from '../support/read-svg.ts';
import { RecordingContext, type Painted, type PathPoint } from './recording-context.ts';

/** The SVG's arcs are cut into parts this long at most, radians. */
const ARC_PART = (2 * Math.PI) / 3;
/** How far canvas and SVG may differ, px. */
const SAME_PX = 0.01;

const PAGE: SvgPage = {
  widthPx: 1280,
  heightPx: 720,
  title: 'A bike & "its" <lines>',
  description: 'Trail 98 mm\u0000, ‘rake’ 24°',
};

function onCanvas(theme: ReturnType<typeof findTheme>): Painted[] {
  const context = new RecordingContext(ARC_PART);
  for (const layer of EVERY_SHAPE)
    plotLayer(layer, TURNED_VIEW, theme, new CanvasPlotter(context as unknown as CanvasRenderingContext2D));
  return context.painted;
}

function inSvg(theme: ReturnType<typeof findTheme>): Element {
  return readSvg(sceneSvg(EVERY_SHAPE, TURNED_VIEW, theme, plotLayer, PAGE));
}

function drawn(root: Element): Element[] {
  return leaves(root).filter(({ name }) => name === 'path' || name === 'text');
}

/** Places that repeat the one before: a canvas repeats where an arc begins, an SVG does not. */
function withoutRepeats(points: readonly PathPoint[]): PathPoint[] {
  const kept: PathPoint[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || Math.hypot(point.xPx - last.xPx, point.yPx - last.yPx) > 2 * SAME_PX)
      kept.push(point);
  }
  return kept;
}

function farthestApart(a: readonly PathPoint[], b: readonly PathPoint[]): number {
  expect(a.length).toBe(b.length);
  return Math.max(0, ...a.map((point, i) => Math.hypot(point.xPx - b[i].xPx, point.yPx - b[i].yPx)));
}

/** A colour of the SVG with its opacity put back as two hexadecimal digits. */
function withAlpha(element: Element, attribute: 'fill' | 'stroke'): string | null {
  const colour = element.attributes[attribute];
  if (colour === undefined || colour === 'none') return null;
  const opacity = element.attributes[`${attribute}-opacity`];
  if (opacity === undefined) return colour;
  return (
    colour +
    Math.round(Number(opacity) * 255)
      .toString(16)
      .padStart(2, '0')
  );
}

describe.each(THEMES)('the picture in the theme $key', ({ key }) => {
  const theme = findTheme(key);

  it('S16: canvas and SVG lay the same outlines, place by place, to 0.01 px', () => {
    const canvas = onCanvas(theme);
    const svg = drawn(inSvg(theme));
    expect(svg.length).toBe(canvas.length);
    canvas.forEach((painted, i) => {
      if (painted.kind === 'words') return;
      const path = readPath(svg[i].attributes.d);
      expect(path.closes).toBe(painted.closes);
      const apart = farthestApart(withoutRepeats(painted.points), withoutRepeats(path.points));
      expect(apart).toBeLessThanOrEqual(SAME_PX);
    });
  });

  it('S16: canvas and SVG paint them alike', () => {
    const svg = drawn(inSvg(theme));
    onCanvas(theme).forEach((painted, i) => {
      const { attributes } = svg[i];
      if (painted.kind === 'words') return;
      expect(withAlpha(svg[i], 'fill')).toBe(painted.fill);
      expect(attributes['fill-rule'] ?? 'nonzero').toBe(painted.fillRule);
      expect(withAlpha(svg[i], 'stroke')).toBe(painted.stroke);
      if (painted.stroke === null) return;
      expect(Number(attributes['stroke-width'])).toBeCloseTo(painted.widthPx, 2);
      expect((attributes['stroke-dasharray'] ?? '').split(' ').filter(Boolean).map(Number)).toEqual(
        painted.dashPx,
      );
      expect(attributes['stroke-linecap'] ?? 'butt').toBe(painted.cap);
    });
  });

  it('S16: canvas and SVG write the same words at the same places', () => {
    const svg = drawn(inSvg(theme));
    const words = onCanvas(theme).flatMap((painted, i) =>
      painted.kind === 'words' ? [{ painted, written: svg[i] }] : [],
    );
    expect(words).toHaveLength(5);
    for (const { painted, written } of words) {
      expect(written.text).toBe(painted.text);
      expect(Number(written.attributes.x)).toBeCloseTo(painted.at.xPx, 2);
      expect(Number(written.attributes.y)).toBeCloseTo(painted.at.yPx, 2);
      expect(written.attributes.fill).toBe(painted.fill);
      expect(painted.font).toBe(
        `${written.attributes['font-weight'] ?? '400'} ${written.attributes['font-size']}px system-ui, sans-serif`,
      );
    }
  });
});

describe('the SVG document', () => {
  const root = inSvg(findTheme('paper'));

  it('says what it is, with what XML does not allow left out', () => {
    expect(root.name).toBe('svg');
    expect(root.attributes.xmlns).toBe('http://www.w3.org/2000/svg');
    expect(root.attributes.viewBox).toBe('0 0 1280 720');
    expect(root.children.slice(0, 2).map(({ name, text }) => [name, text])).toEqual([
      ['title', PAGE.title],
      ['desc', 'Trail 98 mm, ‘rake’ 24°'],
    ]);
  });

  it('dims each layer as a whole, by its ink', () => {
    const groups = root.children.filter(({ name }) => name === 'g');
    expect(groups.map(({ attributes }) => [attributes.class, attributes.opacity ?? '1'])).toEqual(
      EVERY_SHAPE.map(({ name, ink }) => [name, String(ink)]),
    );
  });

  it('is as many px large as the view, or as many mm of paper as given', () => {
    expect([root.attributes.width, root.attributes.height]).toEqual(['1280', '720']);
    const page = { ...PAGE, paperMmPerPx: 0.2 };
    const paper = readSvg(sceneSvg(EVERY_SHAPE, TURNED_VIEW, findTheme('paper'), plotLayer, page));
    expect([paper.attributes.width, paper.attributes.height]).toEqual(['256mm', '144mm']);
    expect(paper.attributes.viewBox).toBe('0 0 1280 720');
  });

  it('holds nothing but outlines and words: no script, no style sheet, no address', () => {
    const names = new Set(leaves(root).map(({ name }) => name));
    expect([...names].sort()).toEqual(['desc', 'path', 'rect', 'text', 'title']);
    for (const element of leaves(root))
      for (const attribute of Object.keys(element.attributes)) expect(attribute).not.toMatch(/href|^on/);
  });
});
