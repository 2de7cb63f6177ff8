/** Tests of the mark where the chain rubs on the pivot's guide. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { lowerPull } from '../../core/standing/drive-slopes.ts';
import { rubbingLabels, rubbingShapes } from './rubbing-drawing.ts';

const low = withFrame(plainBike, { countershaft: { x: 75, y: -20 }, guideRadius: 45 });

describe('the mark where the chain rubs', () => {
  it('lies on the upper face of the guide, under the chain, over a pitch at the least', () => {
    const on = standing(low, { ...plainSetup, frontTeeth: 13 });
    expect(on.pullLever).toBe(45);
    const [mark] = rubbingShapes(on, 15.875);
    const arc = mark.kind === 'path' ? mark.steps.find((step) => step.op === 'arc') : undefined;
    if (arc?.op !== 'arc') throw new Error('no arc');
    const pivot = on.pose.pivot;
    expect([arc.cx, arc.cy]).toEqual([pivot.x, pivot.y]);
    expect(arc.radius).toBeLessThan(45);
    expect(Math.sin((arc.from + arc.to) / 2)).toBeGreaterThan(0.9);
    expect(45 * (arc.from - arc.to)).toBeGreaterThanOrEqual(15.875 - 1e-9);
    const [words] = rubbingLabels(on, 15.875, 13);
    expect(words.text).toMatch(/rubs/);
    expect(Math.hypot(words.at.x - pivot.x, words.at.y - pivot.y)).toBeCloseTo(45, 9);
  });

  it('lies on the lower face of the guide under the pivot where the lower run bends there', () => {
    const under = withFrame(plainBike, { guideRadius: null, lowerGuideRadius: 62 });
    const on = standing(under);
    expect(lowerPull(on)).toEqual({ lever: -62, onGuide: true });
    const [mark, ...more] = rubbingShapes(on, 15.875);
    expect(more).toEqual([]);
    const arc = mark.kind === 'path' ? mark.steps.find((step) => step.op === 'arc') : undefined;
    if (arc?.op !== 'arc') throw new Error('no arc');
    expect(arc.radius).toBeLessThan(62);
    expect(Math.sin((arc.from + arc.to) / 2)).toBeLessThan(-0.9);
    const [words] = rubbingLabels(on, 15.875, 13);
    expect(words).toMatchObject({ text: 'Chain rubs under the pivot', spot: 'below' });
  });

  it('is not there while the chain runs clear, nor without a guide', () => {
    const bikes = [plainBike, withFrame(low, { guideRadius: null })];
    for (const bike of bikes) {
      expect(rubbingShapes(standing(bike), 15.875)).toEqual([]);
      expect(rubbingLabels(standing(bike), 15.875, 13)).toEqual([]);
    }
  });
});
