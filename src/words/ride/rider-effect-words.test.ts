/** Tests of what is said of gas, brakes and lifting wheels. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { refuse } from '../../core/numeric/refusal.ts';
import { describe, expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import { reached, sprung } from '../../../tests/support/plain-springs.ts';
import { neutralTold, riderEffectsTold } from './rider-effect-words.ts';
import { riderEffects, type RiderEffects } from '../../core/riding/rider-effects.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };
const effects = riderEffects(sprung(), plainSetup);
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

function told(changes: Partial<RiderEffects> = {}) {
  return riderEffectsTold({ ...effects, ...changes }, plainSetup, CHAIN, METRIC);
}

describe('what is said of the rider’s hands', () => {
  it('names squat or lift with its sign, and what the front does', () => {
    const change = reached(effects.gasOpened);
    const [squat] = told({ gasOpened: { ...change, rear: 3.25, front: -12 } });
    expect([squat.name, squat.value]).toEqual(['Squat (+) or lift (−) on the gas, from mid-corner', 3.25]);
    expect(plain(squat.words)).toBe(
      'Leaned over 40°, from steady speed to 0.50 g of acceleration: the rear squats 3.3 mm, the front rises 12.0 mm.',
    );
    const [lift] = told({ gasOpened: { ...change, rear: -2, front: -8 } });
    expect(lift.value).toBe(-2);
    expect(plain(lift.words)).toContain('the rear lifts 2.0 mm');
    const [still] = told({ gasOpened: { ...change, rear: 0.01, front: -8 } });
    expect(still.words).toContain('the rear stays where it is');
  });

  it('says first how far the bike leans, for whatever leans in the figure', () => {
    const leant = { ...plainSetup, leanDeg: 0, closedLeanDeg: 25 };
    const all = riderEffectsTold(riderEffects(sprung(), leant), leant, CHAIN, METRIC);
    const starts = all.map(({ words }) => plain(words).split(',')[0]);
    expect(starts).toEqual(['Upright', 'Upright', 'Leaned over 25°', 'Upright', 'Upright']);
  });

  it('tells dive and both limits with the posture at that moment', () => {
    const [, dive, closed, front, rear] = told();
    const { front: sinks } = reached(effects.braked);
    expect(plain(dive.words)).toContain(`the front sinks ${sinks.toFixed(1)} mm, the rear rises`);
    expect(dive.value).toBe(sinks);
    const shut = reached(effects.throttleClosed);
    expect([closed.name, closed.value]).toEqual(['Rise (+) or drop (−), throttle closed', -shut.rear]);
    expect(plain(closed.words)).toMatch(
      /^Upright, throttle closed, engine braking at 0\.10 g, against coasting: the rear (rises|drops) \d+\.\d mm/,
    );
    expect(front.value).toBe(reached(effects.frontLifts).limit);
    expect(rear.value).toBe(reached(effects.rearLifts).limit);
    expect(plain(rear.words)).toContain(
      `${reached(effects.rearLifts).travel.front.toFixed(1)} mm of the fork’s travel`,
    );
  });

  it('says why where there is no figure', () => {
    const [squat] = told({ gasOpened: refuse('frontLifts', { found: 1.5, limit: 0.9 }) });
    expect(squat.value).toBeNull();
    expect(plain(squat.words)).toMatch(
      /^At 1\.50 g the front wheel lifts; it stays on the ground up to 0\.90 g\./,
    );
  });

  it('tells the neutral point with the unsprung mass that shifts it', () => {
    const on = stanceWith({
      machine: { rearUnsprung: 20 },
      mass: 280,
      centre: { y: 650 },
      rearAxle: { y: 0 },
      pose: { pivot: { x: 500, y: 70 }, wheelbase: 1400 },
    });
    const { value, words } = neutralTold(on, METRIC);
    expect(value).toBeCloseTo(102.15, 2);
    expect(plain(words)).toContain('At 102.2 % the gas neither squats nor lifts the rear.');
    expect(plain(words)).toContain(
      'is +2.2 points from 100, because the gas also speeds up the 20 kg unsprung at the rear.',
    );
    expect(neutralTold(stanceWith({ mass: 0 }), METRIC).value).toBeNull();
  });
});
