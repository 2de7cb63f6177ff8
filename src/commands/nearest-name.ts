/** The name in a list that a mistyped one is nearest to. */

/** The nearest name by the number of letters to change, add or leave out; null where the list is empty. */
export function nearestName(typed: string, names: readonly string[]): string | null {
  const low = typed.toLowerCase();
  let nearest: string | null = null;
  let least = Infinity;
  for (const name of names) {
    const apart = lettersApart(low, name.toLowerCase());
    if (apart < least) {
      least = apart;
      nearest = name;
    }
  }
  return nearest;
}

function lettersApart(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const line = [i];
    for (let j = 1; j <= b.length; j++)
      line.push(Math.min(above[j] + 1, line[j - 1] + 1, above[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)));
    above = line;
  }
  return above[b.length];
}
