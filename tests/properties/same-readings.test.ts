/** Holds every reading of every kept bike, in every state, to what it was: under its present name and its former one. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readingsJson } from '../../src/commands/readings.ts';
import { openDocument } from '../../src/document/open-document.ts';

const fixtures = new URL('../../fixtures/', import.meta.url);
const textOf = (path: string): string => readFileSync(new URL(path, fixtures), 'utf8');

/** Of a state: each reading's number, null where it has none; null where the bike does not come to rest. */
type Kept = Readonly<Record<string, Readonly<Record<string, number | null>> | null>>;
const golden = JSON.parse(textOf('golden/readings.json')) as Readonly<Record<string, Kept>>;

/** States that no spring settles: their readings are the same but for the rounding of one formula written another way. */
const GIVEN_TRAVEL = ['toppedOut', 'travelByHand', 'asDialled'];
const ROUNDED = 1e-14;
/** How far a search for rest may end elsewhere, as part of the figure; below 1 it counts as one, for both. */
const SETTLED = 1e-9;

interface Printed {
  readonly states: Readonly<Record<string, Readonly<Record<string, { readonly value: number | null }>>>>;
}

function readings(path: string): Printed {
  const opened = openDocument(textOf(path));
  if (!opened.ok) throw new Error(opened.reason.sentence);
  const json = readingsJson(opened.value.document);
  if (!json.ok) throw new Error(json.reason);
  return JSON.parse(json.value) as Printed;
}

describe.each(Object.keys(golden))('%s', (path) => {
  const { states } = readings(path);

  it.each(Object.entries(golden[path]))('%s reads as it did', (state, kept) => {
    const now = states[state];
    expect(now, state).toBeDefined();
    if (kept === null) {
      expect(now).toHaveProperty('noAnswer');
      return;
    }
    const wrong = Object.entries(kept).filter(([key, was]) => {
      const is = now[key]?.value;
      if (was === null || is === null || is === undefined) return was !== is;
      const most = GIVEN_TRAVEL.includes(state) ? ROUNDED : SETTLED;
      return Math.abs(was - is) > most * Math.max(1, Math.abs(was));
    });
    expect(Object.keys(kept).length).toBeGreaterThan(40);
    expect(wrong.map(([key, was]) => `${key} was ${was}, is ${now[key]?.value}`)).toEqual([]);
  });
});
