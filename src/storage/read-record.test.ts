/** Tests of reading records of the store that hold no bike, or half of one. */
import { expect, it } from 'vitest';
import { readRecord, shelfOf } from './read-record.ts';

const whole = { id: 'one', name: 'One', revision: 3, writer: 'a', savedAt: 5, text: '{}' };

it('reads a whole record as it is', () => {
  expect(readRecord(whole)).toEqual({ ok: true, value: whole });
});

it('replaces what is wrong beside the id and the text, so that the bike can be opened', () => {
  const made = { name: 'Bike without a name', revision: 0, writer: 'unknown', savedAt: 0 };
  const odd: readonly unknown[] = [undefined, null, {}, [], true, 10n, NaN, -1];
  expect(readRecord({ id: 'one', text: '{}' })).toEqual({
    ok: true,
    value: { ...made, id: 'one', text: '{}' },
  });
  for (const value of odd) {
    const record = { id: 'one', text: '{}', name: value, revision: value, writer: value, savedAt: value };
    expect(readRecord(record)).toEqual({ ok: true, value: { ...made, id: 'one', text: '{}' } });
  }
  for (const revision of ['3', 1.5, Infinity, 2 ** 60])
    expect(readRecord({ ...whole, revision })).toEqual({ ok: true, value: { ...whole, revision: 0 } });
  for (const savedAt of [8.65e15, Infinity, '5', new Date(5)])
    expect(readRecord({ ...whole, savedAt })).toEqual({ ok: true, value: { ...whole, savedAt: 0 } });
});

it('says what is wrong with a record that has no usable id or text', () => {
  const sentenceOf = (record: unknown): string => {
    const read = readRecord(record);
    return read.ok ? '' : read.reason.sentence;
  };
  for (const record of [null, undefined, 5, 'text', true, [], {}, new Map(), new Date(0), 10n])
    expect(sentenceOf(record)).toBe('A record without a name is not a bike: its id is missing.');
  const { id: _, ...withoutId } = whole;
  expect(sentenceOf(withoutId)).toBe('“One” is not a bike: its id is missing.');
  expect(sentenceOf({ ...whole, id: 5 })).toBe('“One” is not a bike: its id is the number 5.');
  expect(sentenceOf({ ...whole, id: ['one', 2] })).toBe('“One” is not a bike: its id is a list.');
  expect(sentenceOf({ ...whole, text: undefined })).toBe('“One” is not a bike: its text is missing.');
  expect(sentenceOf({ ...whole, text: null })).toBe('“One” is not a bike: its text is empty.');
  expect(sentenceOf({ ...whole, text: 7 })).toBe('“One” is not a bike: its text is the number 7.');
  expect(sentenceOf({ ...whole, text: {} })).toBe(
    '“One” is not a bike: its text is not text but of type object.',
  );
  expect(sentenceOf({ ...whole, text: 10n, name: 10n })).toBe(
    'A record without a name is not a bike: its text is not text but of type bigint.',
  );
});

it('keeps records that are not bikes apart, each under a key that stays the same', () => {
  const records = [{ id: 5 }, whole, { id: '5' }, { id: 'two', name: 'Two' }];
  const { bikes, unreadable } = shelfOf(records);
  expect(bikes).toEqual([whole]);
  const keys = unreadable.map(({ key }) => key);
  expect(new Set(keys).size).toBe(3);
  expect(shelfOf(records).unreadable.map(({ key }) => key)).toEqual(keys);
});
