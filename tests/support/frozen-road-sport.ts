/** A road bike with its chain, guide and springs, frozen: tests whose figures are of this one bike stay when a demonstration bike changes. */
import file from '../../fixtures/documents/v2/road-sport.json' with { type: 'json' };
import type { BikeDocument } from '../../src/document/document.ts';
import { openJson } from '../../src/document/open-json.ts';

function opened(): BikeDocument {
  const found = openJson(file);
  if (!found.ok) throw new Error(found.reason.sentence);
  return found.value.document;
}

export const FROZEN_ROAD_SPORT: BikeDocument = opened();
