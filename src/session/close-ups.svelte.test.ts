/** Tests of what the side view shows of a change, and of what its words and close-ups leave in sight. */
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import { bikeShapes } from '../scene/bike/bike-drawing.ts';
import { keptClear } from '../scene/construction/kept-clear.ts';
import { SQUARE, squaresOf } from '../scene/covered.ts';
import { labelBox, type Box } from '../scene/shapes/label-placing.ts';
import type { LabelShape, LayerName, Shape } from '../scene/shapes/shape.ts';
import { toScreen } from '../scene/shapes/view.ts';
import { CloseUps } from './close-ups.svelte.ts';
import type { SideViewMode } from './mode.svelte.ts';
import { Workbench } from './workbench.svelte.ts';

/** The side view's own size on windows of 1280 × 720, 1920 × 1080, 1024 × 768 and 820 × 1180, with low and high panels and in Sun, and on phones, px. */
const SIZES: readonly (readonly [number, number])[] = [
  [656, 345],
  [656, 311],
  [656, 274],
  [1027, 667],
  [1027, 490],
  [688, 620],
  [680, 567],
  [820, 464],
  [390, 338],
  [390, 266],
  [371, 214],
  [371, 196],
];

/** Its sizes on phones of 390 × 844, 390 × 664 and 667 × 320; in Sun the last is too low to promise the rear’s figures, which stand in the line below. */
const PHONES = SIZES.slice(-4, -1);

/** Its sizes on a screen of 1280 × 720 and of 1920 × 1080, px. */
const ROOMY: readonly (readonly [number, number])[] = [
  [656, 312],
  [1027, 667],
];

const MODES: readonly SideViewMode[] = ['adjusters', 'edit', 'measure'];

function shapesOf(bench: Workbench, name: LayerName): readonly Shape[] {
  return bench.drawing.scene.find((layer) => layer.name === name)?.shapes ?? [];
}

function labelsOf(bench: Workbench, name: LayerName): LabelShape[] {
  return shapesOf(bench, name).filter((shape) => shape.kind === 'label');
}

function boxesOf(bench: Workbench): { text: string; box: Box }[] {
  return labelsOf(bench, 'labels').map((label) => ({
    text: label.text,
    box: labelBox(
      label.text,
      label.sizePx,
      label.spot,
      toScreen(bench.sideView.view, label.at),
      label.shiftPx,
    ),
  }));
}

