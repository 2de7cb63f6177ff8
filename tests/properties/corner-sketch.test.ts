/** Tests of the corner's sketch: the formula by hand, the same line for the same attitude, and where the gas can open. */
import { describe, expect, it } from 'vitest';
import { circleRadius } from '../../src/core/effects/corner-radius.ts';
import { cornerSketch, HALF_TURN, runsWide, SPARE_ROAD } from '../../src/core/effects/corner-sketch.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { cornerDrawing, gapDrawn } from '../../src/scene/corner-drawing.ts';
import { cornerStory } from '../../src/words/ride/corner-words.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;

const DEG = Math.PI / 180;

describe('the circle', () => {
  it('is wheelbase · cos(lean) / (bar angle · cos(rake)), by hand', () => {
    // 1400 · 0.766044 / (0.0349066 · 0.913545) = 1072.462 / 0.0318887 = 33631 mm.
    const found = circleRadius({ wheelbase: 1400, rake: 24 * DEG, lean: 40 * DEG, bar: 2 * DEG });
    expect(found).toBeCloseTo(33631.4, 0);
  });

  it('grows by about 0.8 % with a degree of rake', () => {
    const at = (rakeDeg: number) =>
      circleRadius({ wheelbase: 1400, rake: rakeDeg * DEG, lean: 40 * DEG, bar: 2 * DEG });
    expect(at(25) / at(24) - 1).toBeGreaterThan(0.007);
    expect(at(25) / at(24) - 1).toBeLessThan(0.009);
  });
});

describe('running wide', () => {
  it('is nothing for the same attitude', () => {
    const attitude = { wheelbase: 1412.3, rake: 0.41, lean: 0.7, bar: 0.03 };
    expect(runsWide(circleRadius(attitude), circleRadius({ ...attitude }), HALF_TURN)).toBe(0);
  });

  it('is what two arcs drawn step by step leave between their ends', () => {
    const ends = [33_000, 33_500].map((radius) => {
      const steps = 100_000;
      let [x, y] = [0, 0];
      for (let i = 0; i < steps; i++) {
        const heading = (HALF_TURN * (i + 0.5)) / steps;
        x += (radius * Math.cos(heading) * HALF_TURN) / steps;
        y += (radius * Math.sin(heading) * HALF_TURN) / steps;
      }
      return { x, y };
    });
    const out = { x: Math.sin(HALF_TURN), y: -Math.cos(HALF_TURN) };
    const gap = (ends[1].x - ends[0].x) * out.x + (ends[1].y - ends[0].y) * out.y;
    expect(runsWide(33_000, 33_500, HALF_TURN)).toBeCloseTo(gap, 4);
  });
});

describe.each(DEMO_BIKES.map((each) => [each.bike.name, each] as const))('%s', (_, { bike, setup }) => {
  const found = cornerSketch({ bike, setup });
  if (!found.ok) throw new Error(found.reason);
  const { entry, apex, exit, wide, gasAt } = found;

  it('opens the gas at the apex, or so late that the spare road is just enough', () => {
    expect(wide).toBeCloseTo((exit.radius - apex.radius) * (1 - Math.SQRT1_2), 6);
    if (wide <= SPARE_ROAD) expect(gasAt).toBe(0);
    else expect(runsWide(apex.radius, exit.radius, HALF_TURN - gasAt)).toBeCloseTo(SPARE_ROAD, 6);
  });

  it('takes the load on the front from the balance: more on the brakes, less on the gas', () => {
    const [onBrakes, middle, onGas] = [entry, apex, exit].map(({ frontShare }) => frontShare ?? 0);
    expect(onBrakes).toBeGreaterThan(middle);
    expect(middle).toBeGreaterThan(onGas);
    expect(onGas).toBeGreaterThan(0);
  });

  it('says the side that its figures have, and draws both lines on one another where the attitude is the same', () => {
    const said = cornerStory(found, STYLE);
    expect(said.includes('outside the line')).toBe(wide >= 0.05);
    expect(said.includes('inside the line')).toBe(wide <= -0.05);
    const size = { widthPx: 600, heightPx: 300, textPx: 13 };
    const same = { ...found, exit: apex, entry: apex, wide: 0, gasAt: 0 };
    const [lines] = cornerDrawing(same, size).scene;
    const [holds, , asItIs] = lines.shapes.map((shape) =>
      shape.kind === 'path' ? shape.steps.map((step) => ({ ...step, op: 'line' })) : [],
    );
    expect(asItIs.slice(1)).toEqual(holds);
    expect(cornerStory(same, STYLE)).toContain('stays the same');
    expect(gapDrawn(found)).toBeGreaterThanOrEqual(1);
  });

  it('has no answer for a bike that lies down', () => {
    expect(cornerSketch({ bike, setup: { ...setup, leanDeg: 95 } }).ok).toBe(false);
  });
});
