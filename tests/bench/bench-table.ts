/** The table that ends every measurement: each figure with its goal, how many times as much the peer takes, and whether the goal is met. */

export interface BenchRow {
  readonly what: string;
  readonly figure: number;
  /** Such as `µs`, `kB` or `/s`. */
  readonly unit: string;
  /** At most or at least so much, in the figure's unit; without a goal the figure has no verdict. */
  readonly goal?: { readonly most: number } | { readonly least: number };
  /** Another way to the same result, measured in the same run and in the same unit. */
  readonly peer?: {
    readonly name: string;
    readonly figure: number;
    /** The least ratio of the peer's figure to ours that is the goal. */
    readonly goal?: number;
  };
}

const HEADINGS = ['what', 'figure', 'goal', 'the peer takes', 'goal is'] as const;
const GAP = '  ';

/** The lines of the table, the headings first; numbers stand under one another. */
export function benchTable(rows: readonly BenchRow[]): string[] {
  const cells = [HEADINGS, ...rows.map(cellsOf)];
  const widths = HEADINGS.map((_, column) => Math.max(...cells.map((row) => row[column].length)));
  return cells.map((row) =>
    row
      .map((cell, column) => (column === 1 ? cell.padStart(widths[column]) : cell.padEnd(widths[column])))
      .join(GAP)
      .trimEnd(),
  );
}

function cellsOf(row: BenchRow): readonly string[] {
  const { what, figure, unit, goal, peer } = row;
  const goals: string[] = [];
  if (goal !== undefined)
    goals.push('most' in goal ? `≤ ${number(goal.most)} ${unit}` : `≥ ${number(goal.least)} ${unit}`);
  if (peer?.goal !== undefined) goals.push(`peer ≥ ${number(peer.goal)} ×`);
  const ratio = peer === undefined ? '' : `${number(peer.figure / figure)} × (${peer.name})`;
  const verdict = goals.length === 0 ? '–' : isMet(row) ? 'met' : 'MISSED';
  return [what, `${number(figure)} ${unit}`, goals.join(', '), ratio, verdict];
}

/** Whether every goal of a row is met; a figure that is not a number meets none. */
export function isMet({ figure, goal, peer }: BenchRow): boolean {
  const byFigure = goal === undefined || ('most' in goal ? figure <= goal.most : figure >= goal.least);
  const byPeer = peer?.goal === undefined || peer.figure / figure >= peer.goal;
  return byFigure && byPeer;
}

/** Three digits, and no fewer than stand before the point. */
function number(value: number): string {
  const before = Math.floor(Math.log10(Math.max(Math.abs(value), 1))) + 1;
  return Number.isFinite(value) ? String(Number(value.toFixed(Math.max(0, 3 - before)))) : String(value);
}
