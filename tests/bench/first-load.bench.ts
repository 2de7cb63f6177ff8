/** How much JavaScript and style the page loads before its first sight and later, compressed as servers send it. */
import { builtPage } from '../support/built-page.ts';
import { scriptSizes, type ScriptSizes } from '../support/script-sizes.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals, kB (1000 bytes) of gzip: scripts before the first sight, all scripts together, and each panel that comes later. */
const GOALS_KB = { firstSight: 130, all: 180, late: 25 };

function rows({ firstSight, all, shared, late, firstStyles, allStyles }: ScriptSizes): BenchRow[] {
  const row = (what: string, figure: number, most?: number): BenchRow => ({
    what,
    figure,
    unit: 'kB',
    ...(most === undefined ? {} : { goal: { most } }),
  });
  return [
    row('styles before the first sight', firstStyles),
    row('styles of all parts', allStyles),
    row('scripts that late parts share', shared),
    ...late.map(({ name, size }) => row(`scripts of ${name}, which comes later`, size, GOALS_KB.late)),
    row('scripts before the first sight', firstSight, GOALS_KB.firstSight),
    row('scripts of all parts', all, GOALS_KB.all),
  ];
}

/** A size takes no time to measure, so the short form is the long one. */
export default async function firstLoad(): Promise<string[]> {
  const page = await builtPage();
  try {
    return benchTable(rows(scriptSizes(page)));
  } finally {
    page.remove();
  }
}
