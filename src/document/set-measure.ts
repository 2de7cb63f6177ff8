/** The edit that keeps with a bike what it was measured by: apart from the others, because only measuring needs it. */
import { fail, succeed } from '../core/numeric/result.ts';
import type { BikeDocument } from './document.ts';
import type { Edited } from './edits.ts';
import type { Repair } from './fields/repair.ts';
import type { Json } from './json/json.ts';
import { measureOf, type KeptMeasure } from './measure.ts';

/** What the bike was measured by, as a file would give it back; null takes it away. */
export function setMeasure(document: BikeDocument, measure: KeptMeasure | null): Edited {
  if (measure === null) {
    const { format, schema, bike, setup, baseline } = document;
    return succeed({ format, schema, bike, setup, baseline });
  }
  const repairs: Repair[] = [];
  const read = measureOf(measure as unknown as Json, measure.setup, repairs);
  const [wrong] = repairs;
  if (read === null || wrong !== undefined)
    return fail({ path: wrong?.path ?? 'measure', sentence: wrong?.sentence ?? 'There is nothing to keep.' });
  return succeed({ ...document, measure: read });
}
