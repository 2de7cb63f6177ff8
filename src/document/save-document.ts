/** Saving a bike: a document to the text of its file. */
import { BIKE_PART } from './fields/bike-fields.ts';
import type { BikeDocument, BikeWithSetup } from './document.ts';
import { anyPart, type AnyField } from './fields/field.ts';
import { isJsonObject } from './json/json.ts';
import type { KeptMeasure } from './measure.ts';
import { SETUP_PART } from './fields/setup-fields.ts';

/** A document as JSON, always with the same order of fields. */
export function documentJson({ format, schema, bike, setup, baseline, measure }: BikeDocument): object {
  const { name } = baseline;
  const named = name === undefined ? {} : { name };
  return {
    format,
    schema,
    ...orderedBike({ bike, setup }),
    baseline: { ...named, ...orderedBike(baseline) },
    ...(measure !== undefined && { measure: orderedMeasure(measure) }),
  };
}

/** The text of a document: JSON for people to read, ending with a line end. */
export function saveDocument(document: BikeDocument): string {
  return `${JSON.stringify(documentJson(document), null, 2)}\n`;
}

/** Bike and setup with their fields in the order of a file. */
export function orderedBike({ bike, setup }: BikeWithSetup): object {
  return { bike: inOrder(anyPart(BIKE_PART), bike), setup: inOrder(anyPart(SETUP_PART), setup) };
}

function orderedMeasure({ gaugeZeroed, setup, ...rest }: KeptMeasure): object {
  return { gaugeZeroed, setup: inOrder(anyPart(SETUP_PART), setup), ...rest };
}

function inOrder(field: AnyField, value: unknown): unknown {
  if (field.kind === 'leaf' || !isJsonObject(value)) return value;
  return Object.fromEntries(
    Object.entries(field.fields).map(([key, each]) => [key, inOrder(each, value[key])]),
  );
}
