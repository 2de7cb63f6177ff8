/** Tests of a finger on the thumb of a slider. */
import { expect, it } from 'vitest';
import { thumbStep, type Thumb, type ThumbEffect, type ThumbInput } from './thumb-drag.ts';

const DOWN = { type: 'down', id: 1, xPx: 100, yPx: 50, thumbPx: 100, runPx: 300, part: 0.25 } as const;
const move = (xPx: number, yPx = 50, id = 1): ThumbInput => ({ type: 'move', id, xPx, yPx });
const up = (xPx: number, id = 1): ThumbInput => ({ type: 'up', id, xPx, yPx: 50 });
const cancel: ThumbInput = { type: 'cancel', id: 1 };

function effectsOf(...inputs: readonly ThumbInput[]): readonly ThumbEffect[] {
  let thumb: Thumb = null;
  return inputs.flatMap((input) => {
    const step = thumbStep(thumb, input);
    thumb = step.thumb;
    return step.effects;
  });
}

it('slides by as much of the range as the finger goes of the run, from where it stood', () => {
  expect(effectsOf(DOWN, move(110), move(140), move(80), up(80))).toEqual([
    { kind: 'slide', part: 0.25 + 30 / 300 },
    { kind: 'slide', part: 0.25 - 30 / 300 },
    { kind: 'commit' },
  ]);
});

it('starts without a jump, wherever on the thumb the finger is and however far its first move goes', () => {
  for (const thumbPx of [80, 100, 120]) {
    const [first] = effectsOf({ ...DOWN, thumbPx }, move(130), move(131));
    expect(first).toEqual({ kind: 'slide', part: 0.25 + 1 / 300 });
  }
});

it('spreads the whole range over 150 px on a short slider, and stops at its ends', () => {
  const short = { ...DOWN, runPx: 40, part: 0 };
  expect(effectsOf(short, move(110), move(185), move(260), move(300), move(-900))).toEqual([
    { kind: 'slide', part: 0.5 },
    { kind: 'slide', part: 1 },
    { kind: 'slide', part: 1 },
    { kind: 'slide', part: 0 },
  ]);
});

it('leaves a finger beside the thumb alone', () => {
  for (const xPx of [77, 123])
    expect(effectsOf({ ...DOWN, xPx }, move(xPx + 60), move(xPx + 90), up(xPx + 90))).toEqual([]);
  expect(effectsOf({ ...DOWN, xPx: 122 }, move(150), move(160), up(160))).toHaveLength(2);
});

it('leaves a swipe across the slider alone, also when it turns along it later', () => {
  expect(effectsOf(DOWN, move(105, 60), move(160, 60), move(200, 60), up(200))).toEqual([]);
  expect(effectsOf(DOWN, move(106, 56), move(160), up(160))).toEqual([]);
});

it('does nothing at a tap, and puts the value back when the finger is taken away', () => {
  expect(effectsOf(DOWN, move(103, 52), up(103))).toEqual([]);
  expect(effectsOf(DOWN, move(103), cancel)).toEqual([]);
  expect(effectsOf(DOWN, move(110), move(140), cancel, up(140))).toEqual([
    { kind: 'slide', part: 0.35 },
    { kind: 'restore' },
  ]);
});

it('heeds one finger only', () => {
  expect(effectsOf(DOWN, { ...DOWN, id: 2 }, move(150, 50, 2), move(190, 50, 2), up(190, 2))).toEqual([]);
  expect(effectsOf(move(150), up(150), cancel)).toEqual([]);
});
