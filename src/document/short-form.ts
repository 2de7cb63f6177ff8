/** A bike as short as its JSON gets: without photos, and without every value that opening fills in silently. */
import { fail, type Result } from '../core/numeric/result.ts';
import { FORMAT, SCHEMA, type Baseline, type BikeDocument, type BikeWithSetup } from './document.ts';
import { BIKE_PART } from './fields/bike-fields.ts';
import { anyPart, type AnyField, type AnyPart } from './fields/field.ts';
import { SETUP_PART } from './fields/setup-fields.ts';
import { isJsonObject } from './json/json.ts';
import type { OpenReason } from './json/open-reason.ts';
import { readJson } from './json/read-json.ts';
import { ROW_DEFAULTS, type KeptMeasure } from './measure.ts';
import { openJson, type Opened } from './open-json.ts';
import { sameValue } from './same-document.ts';

/** The longest short form that is opened, in characters; a bike takes three thousand, its rows a little more. */
export const LONGEST_SHORT_FORM = 300_000;

/** The document in its short form, as JSON text; the photos that a bike was measured by are left out. */
export function shortText({ schema, bike, setup, baseline, measure }: BikeDocument): string {
  return JSON.stringify({
    schema,
    bike: shortPart(anyPart(BIKE_PART), bike),
    setup: shortSetup(setup),
    baseline: shortBaseline(baseline, { bike, setup }),
    measure: measure && shortMeasure(measure, setup),
  });
}

/** Opens a short form, judged as a file is. Never throws. */
export function openShortText(text: string): Result<Opened, OpenReason> {
  const json = readJson(text, LONGEST_SHORT_FORM);
  if (!json.ok) return json;
  return isJsonObject(json.value)
    ? openJson({ ...json.value, format: FORMAT })
    : fail({ kind: 'notOurs', sentence: 'What was sent is not a bike.' });
}

/** A bike with its setup and no baseline, as one value in a longer text; `openJson` takes it with the format put back. */
export function shortBike({ bike, setup }: BikeWithSetup): object {
  return { schema: SCHEMA, bike: shortPart(anyPart(BIKE_PART), bike), setup: shortSetup(setup) };
}

const shortSetup = (setup: BikeWithSetup['setup']): unknown => shortPart(anyPart(SETUP_PART), setup);

/** The fields of a part that say more than leaving them out; undefined where the whole part can be left out. */
function shortPart(part: AnyPart, value: unknown): object | undefined {
  const from: Readonly<Record<string, unknown>> = isJsonObject(value) ? value : {};
  const kept = Object.entries(part.fields)
    .map(([key, field]): [string, unknown] => [key, shortField(field, from[key])])
    .filter(([, each]) => each !== undefined);
  return kept.length === 0 && isSilent(part) ? undefined : Object.fromEntries(kept);
}

function shortField(field: AnyField, value: unknown): unknown {
  if (field.kind === 'part') return shortPart(field, value);
  const { absent } = field;
  return absent.kind === 'documented' && sameValue(absent.value, value) ? undefined : value;
}

/** Whether a file may leave the field out without a word about it. */
function isSilent(field: AnyField): boolean {
  return field.kind === 'part'
    ? Object.values(field.fields).every(isSilent)
    : field.absent.kind === 'documented';
}

/** What of the baseline differs from the bike itself; undefined where nothing does. */
function shortBaseline({ name, bike, setup }: Baseline, own: BikeWithSetup): object | undefined {
  const short = {
    ...(name !== undefined && { name }),
    ...(!sameValue(bike, own.bike) && { bike: shortPart(anyPart(BIKE_PART), bike) }),
    ...(!sameValue(setup, own.setup) && { setup: shortSetup(setup) }),
  };
  return Object.keys(short).length === 0 ? undefined : short;
}

function shortMeasure({ gaugeZeroed, setup, rows, taken }: KeptMeasure, own: BikeWithSetup['setup']): object {
  const usual = new Map<string, unknown>(Object.entries(ROW_DEFAULTS));
  return {
    ...(!gaugeZeroed && { gaugeZeroed }),
    ...(taken === true && { taken }),
    ...(!sameValue(setup, own) && { setup: shortSetup(setup) }),
    rows: rows.map((row) =>
      Object.fromEntries(
        Object.entries(row).filter(([key, value]) => !usual.has(key) || !sameValue(usual.get(key), value)),
      ),
    ),
  };
}
