/** Opens the sheets and files of several bikes as each schema wrote them: frozen, never written anew once a schema is released. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openBikes, saveBikes } from '../../src/document/bikes-file.ts';
import { openSheet } from '../../src/document/open-sheet.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';

const frozen = (name: string): string =>
  readFileSync(new URL(`../../fixtures/sheets/${name}`, import.meta.url), 'utf8');

it('a sheet of schema 1 opens without a repair and is the same once saved and opened again', () => {
  const text = frozen('v1/hill-road.json');
  const opened = openSheet(text);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  const { sheet, repairs } = opened.value;
  expect(repairs).toEqual([]);
  expect(sheet).toMatchObject({
    day: '2026-05-02',
    notes: { title: 'After the spring', felt: 'quicker, calm after the first corner', forkRebound: '12' },
    further: [{ name: 'Brake pads', text: 'new in front' }],
    corrections: [{ what: 'What was felt', from: 'quicker, still calm' }],
    setup: { shockLength: 3 },
  });
  expect(Object.keys(sheet.readings)).toEqual(['riderUp']);
  expect(openSheet(saveSheet(sheet))).toEqual({ ok: true, value: { sheet, repairs: [] } });
});

it('a file of two bikes of schema 1 opens without a report and is the same once saved and opened again', () => {
  const text = frozen('v1/two-bikes.json');
  const opened = openBikes(text);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  const { bikes, report } = opened.value;
  expect(report).toEqual([]);
  expect(bikes.map(({ card, sheets }) => [card.archived, sheets.length])).toEqual([
    [false, 1],
    [true, 0],
  ]);
  expect(openBikes(saveBikes(bikes, 0))).toEqual({ ok: true, value: { bikes, lessons: [], report: [] } });
});
