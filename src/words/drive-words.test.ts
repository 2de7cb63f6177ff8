/** Tests of the words of a drive. */
import { expect, it } from 'vitest';
import { driveWords } from './drive-words.ts';

it('of a chain, a shaft and a hub stay as they are written', () => {
  for (const kind of ['chain', 'shaft', 'hub'] as const)
    expect(driveWords('The chain’s part', kind)).toBe('The chain’s part');
});

it.each([
  ['Chain slack', 'Belt slack'],
  ['Anti-squat, chain’s part', 'Anti-squat, belt’s part'],
  ['One chain link moves it half a pitch.', 'One belt tooth moves it half a pitch.'],
  [
    'A chain of 112 links is too short. With 114 or 116 links it fits.',
    'A belt of 112 teeth is too short. With 114 or 116 teeth it fits.',
  ],
  ['Chains in hand, links', 'Belts in hand, teeth'],
  ['15.875 mm for roller chains of the 5xx sizes', '15.875 mm for roller chains of the 5xx sizes'],
  ['The arm, its links and the chain follow.', 'The arm, its links and the belt follow.'],
])('of a belt: %s', (written, said) => {
  expect(driveWords(written, 'belt')).toBe(said);
});
