/** A change told from cause to effect: its figures are those of the readings, its direction words follow from them. */
import { describe, expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { why } from '../../core/effects/why.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { standBike, type StandingBike } from '../../core/riding/stand-bike.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { readOut } from './read-out.ts';
import { settingDifferences } from '../change/setup-difference.ts';

interface Asked {
  readonly bike?: Bike;
  readonly from?: Setup;
  readonly state?: RideStateKey;
}

function told(
  changes: Partial<Setup>,
  { bike = plainBike, from = plainSetup, state = 'toppedOut' }: Asked = {},
) {
  const stand = (setup: Setup): StandingBike => {
    const found = standBike(bike, setup, state);
    if (!found.ok) throw new Error('the bike does not stand');
    return found;
  };
  const explained = why(stand(from), stand({ ...from, ...changes }));
  const paragraphs = readOut(explained, [], 'Topped out', { system: 'metric', decimal: '.' });
  return { explained, text: paragraphs.join('\n').replace(/\s/gu, ' '), paragraphs };
}

describe('a change in words to be read out', () => {
  it('says why a longer shock quickens the steering, from the frame to the lever of the trail', () => {
    const { text, explained } = told({ shockLength: 10 });
    expect(text).toMatch(
      /^The swingarm pivot stands [\d.]+ mm higher(?: and the front end, straight above the axle, [\d.]+ mm (?:higher|lower))?, so the frame is tipped nose down by [\d.]+°\. The steering axis stands steeper on the road: rake was [\d.]+° and is [\d.]+°\. The axis meets the road [\d.]+ mm nearer to the point on which the front tyre stands: trail was [\d.]+ mm and is [\d.]+ mm\. .*With a (?:slightly )?shorter lever the bike turns in (?:a little )?quicker/,
    );
    const [was, is] = /trail was ([\d.]+) mm and is ([\d.]+) mm/u.exec(text)?.slice(1).map(Number) ?? [];
    expect(was).toBeCloseTo(explained.trail.before, 1);
    expect(is).toBeCloseTo(explained.trail.after, 1);
    const [nearer] = /road ([\d.]+) mm nearer/u.exec(text)?.slice(1).map(Number) ?? [];
    expect(nearer).toBeCloseTo(was - is, 9);
  });

  it('begins with what was done', () => {
    const { explained } = told({ shockLength: 10 });
    const to = { ...plainSetup, shockLength: 10, frontTeeth: plainSetup.frontTeeth - 1 };
    const style = { system: 'metric', decimal: '.' } as const;
    const [first] = readOut(
      explained,
      settingDifferences(plainSetup, to, 'chain', style),
      'Topped out',
      style,
    );
    expect(first.replace(/\s/gu, ' ')).toBe(
      `What was done: shock length from 0.0 mm to 10.0 mm and front sprocket from ${plainSetup.frontTeeth} teeth to ${to.frontTeeth} teeth.`,
    );
  });

  it('turns every word round for a shorter shock', () => {
    const { text } = told({ shockLength: -8 });
    expect(text).toMatch(/nose up by .* slacker on the road.* further ahead of the point.* longer lever/s);
    expect(text).not.toMatch(/nose down|steeper on the road|shorter lever/);
  });

  it('says that clamps carry the axle, and nothing of a frame that did not move', () => {
    const { text } = told({ clampOffset: plainSetup.clampOffset + 6 });
    expect(text).toMatch(
      /The front axle stands further ahead of the axis\. The axis meets the road [\d.]+ mm nearer/,
    );
    expect(text).not.toContain('drive');
  });

  it('warns where no trail is left, and praises no lever there', () => {
    const { text } = told({ clampOffset: 150 });
    expect(text).toMatch(/: the steering does not centre itself, do not ride like this\./);
    expect(text).not.toContain('lever');
  });

  it('tells what swingarm and chain each do to the drive, and that they add up', () => {
    const { text } = told({ shockLength: 6 }, { bike: linkedBike, from: sprungSetup, state: 'accelerating' });
    const whole =
      /Anti-squat as a whole was ([\d.]+) % and is ([\d.]+) %: the drive holds the rear up (?:slightly )?(more|less)/u.exec(
        text,
      );
    expect(whole).not.toBeNull();
    expect(whole?.[3]).toBe(Number(whole?.[2]) > Number(whole?.[1]) ? 'more' : 'less');
    expect(text).toMatch(
      /The swingarm slopes down more steeply from the pivot to the rear axle: it was at [\d.]+° and is at [\d.]+°\./,
    );
  });

  it('says what stiffer springs did, and nothing of springs where geometry alone moved an end', () => {
    const asked = { bike: linkedBike, from: sprungSetup, state: 'riderUp' } as const;
    const stiffer = told({ forkSpringRate: sprungSetup.forkSpringRate + 2 }, asked).text;
    expect(stiffer).toMatch(/^The fork uses [\d.]+ mm less of its travel, with stiffer springing\./);
    expect(told({ shockLength: 10 }, asked).text).not.toMatch(/uses .* of its travel/);
  });

  it('names the ride state and leaves the verdict to a ride; says nothing where nothing moved', () => {
    expect(told({ shockLength: 10 }).paragraphs.at(-1)).toBe(
      'All figures are for the ride state “Topped out”. Only a test ride shows how it feels.',
    );
    expect(told({}).paragraphs).toEqual([]);
    expect(told({ forkTubes: plainSetup.forkTubes + 0.5 }).paragraphs).toEqual([]);
  });
});
