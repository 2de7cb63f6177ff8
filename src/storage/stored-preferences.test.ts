/** Tests of reading stored preferences. */
import { expect, it } from 'vitest';
import { readPreferences } from './stored-preferences.ts';

it('keeps which groups of adjusters are open, even when none is, and takes nothing but a list of names', () => {
  expect(readPreferences({ openAdjusters: ['gearing', 'load'] })).toEqual({
    openAdjusters: ['gearing', 'load'],
  });
  expect(readPreferences({ openAdjusters: [] })).toEqual({ openAdjusters: [] });
  for (const odd of ['gearing', [3], { 0: 'gearing' }, null])
    expect(readPreferences({ openAdjusters: odd })).toEqual({});
});

it('takes the usable part of stored preferences and leaves out the rest', () => {
  expect(readPreferences({ theme: 'sun', decimal: ';', shown: ['rake'], lastBike: 'x', old: 1 })).toEqual({
    theme: 'sun',
    themeChosen: true,
    shown: ['rake'],
    lastBike: 'x',
  });
  for (const odd of [null, undefined, 3, 'x', []]) expect(readPreferences(odd)).toEqual({});
});

it('takes the one sheet that was once being filled in among those of all bikes', () => {
  const draft = { bike: 'a', day: '2026-05-02', notes: { felt: 'calm' }, further: [] };
  expect(readPreferences({ sheetDraft: draft })).toEqual({ sheetDrafts: [draft] });
  const other = { ...draft, bike: 'b' };
  expect(readPreferences({ sheetDraft: draft, sheetDrafts: [other] })).toEqual({ sheetDrafts: [other] });
  expect(readPreferences({ sheetDraft: null })).toEqual({});
});
