/** Holds JSON against the published schemas by the rules of JSON Schema that they use; any other rule is an error. */
import { readFileSync } from 'node:fs';

type Schema = Readonly<Record<string, unknown>>;
type Check = (given: unknown, rule: unknown, at: Place) => readonly string[];

interface Place {
  /** The whole schema that the rule stands in, for references within it. */
  readonly root: Schema;
  readonly path: string;
  /** The schema whose rule is looked at. */
  readonly schema: Schema;
}

/** The published schema of this name. */
export function publishedSchema(name: string): Schema {
  return JSON.parse(readFileSync(new URL(`../../static/${name}`, import.meta.url), 'utf8')) as Schema;
}

/** What is wrong with JSON by a schema, each fault with its path; empty where it follows it. */
export function schemaFaults(given: unknown, schema: Schema): readonly string[] {
  return faultsAt(given, schema, schema, '');
}

function faultsAt(given: unknown, schema: Schema, root: Schema, path: string): readonly string[] {
  return Object.entries(schema).flatMap(([name, rule]) => {
    if (SAYS_NOTHING.includes(name)) return [];
    if (!Object.hasOwn(CHECKS, name)) throw new Error(`No check knows the rule ${name} at ${path}`);
    return CHECKS[name](given, rule, { root, path, schema });
  });
}

const SAYS_NOTHING = ['$schema', '$defs', 'title', 'description', 'default', 'format'];

const isObject = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

const typeOf = (given: unknown): string => {
  if (given === null) return 'null';
  if (Array.isArray(given)) return 'array';
  return typeof given;
};

const fault = (holds: boolean, { path }: Place, what: string): readonly string[] =>
  holds ? [] : [`${path}: ${what}`];

/** A rule that says something of numbers, texts or lists only passes over everything else. */
const bound =
  (of: (given: unknown) => number | null, holds: (size: number, limit: number) => boolean): Check =>
  (given, rule, at) => {
    const size = of(given);
    return fault(
      size === null || holds(size, Number(rule)),
      at,
      `${JSON.stringify(given)} against ${String(rule)}`,
    );
  };

const numberOf = (given: unknown): number | null => (typeof given === 'number' ? given : null);
const lettersOf = (given: unknown): number | null => (typeof given === 'string' ? [...given].length : null);
const itemsOf = (given: unknown): number | null => (Array.isArray(given) ? given.length : null);
const atLeast = (size: number, limit: number): boolean => size >= limit;
const atMost = (size: number, limit: number): boolean => size <= limit;

const CHECKS: Readonly<Record<string, Check>> = {
  type: (given, rule, at) => {
    const types = [rule].flat();
    const whole = types.includes('integer') && Number.isInteger(given);
    return fault(whole || types.includes(typeOf(given)), at, `${typeOf(given)} is not ${String(rule)}`);
  },
  const: (given, rule, at) => fault(given === rule, at, `${JSON.stringify(given)} is not ${String(rule)}`),
  enum: (given, rule, at) => fault((rule as unknown[]).includes(given), at, `${JSON.stringify(given)}`),
  minimum: bound(numberOf, atLeast),
  maximum: bound(numberOf, atMost),
  minLength: bound(lettersOf, atLeast),
  maxLength: bound(lettersOf, atMost),
  minItems: bound(itemsOf, atLeast),
  maxItems: bound(itemsOf, atMost),
  required: (given, rule, at) =>
    (rule as string[]).flatMap((key) =>
      fault(!isObject(given) || Object.hasOwn(given, key), at, `${key} is missing`),
    ),
  properties: (given, rule, { root, path }) =>
    isObject(given)
      ? Object.entries(rule as Record<string, Schema>).flatMap(([key, each]) =>
          Object.hasOwn(given, key) ? faultsAt(given[key], each, root, `${path}.${key}`) : [],
        )
      : [],
  additionalProperties: (given, rule, { root, path, schema }) =>
    isObject(given)
      ? Object.entries(given).flatMap(([key, each]) =>
          Object.hasOwn(schema.properties ?? {}, key)
            ? []
            : faultsAt(each, rule as Schema, root, `${path}.${key}`),
        )
      : [],
  items: (given, rule, { root, path }) =>
    Array.isArray(given)
      ? given.flatMap((each, i) => faultsAt(each, rule as Schema, root, `${path}[${i}]`))
      : [],
  anyOf: (given, rule, at) => {
    const tried = (rule as Schema[]).map((each) => faultsAt(given, each, at.root, at.path));
    return tried.some((faults) => faults.length === 0) ? [] : [`${at.path}: none of ${tried.length} shapes`];
  },
  $ref: (given, rule, { root, path }) => {
    const name = String(rule);
    if (!name.startsWith('#/$defs/')) {
      const other = publishedSchema(name);
      return faultsAt(given, other, other, path);
    }
    const own = (root.$defs as Record<string, Schema>)[name.slice('#/$defs/'.length)];
    return faultsAt(given, own, root, path);
  },
};
