/** Tests of the cells of the sprocket table. */
import { describe, expect, it } from 'vitest';
import { ANY_CHAIN, pairIn, pairsOf } from '../../../tests/support/pairs-asked.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { SPROCKET_COLUMNS, sprocketCell, type SprocketColumn } from './sprocket-columns.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;

const pairs = pairsOf({
  bike: plainBike,
  setup: plainSetup,
  ride: 'toppedOut',
  front: { least: 14, most: 16 },
  rear: { least: 42, most: 46 },
  ...ANY_CHAIN,
});

const pairOf = (front: number, rear: number) => pairIn(pairs, front, rear);

function columnOf(key: SprocketColumn['key']): SprocketColumn {
  const column = SPROCKET_COLUMNS.find((each) => each.key === key);
  if (column === undefined) throw new Error('no such column');
  return column;
}

describe('a cell of the sprocket table', () => {
  it('tells a ratio’s change in per cent, with arrow, sign and word', () => {
    const cell = sprocketCell(columnOf('ratio'), pairOf(15, 46), pairOf(15, 45), METRIC);
    expect(cell).toEqual({ figure: '3.067', change: '▲ +2.2\u00a0%', word: 'shorter', differs: true });
    expect(sprocketCell(columnOf('ratio'), pairOf(16, 45), pairOf(15, 45), METRIC)).toMatchObject({
      change: '▼ −6.2\u00a0%',
      word: 'taller',
    });
  });

  it('says "same" of one ratio in other teeth', () => {
    const cell = sprocketCell(columnOf('ratio'), pairOf(14, 42), pairOf(15, 45), METRIC);
    expect(cell).toEqual({ figure: '3.000', change: 'same', word: '', differs: false });
  });

  it('differs by what a person finds who subtracts the figures', () => {
    for (const column of SPROCKET_COLUMNS.filter(({ key }) => key !== 'ratio'))
      for (const pair of pairs) {
        const before = sprocketCell(column, pairOf(15, 45), null, METRIC);
        const { change, figure } = sprocketCell(column, pair, pairOf(15, 45), METRIC);
        const number = (text: string): number => Number(text.replace('−', '-').replace('°', ''));
        const told = change === 'same' ? 0 : number(change.split(' ')[1]);
        expect(told).toBeCloseTo(number(figure) - number(before.figure), 6);
      }
  });

  it('is a dash where there is no number, and compares nothing then', () => {
    const none = { ...pairOf(15, 46), antiSquat: null };
    expect(sprocketCell(columnOf('antiSquat'), none, pairOf(15, 45), METRIC)).toEqual({
      figure: '–',
      change: '',
      word: '',
      differs: false,
    });
  });
});
