/** Tests of how often teeth and links meet, against turning the sprockets tooth by tooth. */
import { expect, it } from 'vitest';
import { huntingTooth } from './hunting-tooth.ts';

/** Turns until tooth 0 of a sprocket lies on link 0 again, by counting. */
function turnsByCounting(teeth: number, links: number): number {
  for (let passed = teeth; ; passed += teeth) if (passed % links === 0) return passed / teeth;
}

it('the turns are those of turning the sprockets until the same tooth meets the same link', () => {
  for (const [front, rear, links] of [
    [15, 45, 114],
    [16, 48, 112],
    [17, 43, 110],
    [13, 52, 104],
  ]) {
    const meetings = huntingTooth(front, rear, links);
    expect(meetings?.frontTurns).toBe(turnsByCounting(front, links));
    expect(meetings?.rearTurns).toBe(turnsByCounting(rear, links));
    expect(meetings?.pairTurns).toBe(turnsByCounting(rear, front));
  }
});

it('the shared factors are those of the pair and of each sprocket with the chain', () => {
  expect(huntingTooth(15, 45, 114)).toMatchObject({
    sharedByTeeth: 15,
    frontShared: 3,
    rearShared: 3,
    pairTurns: 1,
  });
  expect(huntingTooth(17, 43, 110)).toMatchObject({
    sharedByTeeth: 1,
    frontShared: 1,
    rearShared: 1,
    pairTurns: 17,
  });
});

it('there is no answer for anything but whole numbers above zero', () => {
  for (const bad of [0, -15, 15.5, NaN, Infinity]) {
    expect(huntingTooth(bad, 45, 114)).toBeNull();
    expect(huntingTooth(15, bad, 114)).toBeNull();
    expect(huntingTooth(15, 45, bad)).toBeNull();
  }
});
