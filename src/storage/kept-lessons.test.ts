/** Tests of a trainer's own lessons among what is stored, and of those that former builds kept. */
import { expect, it } from 'vitest';
import { clearFormerLessons, formerLessons, lessonsAmong, type TextStore } from './kept-lessons.ts';

it('finds the lessons among other records, as they were made', () => {
  const later = { id: 'a', madeAt: 9, text: '{}' };
  const odd = { id: 'b', madeAt: 'never', text: '[]' };
  expect(lessonsAmong([later, 7, null, { id: 'c', madeAt: 1 }, odd])).toEqual([{ ...odd, madeAt: 0 }, later]);
});

it('gives the lessons that a former build kept until they are cleared away, and nothing for anything else kept there', () => {
  const texts = new Map<string, string>([['sidestance-lessons', '["a",7,"b"]']]);
  const store: TextStore = {
    getItem: (key) => texts.get(key) ?? null,
    removeItem: (key) => {
      texts.delete(key);
    },
  };
  expect(formerLessons(() => store)).toEqual(['a', 'b']);
  clearFormerLessons(() => store);
  expect(formerLessons(() => store)).toEqual([]);
  for (const text of ['{"a":1}', '["a",', '7']) {
    texts.set('sidestance-lessons', text);
    expect(formerLessons(() => store)).toEqual([]);
  }
  const blocked = (): TextStore => {
    throw new Error('blocked');
  };
  expect(formerLessons(blocked)).toEqual([]);
});
