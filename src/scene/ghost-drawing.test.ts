/** Tests of the quiet outlines of other ride states. */
import { describe, expect, it } from 'vitest';
import { plainBike } from '../../tests/support/plain-bike.ts';
import { standing } from '../../tests/support/standing.ts';
import { ghostLabels, ghostShapes, type Ghost } from './ghost-drawing.ts';
import { placeLabels } from './shapes/label-placing.ts';
import { alignedAt, SHADOW_ALIGNS } from './shadow-drawing.ts';
import type { Shape } from './shapes/shape.ts';
import { THEMES, findTheme } from './shapes/theme.ts';
import { fitView } from './shapes/view.ts';

const live = standing();
const GHOSTS: readonly Ghost[] = [10, 40, 70, 90, 110, 120].map((front, i) => ({
  name: `State ${i}`,
  bike: plainBike,
  stance: standing(undefined, undefined, { front, rear: 120 - front }),
}));

function centres(shapes: readonly Shape[]): number[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'path' ? shape.steps.flatMap((step) => (step.op === 'arc' ? [step.cx] : [])) : [],
  );
}

describe('ghosts', () => {
  it.each(SHADOW_ALIGNS)('lie with their $label on the live bike’s', ({ key }) => {
    const here = alignedAt(live, key);
    for (const ghost of GHOSTS) {
      const [rear, front] = centres(ghostShapes([ghost], key, here));
      const { wheelbase, pivot } = ghost.stance.pose;
      const shift = here.x - { rearPatch: 0, frontPatch: wheelbase, pivot: pivot.x }[key];
      expect(rear).toBeCloseTo(shift, 9);
      expect(front).toBeCloseTo(wheelbase + shift, 9);
    }
  });

  it('are lines of the role of ghosts only, thinner than the baseline’s shadow', () => {
    const shapes = ghostShapes(GHOSTS, 'rearPatch', { x: 0, y: 0 });
    expect(new Set(shapes.map(({ role }) => role))).toEqual(new Set(['ghost']));
    for (const { key } of THEMES) {
      const { ghost, shadow } = findTheme(key).roles;
      expect(ghost.widthPx).toBeLessThan(shadow.widthPx);
      expect(ghost.fill).toBeNull();
    }
  });

  it('are all named, at labels that keep apart', () => {
    const wanted = ghostLabels(GHOSTS, 'rearPatch', { x: 0, y: 0 }, 11);
    expect(wanted.map(({ text }) => text)).toEqual(GHOSTS.map(({ name }) => name));
    const view = fitView({ left: -330, right: 1750, bottom: -120, top: 1150 }, 374, 260, 10);
    expect(placeLabels(wanted, view, 374, 260)).toHaveLength(GHOSTS.length);
  });
});
