/** Tests that the lines of engine braking and rear brake run through the crossings they are drawn from. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Bike } from '../../core/parts/bike.ts';
import {
  brakeLine,
  brakeLineShapes,
  engineBrakingLine,
  engineBrakingShapes,
  stayLine,
} from './braking-lines.ts';
import { constructionAt } from './construction-hit.ts';
import { highlightShapes } from './construction-drawing.ts';
import type { Shape } from '../shapes/shape.ts';

const USED = { front: 30, rear: 40 };
const chained = standing(plainBike, plainSetup, USED);
const driven = (kind: Bike['drive']['kind']) =>
  standing({ ...plainBike, drive: { ...plainBike.drive, kind } }, plainSetup, USED);
const stayed = standing(
  {
    ...plainBike,
    rearBrake: {
      caliper: 'ownStay',
      stayAnchor: { x: -20, y: -70 },
      bracketRadius: 90,
      stayLength: 550,
      bracketSide: 'below',
    },
  },
  plainSetup,
  USED,
);

function ring(shapes: readonly Shape[]) {
  const found = shapes.find((shape) => shape.kind === 'mark');
  if (found?.kind !== 'mark') throw new Error('no crossing is drawn');
  return found.at;
}

describe('the engine-braking line', () => {
  it('runs through the crossing of lower run and swingarm line', () => {
    const at = ring(engineBrakingShapes(chained));
    expect(at.y / at.x).toBeCloseTo(engineBrakingLine(chained), 9);
  });

  it('of a shaft or a hub motor runs through the pivot and has no run', () => {
    for (const kind of ['shaft', 'hub'] as const) {
      const on = driven(kind);
      expect(engineBrakingLine(on)).toBeCloseTo(on.pose.pivot.y / on.pose.pivot.x, 12);
      expect(engineBrakingShapes(on)).toHaveLength(1);
    }
  });
});

describe('the rear brake’s line', () => {
  it('runs through the pivot with the caliper on the swingarm', () => {
    expect(brakeLine(chained)).toBeCloseTo(chained.pose.pivot.y / chained.pose.pivot.x, 12);
    expect(stayLine(chained)).toBeNull();
  });

  it('runs through the crossing of stay and swingarm line with a stay, which is drawn at its length', () => {
    const at = ring(brakeLineShapes(stayed));
    expect(at.y / at.x).toBeCloseTo(Number(brakeLine(stayed)), 9);
    const stay = stayLine(stayed);
    if (stay === null) throw new Error('the stay is not drawn');
    expect(Math.hypot(stay.to.x - stay.from.x, stay.to.y - stay.from.y)).toBeCloseTo(550, 9);
    expect(Math.hypot(stay.from.x - stayed.rearAxle.x, stay.from.y - stayed.rearAxle.y)).toBeCloseTo(90, 9);
  });

  it('is not drawn where the stay cannot reach', () => {
    const brake = { ...stayed.machine.brake, stayLength: 10 };
    const short = { ...stayed, machine: { ...stayed.machine, brake } };
    expect([brakeLine(short), stayLine(short), brakeLineShapes(short)]).toEqual([null, null, []]);
  });
});

describe('a line that is drawn while chosen', () => {
  it('can be tapped then, and only then', () => {
    const place = { x: 900, y: 900 * Number(brakeLine(stayed)) };
    expect(constructionAt(stayed, place, 4, 'brakeLine')).toBe('brakeLine');
    expect(constructionAt(stayed, place, 4)).not.toBe('brakeLine');
  });

  it('keeps its dash in sight, with no broad line under it', () => {
    expect(highlightShapes(stayed, 'brakeLine')).toEqual([]);
    expect(highlightShapes(stayed, 'squatLine')).not.toEqual([]);
  });
});
