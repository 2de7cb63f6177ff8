/** How a person likes to see things, kept beside the bikes and never in their files. */
import * as v from 'valibot';
import { LONGEST_ABOUT } from '../document/fields/bounds.ts';
import { MOST_FURTHER } from '../document/open-sheet.ts';
import { MOST_DRAFTS } from '../document/sheet.ts';
import { LARGEST_TEXT } from '../document/json/read-json.ts';
import { LONGEST_ADDRESS, readAddress } from './link/public-address.ts';

const rates = v.pipe(v.array(v.pipe(v.number(), v.minValue(0), v.maxValue(1e4))), v.maxLength(100));

const part = v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(1)));

const names = v.pipe(v.array(v.pipe(v.string(), v.maxLength(100))), v.maxLength(200));

/** More pinned states of all bikes together than anyone keeps. */
const MOST_PINNED = 400;

const sheetDraft = v.object({
  bike: v.pipe(v.string(), v.maxLength(100)),
  day: v.pipe(v.string(), v.maxLength(20)),
  notes: v.record(v.string(), v.pipe(v.string(), v.maxLength(LONGEST_ABOUT))),
  further: v.pipe(v.array(v.object({ name: v.string(), text: v.string() })), v.maxLength(MOST_FURTHER)),
});

const fields = {
  theme: v.picklist(['paper', 'garage', 'sun']),
  themeChosen: v.boolean(),
  system: v.picklist(['metric', 'inch']),
  decimal: v.picklist(['.', ',']),
  shown: names,
  align: v.picklist(['rearPatch', 'frontPatch', 'pivot']),
  band: v.pipe(v.number(), v.minValue(0), v.maxValue(100)),
  zones: v.boolean(),
  lines: v.boolean(),
  labels: v.boolean(),
  shadow: v.boolean(),
  plusMinus: v.boolean(),
  ratesFront: rates,
  ratesRear: rates,
  snapping: v.boolean(),
  sagUse: v.picklist(['road', 'track', 'offRoad']),
  openAdjusters: names,
  drawingParts: v.object({ wide: part, beside: part, narrow: part }),
  folded: names,
  rideState: v.pipe(v.string(), v.maxLength(100)),
  sheetDrafts: v.pipe(v.array(sheetDraft), v.maxLength(MOST_DRAFTS)),
  variants: v.pipe(
    v.array(
      v.object({
        bike: v.pipe(v.string(), v.maxLength(100)),
        letter: v.pipe(v.string(), v.maxLength(1)),
        text: v.pipe(v.string(), v.maxLength(LARGEST_TEXT)),
      }),
    ),
    v.maxLength(MOST_PINNED),
  ),
  sheetsSinceCopy: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  publicAddress: v.pipe(
    v.string(),
    v.maxLength(LONGEST_ADDRESS),
    v.check((address) => address === '' || readAddress(address) === address),
  ),
  /** The bike that was open last, by its id in the store. */
  lastBike: v.pipe(v.string(), v.maxLength(100)),
};

/** The former key of a preference. */
const FORMER_KEYS: Readonly<Record<string, string>> = { openAdjusters: 'openDials' };

type Fields = typeof fields;
export type StoredPreferences = { readonly [K in keyof Fields]?: v.InferOutput<Fields[K]> };

/** The usable part of whatever was stored; the page's defaults stand in for the rest. */
export function readPreferences(stored: unknown): StoredPreferences {
  if (typeof stored !== 'object' || stored === null) return {};
  const given = new Map<string, unknown>(Object.entries(stored));
  const usable = Object.entries(fields).flatMap(([key, field]) => {
    const read = v.safeParse(field, given.get(key) ?? given.get(FORMER_KEYS[key] ?? ''));
    return read.success ? [[key, read.output]] : [];
  });
  // A theme was once kept without a word of whether it was chosen; any but the first one was.
  if (!given.has('themeChosen') && (given.get('theme') === 'garage' || given.get('theme') === 'sun'))
    usable.push(['themeChosen', true]);
  // There was once one sheet being filled in, of whichever bike it was begun on last.
  const former = v.safeParse(sheetDraft, given.get('sheetDraft'));
  if (!given.has('sheetDrafts') && former.success) usable.push(['sheetDrafts', [former.output]]);
  // Each value has passed the validator of its key.
  return Object.fromEntries(usable) as StoredPreferences;
}
