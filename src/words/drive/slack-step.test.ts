/** Tests of the step that sets the slack again. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { walk } from '../../core/effects/walk.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { slackStep } from './slack-step.ts';

const style = { system: 'metric', decimal: '.' } as const;
const { bike, setup } = SPRUNG_ROAD;
const chained: Setup = { ...setup, chainLinks: 114 };
const stepFor = (from: Setup, change: Partial<Setup>, kind: 'chain' | 'shaft' = 'chain') => {
  const steps = walk(from, { ...from, ...change }, (asked) => {
    const on = standBike(bike, asked, 'riderUp');
    return on.ok ? on : null;
  });
  const found = slackStep(steps, kind, style);
  return (
    found && { ...found, words: found.words.replaceAll('\u00a0', ' '), turned: steps[found.after].turned }
  );
};

describe('the step that sets the slack', () => {
  it('follows the last step at the rear, and says slack and axle of a chain whose length is known', () => {
    const change = { rearTeeth: chained.rearTeeth - 1, shockLength: 3, forkTubes: 8 };
    const found = stepFor(chained, change);
    expect(found?.turned).toEqual(['shockLength']);
    const on = standBike(bike, { ...chained, ...change, forkTubes: chained.forkTubes }, 'riderUp');
    if (!on.ok) throw new Error(on.reason);
    const back = (on.machine.rear.arm - on.machine.rear.slotFrontArm).toFixed(1);
    expect(found?.words).toBe(
      `Set the chain’s slack with the wheel hanging: ${chained.chainSlack.toFixed(1)} mm up and down. The axle then stands ${back} mm back in its slot. Align the wheel.`,
    );
  });

  it('says so without figures while the length of the chain is not known', () => {
    expect(stepFor(setup, { axlePosition: setup.axlePosition + 2 })?.words).toBe(
      'Set the chain’s slack with the wheel hanging, by the manual. Align the wheel.',
    );
  });

  it('is none where nothing on the chain is touched, and without one', () => {
    expect(stepFor(chained, { shockLength: 3, forkTubes: 8 })).toBe(null);
    expect(stepFor(setup, { rearTeeth: setup.rearTeeth - 1 }, 'shaft')).toBe(null);
  });
});
