/** Damage to saved texts: values made odd or left out, letters cut, doubled or changed. */
import fc from 'fast-check';

/** Values that stand where another belongs. */
export const odd = fc.constantFrom<unknown>(null, true, -1, 1e300, '', 'x', [], {}, '2026-02-31', '\u202e', {
  a: 1,
});

/** The places of all values in parsed JSON, as paths. */
function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

/** The JSON with the value at a place replaced, or left out where there is nothing to replace it with. */
function replacedAt(json: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(json))
    return json.map((each, i) => (String(i) === key ? replacedAt(each, rest, by) : each));
  const entries = Object.entries(json as object).map(([name, each]): [string, unknown] => [
    name,
    name === key ? replacedAt(each, rest, by) : each,
  ]);
  return Object.fromEntries(entries.filter(([, each]) => each !== undefined));
}

/** A text with some of its values made odd or left out, or with letters cut, doubled or changed. */
export function damaged(text: string): fc.Arbitrary<string> {
  const json: unknown = JSON.parse(text);
  const places = placesIn(json);
  const values = fc
    .array(fc.tuple(fc.nat(places.length - 1), fc.oneof(odd, fc.constant(undefined))), {
      minLength: 1,
      maxLength: 4,
    })
    .map((changes) =>
      JSON.stringify(
        changes.reduce<unknown>((so, [at, by]) => replacedIfThere(so, places[at], by), json) ?? null,
      ),
    );
  const letters = fc
    .record({
      at: fc.nat(text.length),
      length: fc.nat(40),
      by: fc.constantFrom('', '"', '{', ']', '\\', '\u0000', '9'),
    })
    .map(({ at, length, by }) => text.slice(0, at) + by + text.slice(at + length));
  return fc.oneof({ weight: 3, arbitrary: values }, { weight: 1, arbitrary: letters });
}

/** An earlier change may have taken the place away. */
function replacedIfThere(json: unknown, path: readonly string[], by: unknown): unknown {
  let inner: unknown = json;
  for (const key of path.slice(0, -1)) {
    if (typeof inner !== 'object' || inner === null || !(key in inner)) return json;
    inner = (inner as Record<string, unknown>)[key];
  }
  if (path.length > 0 && (typeof inner !== 'object' || inner === null)) return json;
  return replacedAt(json, path, by);
}
