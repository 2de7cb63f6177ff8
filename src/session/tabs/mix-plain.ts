/** What lies between two pieces of plain data: numbers part of the way, everything else of the nearer one. */

/** `part` 0 gives `from`, 1 gives `to`. Data of another shape is taken whole from the nearer end. */
export function mixPlain<Data>(from: Data, to: Data, part: number): Data;
export function mixPlain(from: unknown, to: unknown, part: number): unknown {
  if (Object.is(from, to)) return to;
  if (typeof from === 'number' && typeof to === 'number') return from + part * (to - from);
  if (Array.isArray(from) && Array.isArray(to) && from.length === to.length)
    return from.map((each: unknown, i) => mixPlain<unknown>(each, to[i], part));
  if (isRecord(from) && isRecord(to) && sameKeys(from, to))
    return Object.fromEntries(Object.keys(to).map((key) => [key, mixPlain(from[key], to[key], part)]));
  return part < 0.5 ? from : to;
}

function isRecord(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function sameKeys(a: object, b: object): boolean {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => key in b);
}
