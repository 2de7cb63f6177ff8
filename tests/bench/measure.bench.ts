/** How long a sheet of measurements takes, from the rows as typed to every reading with its ±. */
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import {
  asked,
  CHASSIS,
  LINKS_AND_WEIGHTS,
  normalNumbers,
  originOn,
  trueValues,
  typedRows,
} from '../support/measured-sheet.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals, ms: a sheet is fitted anew with each figure typed; a long one may be felt. */
const GOAL_MS = 30;
const LONG_GOAL_MS = 300;
/** µs in a ms. */
const US = 1000;

export default function measure(short: boolean): string[] {
  const { timed } = timer(short);
  const [start] = DEMO_BIKES;
  const origin = originOn(start);
  const truth = trueValues(origin, 3, 3);
  const noise = normalNumbers(5);
  const chassis = [...CHASSIS, asked('exposedTube'), asked('exposedTube', [], 'bothHanging')];
  const sheets = [
    { what: '27 rows of a chassis', rows: chassis, most: GOAL_MS },
    {
      what: '35 rows with a rocker’s bolts',
      rows: [...CHASSIS, ...LINKS_AND_WEIGHTS.slice(0, 10)],
      most: GOAL_MS,
    },
    { what: '500 rows', rows: Array.from({ length: 20 }, () => CHASSIS).flat(), most: LONG_GOAL_MS },
  ] as const;
  const lines = sheets.map(({ what, rows, most }): BenchRow => {
    const typed = typedRows(origin, rows, truth, noise);
    const sheet = { gaugeZeroed: true, rows: typed };
    const us = timed(() => {
      const found = measureBike({ start, sheet, wanted: null });
      if (!found.ok) throw new Error(found.reason);
      return found.agreement.chiSquare;
    });
    return { what, figure: us / US, unit: 'ms', goal: { most } };
  });
  return benchTable(lines);
}
