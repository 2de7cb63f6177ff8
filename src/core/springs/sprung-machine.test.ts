/** Tests of putting springs into a machine. */
import { describe, expect, it } from 'vitest';
import { plainBike, withFork, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { plainSprings, sprung, withForkSprings, withShock } from '../../../tests/support/plain-springs.ts';
import { made } from '../../../tests/support/standing.ts';
import { suspensionAt } from '../linkage/suspension.ts';
import { sprungMachine } from './sprung-machine.ts';

describe('a machine with springs', () => {
  it('has the whole travel when the shock’s stroke is longer than the wheel asks for', () => {
    expect(sprung()).toMatchObject({
      most: { front: 120, rear: 130 },
      rearEndsBy: 'stop',
      frontEndsBy: 'stop',
    });
  });

  it('ends where the shock is closed or its coils touch, whichever comes first', () => {
    const stroke = (bike: ReturnType<typeof sprung>) => {
      const at = suspensionAt(bike.machine.rear, bike.most.rear);
      return at.ok ? at.shockStroke : NaN;
    };
    const short = sprung(withShock({ closedLength: 290 }));
    expect(stroke(short)).toBeCloseTo(40, 9);
    expect(short.rearEndsBy).toBe('stop');
    const bound = sprung(withShock({ springTravel: 39 }));
    expect(stroke(bound)).toBeCloseTo(30, 9);
    expect(bound.rearEndsBy).toBe('coils');
  });

  it('has a shock lever that is the slope of stroke over the arm’s angle', () => {
    const { rear } = made(withSwingarm(plainBike, { tablePitchDeg: 3 }));
    const at = (travel: number) => {
      const arm = suspensionAt(rear, travel);
      if (!arm.ok) throw new Error(arm.reason);
      return arm;
    };
    const [low, middle, high] = [59.99, 60, 60.01].map(at);
    const slope = (high.shockStroke - low.shockStroke) / (low.angle - high.angle);
    expect(middle.lever).toBeCloseTo(slope, 4);
  });
});

describe('springs are refused in a machine', () => {
  it('when one of them is impossible, naming the end', () => {
    expect(sprungMachine(made(), withForkSprings({ rate: 0 }))).toMatchObject({
      reason: 'rateNotAboveZero',
      end: 'front',
    });
    expect(sprungMachine(made(), withShock({ closedLength: 400 }))).toMatchObject({
      reason: 'noStroke',
      end: 'rear',
      found: -70,
    });
    expect(sprungMachine(made(), withShock({ preload: 70, springTravel: 65 }))).toMatchObject({
      reason: 'preloadBeyondSpring',
      end: 'rear',
    });
  });

  it('when a top-out spring would pull an end right through its travel', () => {
    const strong = withForkSprings({
      preload: 10,
      springTravel: 30,
      topOut: { length: 120, rate: 50 },
    });
    expect(sprungMachine(made(), strong)).toMatchObject({
      reason: 'topOutImpossible',
      end: 'front',
    });
  });

  it('when the machine has no pose or no travel', () => {
    expect(sprungMachine(made(withFork(plainBike, { length: 40 })), plainSprings)).toMatchObject({
      reason: 'forkTooShort',
    });
    expect(sprungMachine(made(withSwingarm(plainBike, { wheelTravel: 0 })), plainSprings)).toMatchObject({
      reason: 'noStroke',
      end: 'rear',
    });
  });
});
