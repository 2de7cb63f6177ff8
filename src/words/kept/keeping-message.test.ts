/** Tests of the messages about keeping bikes. */
import { describe, expect, it } from 'vitest';
import { openedMessage } from './keeping-message.ts';

const repairs = (count: number, sentence: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => ({ sentence: sentence(i) }));

describe('a bike opened with changes', () => {
  it('lists a few changes one by one', () => {
    const { text, details } = openedMessage(
      'A',
      repairs(3, (i) => `Change ${i}.`),
      'It is kept.',
    );
    expect(text).toBe('Opened A, with 3 changes. It is kept.');
    expect(details).toEqual(['Change 0.', 'Change 1.', 'Change 2.']);
  });

  it('sums thousands up', () => {
    const { text, details } = openedMessage(
      'A',
      repairs(4800, (i) => `Change ${i}.`),
      'It is kept.',
    );
    expect(text).toContain('4800 changes');
    expect(details).toHaveLength(21);
    expect(details.at(-1)).toBe('And 4780 more changes.');
  });

  it('names a change once that was made again and again', () => {
    const { details } = openedMessage(
      'A',
      repairs(100, () => 'The same.'),
      'It is kept.',
    );
    expect(details).toEqual(['The same.', '99 of these changes were made more than once.']);
  });
});
