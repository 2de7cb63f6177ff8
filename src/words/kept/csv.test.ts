/** Tests of rows as CSV: read again by a parser of RFC 4180, every cell is there, and none is a formula. */
import { describe, expect, it } from 'vitest';
import { FORMULAS, HOSTILE_NAMES } from '../../../tests/support/hostile-names.ts';
import { csvText } from './csv.ts';

/** The cells of a text as RFC 4180 has them; anything else stops with an error. */
function readCsv(text: string, separator: string): string[][] {
  const cell = /(?:"((?:[^"]|"")*)"|([^"\r\n]*?))(SEPARATOR|\r\n)/y;
  const pattern = new RegExp(cell.source.replace('SEPARATOR', separator), 'y');
  const rows: string[][] = [[]];
  while (pattern.lastIndex < text.length) {
    const at = pattern.lastIndex;
    const found = pattern.exec(text);
    if (found === null) throw new Error(`no cell at ${at}: ${text.slice(at, at + 40)}`);
    const [, quoted, bare, end] = found;
    rows[rows.length - 1].push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end === '\r\n') rows.push([]);
  }
  rows.pop();
  return rows;
}

describe.each([
  { decimal: '.', separator: ',' },
  { decimal: ',', separator: ';' },
] as const)('rows apart at $separator', ({ decimal, separator }) => {
  const write = (cells: readonly string[]): string =>
    csvText([cells, ['next']], { system: 'metric', decimal });

  it('hold every name as it is, in its own cell', () => {
    const names = Object.values(HOSTILE_NAMES);
    expect(names.length).toBeGreaterThan(5);
    expect(readCsv(write(names), separator)).toEqual([names, ['next']]);
  });

  it.each(FORMULAS)('mark %j as text, and keep it whole behind the mark', (formula) => {
    expect(readCsv(write(['a', formula]), separator)).toEqual([['a', `'${formula}`], ['next']]);
  });

  it('let no text fall apart where another country opens the file', () => {
    expect(write(['calm;=1+1', 'calm,=1+1', 'calm\t=1+1'])).toBe(
      ['"calm;=1+1"', '"calm,=1+1"', '"calm\t=1+1"'].join(separator) + '\r\nnext\r\n',
    );
  });
});

it('a figure keeps its sign and is no formula, because it is no text', () => {
  expect(csvText([[{ figure: '\u22121.5' }, { figure: '+2' }]], { system: 'metric', decimal: '.' })).toBe(
    '-1.5,+2\r\n',
  );
});
