/** Tests of lessons kept in the browser. */
import { expect, it } from 'vitest';
import { keepLessons, keptLessons, type TextStore } from './kept-lessons.ts';

function memory(): TextStore {
  const texts = new Map<string, string>();
  return {
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => {
      texts.set(key, text);
    },
  };
}

it('gives back the texts that were kept, and none from a store with nothing or with something else in it', () => {
  const store = memory();
  expect(keptLessons(() => store)).toEqual([]);
  expect(keepLessons(['a', 'b'], () => store)).toBe(true);
  expect(keptLessons(() => store)).toEqual(['a', 'b']);
  store.setItem('sidestance-lessons', '{"a":1}');
  expect(keptLessons(() => store)).toEqual([]);
  store.setItem('sidestance-lessons', '["a",');
  expect(keptLessons(() => store)).toEqual([]);
});

it('says that nothing is kept where the browser keeps nothing or is full', () => {
  const blocked = (): TextStore => {
    throw new Error('blocked');
  };
  const full: TextStore = {
    ...memory(),
    setItem: () => {
      throw new Error('full');
    },
  };
  expect(keptLessons(blocked)).toEqual([]);
  expect(keepLessons(['a'], blocked)).toBe(false);
  expect(keepLessons(['a'], () => full)).toBe(false);
});
