/** Tests of what the projector shows: words large enough for a room, and what changed before the rest. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { Workbench } from '../workbench.svelte.ts';
import { Projector } from './projector.svelte.ts';

/** The drawing's size on a screen of 1920 × 1080: with the widest readings that there may be beside it, and with none, px. */
const SIZES = [
  [1267, 860],
  [1920, 930],
] as const;

function begun(turned: Parameters<typeof setAdjuster>[1], value: number): Projector {
  const bench = new Workbench(DEMO_BIKES[0]);
  bench.session.commit((from) => setAdjuster(from, turned, value), 'Turned');
  return new Projector(bench);
}

it.each(SIZES)('every word on the drawing is 24 px or more, in the close-ups too, at %i × %i', (...size) => {
  const projector = begun('shockLength', 6);
  projector.resize(...size);
  const labels = projector.drawing.scene.flatMap(({ shapes }) =>
    shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : [])),
  );
  expect(labels.map(({ text }) => text).join('; ')).toMatch(/Trail.*→|Trail −/);
  expect(Math.min(...labels.map(({ sizePx }) => sizePx))).toBeGreaterThanOrEqual(24);
});

it('readings that changed come before those that did not, and stay there on the way from before to now', () => {
  const projector = begun('frontTeeth', 16);
  const keys = () => projector.rows.map(({ reading }) => reading.key);
  const now = keys();
  const changed = now.slice(0, 3);
  expect(changed).not.toContain('rake');
  expect(now).toContain('rake');
  projector.part = 0;
  expect(keys()).toEqual(now);
});
