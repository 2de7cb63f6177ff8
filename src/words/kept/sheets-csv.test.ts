/** Tests of the table of setup sheets: heads with units, one row a sheet, nothing that a spreadsheet would run. */
import { expect, it } from 'vitest';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import { csvText } from './csv.ts';
import { sheetsCsv, type SheetsTable } from './sheets-csv.ts';

const table: SheetsTable = {
  sheets: [
    {
      day: '2026-05-02',
      setup: { ...plainSetup, shockLength: -2.5, rearTyre: { diameter: 640 } },
      notes: { place: '=1+1', felt: 'calm, then "nervous"' },
      further: [],
      readings: { riderUp: { trail: 96.4321, rake: 24.1 } },
    },
  ],
  notes: [
    { key: 'place', label: 'Place' },
    { key: 'felt', label: 'What was felt' },
  ],
  state: 'riderUp',
  kind: 'chain',
  plusMinus: true,
};

/** The cells of one line, apart at what stands outside quotes. */
function cellsOf(line: string, separator: string): string[] {
  const cells = [''];
  let quoted = false;
  for (const letter of line) {
    if (letter === '"') quoted = !quoted;
    if (letter === separator && !quoted) cells.push('');
    else cells[cells.length - 1] += letter;
  }
  return cells;
}

function columns(text: string, separator: string): Map<string, string> {
  const [heads, row] = text.replace('\ufeff', '').split('\r\n');
  const cells = cellsOf(row, separator);
  return new Map(cellsOf(heads, separator).map((name, i) => [name, cells[i]]));
}

it('has no head twice', () => {
  const text = sheetsCsv(
    { ...table, notes: [{ key: 'frontTyre', label: 'Front tyre' }] },
    { system: 'metric', decimal: '.' },
  );
  const heads = cellsOf(text.split('\r\n')[0], ',');
  expect(heads.filter((each, i) => heads.indexOf(each) !== i)).toEqual([]);
});

it('has heads with units and a row for each sheet, in metric and in inch', () => {
  const text = sheetsCsv(table, { system: 'metric', decimal: '.' });
  expect(text.startsWith('\ufeffDay,Place,What was felt,')).toBe(true);
  const metric = columns(text, ',');
  expect(metric.get('Shock length [mm]')).toBe('-2.50000');
  expect(metric.get('Trail (rider on board) [mm]')).toBe('96.43210');
  const inch = columns(sheetsCsv(table, { system: 'inch', decimal: '.' }), ',');
  expect(Number(inch.get('Trail (rider on board) [in]'))).toBeCloseTo(96.4321 / 25.4, 6);
});

it('gives a measured reading its ± in the column behind it, and none where nothing was measured or it is not wanted', () => {
  const style = { system: 'metric', decimal: '.' } as const;
  const measured = { ...table.sheets[0], u: { riderUp: { trail: 2.5 } } };
  const both: SheetsTable = { ...table, sheets: [table.sheets[0], measured] };
  const [heads, before, after] = sheetsCsv(both, style)
    .split('\r\n')
    .map((line) => cellsOf(line, ','));
  const at = heads.indexOf('"Trail (rider on board), ± 95 % [mm]"');
  expect(heads[at - 1]).toBe('Trail (rider on board) [mm]');
  expect([before[at], after[at]]).toEqual(['', '5.00000']);
  expect(heads.filter((head) => head.includes('±'))).toHaveLength(1);
  expect(sheetsCsv({ ...both, plusMinus: false }, style)).not.toContain('±');
  expect(sheetsCsv(table, style)).not.toContain('±');
});

it('has a column for each line that the workshop added by itself', () => {
  const [sheet] = table.sheets;
  const pads = { ...sheet, further: [{ name: 'Brake pads', text: 'new' }] };
  const both = [
    { name: 'Oil', text: 'changed' },
    { name: 'Brake pads', text: '3 mm' },
  ];
  const [heads, first, second, none] = sheetsCsv(
    { ...table, sheets: [pads, { ...sheet, further: both }, sheet] },
    { system: 'metric', decimal: '.' },
  )
    .split('\r\n')
    .map((line) => cellsOf(line, ','));
  const at = heads.indexOf('What was felt') + 1;
  expect(heads.slice(at, at + 2)).toEqual(['Brake pads', 'Oil']);
  expect([first, second, none].map((line) => line.slice(at, at + 2))).toEqual([
    ['new', ''],
    ['3 mm', 'changed'],
    ['', ''],
  ]);
  expect(new Set([first, second, none].map(({ length }) => length))).toEqual(new Set([heads.length]));
});

it('marks what a spreadsheet would run as text, quotes what needs it, and leaves figures alone', () => {
  const cells = columns(sheetsCsv(table, { system: 'metric', decimal: '.' }), ',');
  expect(cells.get('Place')).toBe("'=1+1");
  expect(cells.get('What was felt')).toBe('"calm, then ""nervous"""');
  expect(csvText([['a;b', { figure: '\u22121,5' }]], { system: 'metric', decimal: ',' })).toBe(
    '"a;b";-1,5\r\n',
  );
});
