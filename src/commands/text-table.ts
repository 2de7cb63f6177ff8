/** Rows of text set as a table. */

/** Columns of even width; the last is left as it is. */
export function textTable(rows: readonly (readonly string[])[]): string {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  return rows
    .map(
      (row) =>
        `  ${row.map((cell, i) => (i === row.length - 1 ? cell : cell.padEnd(widths[i] + 2))).join('')}`,
    )
    .join('\n');
}
