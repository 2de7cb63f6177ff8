/** Tests of the drawings that show where tape, gauge and scale are held. */
import { describe, expect, it } from 'vitest';
import { MEASURE_KINDS } from '../core/measure/kinds/all-kinds.ts';
import { MEASURE_PARTS, MEASURE_PART_KEYS, type MeasurePartKey } from '../core/measure/held/measure-parts.ts';
import { linkedBike } from '../../tests/support/linked-bike.ts';
import { plainSetup } from '../../tests/support/plain-bike.ts';
import { standing, TOPPED_OUT } from '../../tests/support/standing.ts';
import { wrongNumber } from '../core/numeric/wrong-number.ts';
import { holdScene } from './measure-drawing.ts';
import { holdOf } from './measure-hold.ts';
import type { PathShape, Shape } from './shapes/shape.ts';

const bike = linkedBike;
const stance = standing(bike, plainSetup, TOPPED_OUT);
const on = { stance, bike };
const window = { widthPx: 300, heightPx: 180, sizePx: 13 };

/** Every choice of parts that a kind takes on this bike, the second one never the first. */
function choices(takes: readonly (readonly string[])[]): (readonly MeasurePartKey[])[] {
  const fits = takes.map((shapes) =>
    MEASURE_PART_KEYS.filter((key) => {
      const { shape, applies } = MEASURE_PARTS[key];
      return shapes.includes(shape) && applies(bike);
    }),
  );
  if (fits.length === 0) return [[]];
  if (fits.length === 1) return fits[0].map((key) => [key]);
  return fits[0].flatMap((from) => fits[1].filter((to) => to !== from).map((to) => [from, to]));
}

function shapesOf(kind: (typeof MEASURE_KINDS)[number]['key'], parts: readonly MeasurePartKey[]): Shape[] {
  const hold = holdOf({ kind, parts }, on);
  if (hold === null) return [];
  const shown = { stance, bike, setup: plainSetup, hold, words: 'Distance' };
  return holdScene(shown, window).scene.flatMap(({ shapes }) => shapes);
}

function dimension(kind: 'distance' | 'horizontal' | 'height', parts: readonly MeasurePartKey[]): PathShape {
  const found = shapesOf(kind, parts).find(
    (shape): shape is PathShape => shape.kind === 'path' && shape.role === 'dimension',
  );
  if (found === undefined) throw new Error('nothing is dimensioned');
  return found;
}

describe('where a tool is held', () => {
  it.each(MEASURE_KINDS.map(({ key, takes }) => [key, takes] as const))(
    '%s is drawn between all the parts it can be measured between, with its words',
    (kind, takes) => {
      for (const parts of choices(takes)) {
        const hold = holdOf({ kind, parts }, on);
        expect(hold, parts.join(' ')).not.toBeNull();
        expect(wrongNumber({ hold })).toBeNull();
        const labels = shapesOf(kind, parts).filter((shape) => shape.kind === 'label');
        expect(labels, parts.join(' ')).toHaveLength(1);
      }
    },
  );

  it('a distance runs from centre to centre, one along the floor square to plumb lines, a height from the floor', () => {
    const { rearAxle, frontAxle } = stance;
    const straight = dimension('distance', ['rearAxle', 'frontAxle']).steps;
    expect(straight).toMatchObject([rearAxle, frontAxle]);
    const [from, to] = dimension('horizontal', ['rearAxle', 'steeringHead']).steps;
    expect('y' in from && 'y' in to && from.y === to.y).toBe(true);
    expect(dimension('height', ['pivot']).steps).toMatchObject([{ y: 0 }, stance.pose.pivot]);
  });

  it('a part that the bike does not have is drawn nowhere', () => {
    expect(holdOf({ kind: 'distance', parts: ['shockOnFrame', 'rearAxle'] }, on)).toBeNull();
  });
});
