/** Saving a setup sheet: to the text of its file. */
import { FORMAT, SCHEMA } from './document.ts';
import { orderedBike } from './save-document.ts';
import type { JsonObject } from './json/json.ts';
import type { Sheet } from './sheet.ts';

/** A sheet as JSON, always with the same order of fields. Its bike stands in it as a bike's file does, without a baseline. */
export function sheetJson(sheet: Sheet): JsonObject {
  const { format, schema, day, madeAt, notes, further, readings, u, corrections } = sheet;
  const asSet = { format: FORMAT, schema: SCHEMA, ...orderedBike(sheet) };
  // Made of plain data alone, as the types of a sheet say.
  return {
    format,
    schema,
    day,
    madeAt,
    notes,
    further,
    readings,
    ...(u !== undefined && { u }),
    corrections,
    asSet,
  } as unknown as JsonObject;
}

export function saveSheet(sheet: Sheet): string {
  return `${JSON.stringify(sheetJson(sheet), null, 2)}\n`;
}
