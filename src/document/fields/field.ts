/** What a field of a saved bike is: its validator, its default, its words and its place in the published schema. */
import * as v from 'valibot';
import { CHAIN, type DriveNoun } from '../../core/parts/drive-noun.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import type { JsonObject } from '../json/json.ts';

/**
 * What stands in for a field that a file leaves out. `essential`: nothing, the file is refused. `documented`: the
 * value, without a note, because leaving the field out is the documented way to say it. `assumed`: the value, with a
 * note to the person who opens the file.
 */
export type Absent<T> =
  | { readonly kind: 'essential' }
  | { readonly kind: 'documented'; readonly value: T }
  | { readonly kind: 'assumed'; readonly value: T };

/** Values that hold others; their published shapes stand apart from the fields. */
export type ShapeKey = 'travelTable' | 'tyre' | 'links' | 'support' | 'otherLeg';

export interface Leaf<T> {
  readonly kind: 'leaf';
  /** Names the field to a mechanic, fit to follow "the file has no …". */
  readonly words: string;
  /** Its name in the published schema; left out where `words` will do. */
  readonly title?: string;
  /** What it is and which way it is counted. */
  readonly help: string;
  /** Its words and help for another drive; left out when they name no drive. */
  readonly ofDrive?: (drive: DriveNoun) => Described;
  /** What its number counts; null when it is not a number. */
  readonly quantity: QuantityKey | null;
  readonly validator: v.GenericSchema<unknown, T>;
  /** What a good value is, fit to follow "must be". */
  readonly expected: string;
  readonly absent: Absent<T>;
  /** What stands in, in words, where its value alone says nothing to a person. */
  readonly standsIn?: string;
  /** What a wrong value is taken as where one stands nearer than what stands in for a missing one; undefined where none does. */
  readonly nearest?: (wrong: unknown) => T | undefined;
  /** True when a wrong value must not be replaced by the one that stands in for a missing one. */
  readonly refuseWrong: boolean;
  /** Type and bounds, for the published schema. */
  readonly json: JsonObject;
  /** Its place in json-shapes.ts, of a value that holds others. */
  readonly shape?: ShapeKey;
  /** Bounds of a number, for the form that edits it. */
  readonly bounds: Bounds | null;
}

export interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  /** Whether the field may be empty: null in the file. */
  readonly mayBeNone: boolean;
}

export interface Part<T> {
  readonly kind: 'part';
  readonly words: string;
  readonly help: string;
  readonly fields: Fields<T>;
}

/** One field for each property, so that a property without one does not compile. */
export type Fields<T> = { readonly [K in keyof T]-?: Leaf<T[K]> | Part<T[K]> };

/** A field of any type, for code that walks through all of them. */
export type AnyField = Leaf<unknown> | AnyPart;
export interface AnyPart {
  readonly kind: 'part';
  readonly words: string;
  readonly help: string;
  readonly fields: Readonly<Record<string, AnyField>>;
}

export function part<T>(words: string, help: string, fields: Fields<T>): Part<T> {
  return { kind: 'part', words, help, fields };
}

/** The same part for code that walks through all fields; only the separate types of its fields are lost. */
export function anyPart<T>(typed: Part<T>): AnyPart {
  return typed as unknown as AnyPart;
}

export interface Described {
  readonly words: string;
  readonly title?: string;
  readonly help: string;
  readonly ofDrive?: (drive: DriveNoun) => Described;
}

/** Words and help with the drive's nouns in them. A file names chain and links whatever the drive. */
export function describedBy(ofDrive: (drive: DriveNoun) => Described): Described {
  return { ...ofDrive(CHAIN), ofDrive };
}

export const essential = { kind: 'essential' } as const;
export const documented = <T>(value: T): Absent<T> => ({ kind: 'documented', value });
export const assumed = <T>(value: T): Absent<T> => ({ kind: 'assumed', value });

interface NumberOptions {
  readonly least: number;
  readonly most: number;
  readonly quantity: QuantityKey;
  readonly whole?: boolean;
  /** Whether a number below the least counts as the least, and not as one that is missing. */
  readonly belowIsLeast?: boolean;
}

/** Takes the sign off a zero: files and adjusters know one zero only. */
const unsignedZero = (value: number): number => (value === 0 ? 0 : value);

function numberValidator({ least, most, whole }: NumberOptions): v.GenericSchema<unknown, number> {
  const within = v.pipe(v.number(), v.minValue(least), v.maxValue(most));
  return whole ? v.pipe(within, v.integer()) : v.pipe(within, v.transform(unsignedZero));
}

function expectedNumber({ least, most, whole }: NumberOptions): string {
  return `${whole ? 'a whole number' : 'a number'} from ${least} to ${most}`;
}

export function numberField(
  described: Described,
  absent: Absent<number>,
  options: NumberOptions,
): Leaf<number> {
  const { least, most, quantity, whole = false } = options;
  return {
    kind: 'leaf',
    ...described,
    quantity,
    validator: numberValidator(options),
    expected: expectedNumber(options),
    absent,
    ...(options.belowIsLeast && {
      nearest: (wrong: unknown) => (typeof wrong === 'number' && wrong < least ? least : undefined),
    }),
    refuseWrong: false,
    json: { type: whole ? 'integer' : 'number', minimum: least, maximum: most },
    bounds: { least, most, whole, mayBeNone: false },
  };
}

/** A number that may be missing: null in the file, or left out. */
export function numberOrNone(described: Described, options: NumberOptions): Leaf<number | null> {
  const { least, most, quantity, whole = false } = options;
  return {
    kind: 'leaf',
    ...described,
    quantity,
    validator: v.nullable(numberValidator(options)),
    expected: `${expectedNumber(options)}, or null`,
    absent: documented(null),
    refuseWrong: false,
    json: { type: [whole ? 'integer' : 'number', 'null'], minimum: least, maximum: most },
    bounds: { least, most, whole, mayBeNone: true },
  };
}

export function textField(described: Described, absent: Absent<string>, longest: number): Leaf<string> {
  return {
    kind: 'leaf',
    ...described,
    quantity: null,
    validator: v.pipe(v.string(), v.maxLength(longest)),
    expected: `text of at most ${longest} characters`,
    absent,
    refuseWrong: false,
    json: { type: 'string', maxLength: longest },
    bounds: null,
  };
}

export function flagField(described: Described, absent: Absent<boolean>): Leaf<boolean> {
  return {
    kind: 'leaf',
    ...described,
    quantity: null,
    validator: v.boolean(),
    expected: 'true or false',
    absent,
    refuseWrong: false,
    json: { type: 'boolean' },
    bounds: null,
  };
}

export function choiceField<const T extends string>(
  described: Described,
  absent: Absent<T>,
  choices: readonly [T, ...T[]],
  refuseWrong = false,
): Leaf<T> {
  const list = choices.map((choice) => `"${choice}"`);
  return {
    kind: 'leaf',
    ...described,
    quantity: null,
    validator: v.picklist(choices),
    expected: list.length === 1 ? list[0] : `one of ${list.join(', ')}`,
    absent,
    refuseWrong,
    json: { type: 'string', enum: choices },
    bounds: null,
  };
}