function placesOf(shape: Shape): { x: number; y: number }[] {
  if (shape.kind !== 'path') return [];
  return shape.steps.flatMap((step) => ('x' in step ? [{ x: step.x, y: step.y }] : []));
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Corners of the bike's outlines that boxes lie over. */
function overBike(bench: Workbench, boxes: readonly Box[]): { x: number; y: number }[] {
  const { view } = bench.sideView;
  const drawn = shapesOf(bench, 'bike').flatMap(placesOf);
  expect(drawn.length).toBeGreaterThan(500);
  return drawn.filter((place) => {
    const { x, y } = toScreen(view, place);
    return boxes.some((box) => x > box.left && x < box.right && y > box.top && y < box.bottom);
  });
}

function begun(demo: number, [widthPx, heightPx]: readonly [number, number]): Workbench {
  const bench = new Workbench(DEMO_BIKES[demo]);
  bench.resize(widthPx, heightPx);
  return bench;
}

/** Turns shock and fork tubes so far from where the baseline has them, mm. */
function turn(bench: Workbench, shock: number, tubes: number): void {
  const { setup } = bench.session.document.baseline;
  bench.session.commit((from) => setAdjuster(from, 'shockLength', setup.shockLength + shock), 'Shock');
  bench.session.commit((from) => setAdjuster(from, 'forkTubes', setup.forkTubes + tubes), 'Fork tubes');
}

describe.each(DEMO_BIKES.map(({ bike }, demo) => [bike.name, demo] as const))('%s', (name, demo) => {
  it.each(SIZES)(
    'S8: no word and no close-up lies over trail triangle, patches, instant centre or wheelbase arrow, at %i × %i',
    (widthPx, heightPx) => {
      const bench = begun(demo, [widthPx, heightPx]);
      const closeUps = bench.stateOf(CloseUps);
      for (const [shock, tubes] of [
        [0, 0],
        [6, 5],
        [10, 5],
        [-5, -2],
      ])
        for (const key of MODES) {
          turn(bench, shock, tubes);
          bench.changeMode(key);
          const { live } = bench.standing;
          if (live === null) throw new Error(`${name} does not stand`);
          const clear = keptClear(live.stance, bench.sideView.view);
          expect(clear.length).toBeGreaterThan(6);
          const laid = [
            ...boxesOf(bench),
            ...closeUps.drawing.boxes.map((box) => ({ text: 'a close-up', box })),
          ];
          const over = laid.filter(({ box }) => clear.some((other) => overlap(box, other)));
          expect(over.map(({ text }) => text)).toEqual([]);
          for (const [i, { box, text }] of laid.entries())
            expect(
              laid.slice(i + 1).filter((other) => overlap(box, other.box)),
              text,
            ).toEqual([]);
        }
    },
  );

  it.each(SIZES)('the zones keep their names beside close-ups, at %i × %i', (...size) => {
    const bench = begun(demo, size);
    bench.stateOf(CloseUps);
    const names = () => labelsOf(bench, 'labels').filter(({ role }) => role === 'zoneName').length;
    for (const [shock, tubes] of [
      [6, 5],
      [5, 10],
      [0, 5],
    ]) {
      turn(bench, shock, tubes);
      bench.preferences.change({ shadow: false });
      const without = names();
      expect(without).toBeGreaterThan(0);
      bench.preferences.change({ shadow: true });
      expect(names()).toBe(without);
    }
  });

  it.each(ROOMY)(
    'S8: both close-ups are there, over nothing of the bike, and the zones keep their names, at %i × %i',
    (...size) => {
      const bench = begun(demo, size);
      const closeUps = bench.stateOf(CloseUps);
      const names = () => labelsOf(bench, 'labels').map(({ text }) => text);
      for (const [shock, tubes] of [
        [6, 5],
        [-5, -2],
        [10, 0],
      ]) {
        turn(bench, shock, tubes);
        expect(names()).toEqual(expect.arrayContaining(['LIFT', 'NEUTRAL', 'SQUAT']));
        const { boxes } = closeUps.drawing;
        expect(boxes).toHaveLength(2);
        expect(overBike(bench, boxes)).toEqual([]);
      }
    },
  );

  it.each(PHONES)(
    'S8: a phone shows the trail larger and leaves the bike whole, and writes behind its figure what it has no room to show, at %i × %i',
    (...size) => {
      const bench = begun(demo, size);
      const closeUps = bench.stateOf(CloseUps);
      for (const [shock, tubes] of [
        [6, 5],
        [-5, 0],
        [0, 5],
        [0, -4],
        [10, 3],
      ]) {
        turn(bench, shock, tubes);
        const { boxes, missing } = closeUps.drawing;
        expect(labelsOf(bench, 'closeUps').map(({ text }) => text)).toContainEqual(
          expect.stringMatching(/^(Trail|Rake)/),
        );
        expect(overBike(bench, boxes)).toEqual([]);
        const words = labelsOf(bench, 'labels').map(({ text }) => text);
        expect(words).toContainEqual(expect.stringMatching(/^Trail [\d.]+.mm$/));
        // Fork tubes alone change anti-squat by less than anybody notices.
        if (shock !== 0 && missing.includes('rear'))
          expect(words).toContainEqual(expect.stringMatching(/^(Anti-squat|Swingarm) [\d.]+.* \([+−]/));
      }
    },
  );

  it.each(SIZES)(
    'an axle moved in its slot is shown larger, and how far, over nothing of the bike, at %i × %i',
    (...size) => {
      const bench = begun(demo, size);
      const closeUps = bench.stateOf(CloseUps);
      const { setup, bike } = bench.session.document;
      expect(bike.swingarm.slot).toBeGreaterThan(8);
      const place = setup.axlePosition > bike.swingarm.slot / 2 ? -4 : 5;
      bench.session.commit((from) => setAdjuster(from, 'axlePosition', setup.axlePosition + place), 'Axle');
      const told = labelsOf(bench, 'closeUps').map(({ text }) => text);
      const words =
        place > 0
          ? ['Axle 5.0\u00a0mm back', 'Axle +5.0\u00a0mm']
          : ['Axle 4.0\u00a0mm forward', 'Axle −4.0\u00a0mm'];
      expect(words.filter((each) => told.includes(each))).toHaveLength(1);
      expect(overBike(bench, closeUps.drawing.boxes)).toEqual([]);
    },
  );

  it.each(SIZES)('a change of the trail opens a close-up that says it, at %i × %i', (widthPx, heightPx) => {
    const bench = begun(demo, [widthPx, heightPx]);
    bench.stateOf(CloseUps);
    expect(shapesOf(bench, 'closeUps')).toEqual([]);
    turn(bench, 6, 5);
    const texts = labelsOf(bench, 'closeUps').map(({ text }) => text);
    // A phone has room for one line of words.
    expect(texts.join('; ')).toMatch(
      widthPx > 400 ? /Trail −[\d.]+.mm; [\d.]+ → [\d.]+.mm/ : /Trail −[\d.]+.mm/,
    );
    expect(texts.join('; ')).toMatch(/\d+.mm ×\d/);
    const drawn = shapesOf(bench, 'closeUps').map(({ role }) => role);
    for (const role of ['shadowBody', 'trailTriangle', 'shadow', 'steeringAxis', 'highlight'] as const)
      expect(drawn).toContain(role);
  });

  it.each(SIZES)(
    'a close-up writes its scale below the ground, off its own triangle, at %i × %i',
    (...size) => {
      const bench = begun(demo, size);
      bench.stateOf(CloseUps);
      let seen = 0;
      for (const [shock, tubes] of [
        [6, 5],
        [0, 3],
        [-4, 0],
      ]) {
        turn(bench, shock, tubes);
        const scales = labelsOf(bench, 'closeUps').filter(({ text }) => text.includes('×'));
        const triangles = shapesOf(bench, 'closeUps').filter(({ role }) => role === 'trailTriangle');
        if (triangles.length === 0) continue;
        seen += 1;
        const { view } = bench.sideView;
        const ground = Math.max(...triangles.flatMap(placesOf).map((place) => toScreen(view, place).y));
        const [{ text, sizePx, spot, at, shiftPx }] = scales;
        expect(labelBox(text, sizePx, spot, toScreen(view, at), shiftPx).top).toBeGreaterThanOrEqual(
          ground - 1,
        );
      }
      expect(seen).toBeGreaterThan(0);
    },
  );
});

describe('a close-up', () => {
  it('stays where it is while the adjuster goes on turning, and goes with the change', () => {
    const bench = begun(0, SIZES[0]);
    const closeUps = bench.stateOf(CloseUps);
    turn(bench, 3, 0);
    const [first] = closeUps.drawing.boxes;
    for (let shock = 3; shock < 8; shock += 0.5) {
      turn(bench, shock, 0);
      expect(closeUps.drawing.boxes[0]).toEqual(first);
    }
    turn(bench, 0, 0);
    expect(closeUps.drawing.shapes).toEqual([]);
  });

  it('is not there for a change that no gauge shows, nor without the baseline’s shadow', () => {
    const bench = begun(0, SIZES[0]);
    const closeUps = bench.stateOf(CloseUps);
    turn(bench, 0.1, 0);
    expect(closeUps.drawing.shapes).toEqual([]);
    turn(bench, 6, 0);
    expect(closeUps.drawing.shapes.length).toBeGreaterThan(0);
    bench.preferences.change({ shadow: false });
    expect(closeUps.drawing.shapes).toEqual([]);
  });

  it.each(SIZES)(
    'lies over a quarter of itself of bike and lines at most once the view is zoomed and pushed, or is not there, at %i × %i',
    (...size) => {
      const bench = begun(0, size);
      const closeUps = bench.stateOf(CloseUps);
      turn(bench, 10, 5);
      const { live } = bench.standing;
      if (live === null) throw new Error('the bike does not stand');
      const filled = bikeShapes(live.stance, live.bike, live.setup);
      let seen = 0;
      for (const zoom of [1.5, 1.6, 1.7]) {
        bench.sideView.zoomMiddle(zoom);
        for (const [right, down] of [
          [0, 0],
          [120, 60],
          [-200, -100],
        ]) {
          bench.sideView.pan(right, down);
          const { covered } = squaresOf({ filled, lines: [], kept: [] }, bench.sideView.view, ...size);
          for (const { left, top, right: far, bottom } of closeUps.drawing.boxes) {
            const [wide, high] = [Math.floor((far - left) / SQUARE), Math.floor((bottom - top) / SQUARE)];
            seen += 1;
            expect(covered(left / SQUARE, top / SQUARE, wide, high) / (wide * high)).toBeLessThanOrEqual(
              0.25,
            );
          }
        }
      }
      expect(seen).toBeGreaterThan(0);
    },
  );
});
