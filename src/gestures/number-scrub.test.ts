/** Tests of dragging the label of a number. */
import { expect, it } from 'vitest';
import { scrubStep, type Scrub, type ScrubEffect, type ScrubInput } from './number-scrub.ts';

const at = (
  type: 'down' | 'move' | 'up',
  xPx: number,
  more: { id?: number; shift?: boolean; alt?: boolean } = {},
): ScrubInput => ({ type, id: 1, xPx, shift: false, alt: false, ...more });

function play(...inputs: ScrubInput[]): ScrubEffect[] {
  let scrub: Scrub = null;
  const effects: ScrubEffect[] = [];
  for (const input of inputs) {
    const step = scrubStep(scrub, input);
    scrub = step.scrub;
    effects.push(...step.effects);
  }
  return effects;
}

it('S7: 3 px on a label are still a tap, and beyond them every 4 px are a step', () => {
  expect(play(at('down', 50), at('move', 53), at('up', 47))).toEqual([{ kind: 'tap' }]);
  expect(play(at('down', 50), at('move', 56), at('move', 57), at('move', 65))).toEqual([
    { kind: 'scrub', steps: 0 },
    { kind: 'scrub', steps: 1 },
    { kind: 'scrub', steps: 3 },
  ]);
  expect(play(at('down', 50), at('move', 39))).toEqual([{ kind: 'scrub', steps: -2 }]);
});

it('S7: one scrub is one entry of the history', () => {
  const effects = play(at('down', 50), at('move', 60), at('move', 80), at('move', 70), at('up', 70));
  expect(effects.filter((effect) => effect.kind === 'commit')).toHaveLength(1);
  expect(effects.at(-1)).toEqual({ kind: 'commit' });
});

it('a release past the last move still counts', () => {
  expect(play(at('down', 50), at('up', 61))).toEqual([{ kind: 'scrub', steps: 2 }, { kind: 'commit' }]);
});

it('Shift makes a step ten times as large and Alt a tenth, from the moment it is held', () => {
  expect(play(at('down', 50), at('move', 57, { shift: true }))).toEqual([{ kind: 'scrub', steps: 10 }]);
  expect(play(at('down', 50), at('move', 57, { alt: true }))).toEqual([{ kind: 'scrub', steps: 0.1 }]);
  expect(play(at('down', 50), at('move', 57), at('move', 61, { shift: true })).at(-1)).toEqual({
    kind: 'scrub',
    steps: 11,
  });
});

it('many small moves come to as much as one large one', () => {
  const small = Array.from({ length: 50 }, (_, i) => at('move', 53 + 0.4 * (i + 1)));
  expect(play(at('down', 50), ...small).at(-1)).toEqual(play(at('down', 50), at('move', 73))[0]);
});

it('Escape restores the number and spends the press; a cancelled pointer restores it too', () => {
  expect(
    play(at('down', 50), at('move', 60), { type: 'escape' }, at('move', 90), at('up', 90)).slice(1),
  ).toEqual([{ kind: 'restore' }]);
  expect(play(at('down', 50), at('move', 60), { type: 'cancel', id: 1 }).slice(1)).toEqual([
    { kind: 'restore' },
  ]);
  expect(play(at('down', 50), { type: 'cancel', id: 1 })).toEqual([]);
});

it('a second pointer is ignored', () => {
  expect(
    play(at('down', 50), at('down', 10, { id: 2 }), at('move', 90, { id: 2 }), at('up', 90, { id: 2 })),
  ).toEqual([]);
});
