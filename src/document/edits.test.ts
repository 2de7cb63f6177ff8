/** Tests of the edits. */
import { describe, expect, it } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import { CHAIN } from '../core/parts/drive-noun.ts';
import { ADJUSTERS, adjusterOf } from '../core/adjusters/all-adjusters.ts';
import { adjusterRange } from '../core/standing/adjuster-range.ts';
import type { BikeDocument } from './document.ts';
import { BIKE_FIELDS, bikeFieldValue, FIELD_GROUPS, nameField } from './fields/editable-fields.ts';
import {
  describeBike,
  fitSprockets,
  renameBike,
  replaceSketched,
  resetAdjusters,
  setBaseline,
  setBikeField,
  setAdjuster,
  setGearRatios,
  setTravelTable,
  type Edited,
} from './edits.ts';
import { openDocument } from './open-document.ts';
import { openJson } from './open-json.ts';
import { saveDocument } from './save-document.ts';

function start(): BikeDocument {
  const opened = openJson(plain);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value.document;
}

function done(edited: Edited): BikeDocument {
  if (!edited.ok) throw new Error(edited.reason.sentence);
  return edited.value;
}

const refusal = (edited: Edited): string | null => (edited.ok ? null : edited.reason.sentence);

describe('adjusters', () => {
  it('sets one adjuster and leaves everything else the very same', () => {
    const before = start();
    const after = done(setAdjuster(before, 'forkTubes', 5));
    expect(after.setup).toEqual({ ...before.setup, forkTubes: 5 });
    expect(after.bike).toBe(before.bike);
    expect(after.baseline).toBe(before.baseline);
    expect(before.setup.forkTubes).toBe(0);
  });

  it('reads again what is changed, and takes over the rest as the very same', () => {
    const before = start();
    const { setup } = done(setAdjuster(before, 'forkTubes', 5));
    expect(setup.frontTyre).toBe(before.setup.frontTyre);
    const { bike } = done(setBikeField(before, 'fork.travel', 110));
    expect(bike.fork.travel).toBe(110);
    expect(bike.swingarm).toBe(before.bike.swingarm);
    expect(bike.fork.ends).toBe(before.bike.fork.ends);
  });

  it('keeps no sign of a zero', () => {
    const zero = done(setAdjuster(start(), 'forkTubes', 0));
    expect(Object.is(done(setAdjuster(zero, 'forkTubes', -0)).setup.forkTubes, 0)).toBe(true);
  });

  it('sets a tyre', () => {
    expect(done(setAdjuster(start(), 'rearTyre', { diameter: 640 })).setup.rearTyre).toEqual({
      diameter: 640,
    });
  });

  it.each([
    'acceleration',
    'engineDeceleration',
    'closedBraking',
    'braking',
    'cornerAcceleration',
    'cornerEngineDeceleration',
    'cornerBraking',
  ] as const)('takes no %s below zero, and offers none', (key) => {
    const document = start();
    expect(setAdjuster(document, key, -0.12).ok).toBe(false);
    expect(adjusterRange(adjusterOf(key), document.bike, document.setup).least).toBe(0);
  });

  it('refuses what no file may hold, naming the adjuster', () => {
    const document = start();
    expect(refusal(setAdjuster(document, 'forkTubes', Number.NaN))).toContain(
      'The adjuster “Fork tubes above clamp [yoke]” is NaN but must be',
    );
    expect(refusal(setAdjuster(document, 'riderMass', -1))).toBe(
      'The adjuster “Rider weight” is -1 but must be a number from 0 to 100000.',
    );
    expect(refusal(setAdjuster(document, 'frontTeeth', 15.5))).toContain('a whole number');
    expect(refusal(setAdjuster(document, 'frontTyre', { diameter: Infinity }))).toContain('Front tyre');
  });

  it('accepts the whole range of every adjuster', () => {
    const document = start();
    for (const adjuster of ADJUSTERS) {
      if (!('range' in adjuster)) continue;
      const { least, most } = adjusterRange(adjuster, document.bike, document.setup);
      for (const value of [least, most])
        expect(refusal(setAdjuster(document, adjuster.key, value))).toBeNull();
    }
  });

  it('saves an adjuster for every adjuster there is', () => {
    expect(Object.keys(start().setup)).toEqual(ADJUSTERS.map(({ key }) => key));
  });

  it('puts all adjusters back to the baseline at once', () => {
    const document = done(setAdjuster(done(setAdjuster(start(), 'forkTubes', 5)), 'shockLength', 3));
    expect(resetAdjusters(document).setup).toBe(document.baseline.setup);
  });
});

describe('the bike', () => {
  it('takes over the bike and setup that a moved point made, and refuses what is not finite', () => {
    const document = start();
    const bike = { ...document.bike, fork: { ...document.bike.fork, length: 700 } };
    const setup = { ...document.setup, rearTyre: { diameter: 640 } };
    const after = done(replaceSketched(document, bike, setup));
    expect([after.bike, after.setup]).toEqual([bike, setup]);
    const broken = { ...bike, fork: { ...bike.fork, length: Number.POSITIVE_INFINITY } };
    expect(refusal(replaceSketched(document, broken, setup))).toContain('fork length is Infinity');
    expect(refusal(replaceSketched(document, bike, { ...setup, clampOffset: Number.NaN }))).toContain('NaN');
  });

  it('becomes the baseline', () => {
    const document = setBaseline(done(setAdjuster(start(), 'forkTubes', 5)));
    expect(document.baseline).toEqual({ bike: document.bike, setup: document.setup });
  });

  it('is renamed and described', () => {
    const document = done(describeBike(done(renameBike(start(), 'Mine')), 'Second owner.'));
    expect([document.bike.name, document.bike.about]).toEqual(['Mine', 'Second owner.']);
    expect(refusal(renameBike(start(), 'x'.repeat(201)))).toContain('at most 200 characters');
  });

  it('takes a travel table of two rows or more', () => {
    const rows = [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 100, shockStroke: 45 },
    ];
    expect(done(setTravelTable(start(), rows)).bike.swingarm.travelTable).toEqual(rows);
    expect(refusal(setTravelTable(start(), rows.slice(1)))).toContain('2 to 200 rows');
    const within = rows.map((row) => ({ ...row, wheelTravelPlusMinus: 1, shockStrokePlusMinus: 0.5 }));
    expect(done(setTravelTable(start(), within)).bike.swingarm.travelTable).toEqual(within);
    const wrong = rows.map((row) => ({ ...row, shockStrokePlusMinus: -1 }));
    expect(refusal(setTravelTable(start(), wrong))).toContain('a ± of neither below 0');
  });
});

describe('the list of editable fields', () => {
  it('has a label, a group and help for each, and no two with one label in one group', () => {
    const labels = BIKE_FIELDS.map((field) => `${field.group}: ${nameField(field, CHAIN).label}`);
    expect(new Set(labels).size).toBe(labels.length);
    for (const field of BIKE_FIELDS) {
      const { group } = field;
      expect(nameField(field, CHAIN).help.length).toBeGreaterThan(3);
      expect(FIELD_GROUPS.some(({ key }) => key === group)).toBe(true);
    }
  });

  it('has every number of a bike', () => {
    const numbers: string[] = [];
    const walk = (value: unknown, path: string): void => {
      // Links are drawn, and springs and air have a panel: each kind of them has other fields.
      if (['swingarm.links', 'fork.support', 'fork.otherLeg', 'shock.support'].includes(path)) return;
      if (typeof value === 'number' || value === null) numbers.push(path);
      else if (typeof value === 'object' && !Array.isArray(value))
        Object.entries(value).forEach(([key, each]) => walk(each, path === '' ? key : `${path}.${key}`));
    };
    walk(start().bike, '');
    expect(BIKE_FIELDS.map((field) => field.path).sort()).toEqual(numbers.sort());
  });

  it('sets each of them by its path, changing that number alone, and it can be saved', () => {
    const before = start();
    for (const field of BIKE_FIELDS) {
      const wanted = (bikeFieldValue(before.bike, field) ?? 10) + 1;
      const value = wanted > field.bounds.most ? wanted - 2 : wanted;
      const after = done(setBikeField(before, field.path, value));
      expect(bikeFieldValue(after.bike, field), field.path).toBe(value);
      const others = BIKE_FIELDS.filter((each) => each !== field);
      expect(others.map((each) => bikeFieldValue(after.bike, each))).toEqual(
        others.map((each) => bikeFieldValue(before.bike, each)),
      );
      expect(openDocument(saveDocument(after))).toEqual({
        ok: true,
        value: { document: after, repairs: [] },
      });
    }
  });

  it('empties a field that may be empty, and no other', () => {
    const threadless = done(setBikeField(start(), 'swingarm.shockThread', null));
    expect(threadless.bike.swingarm.shockThread).toBeNull();
    expect(refusal(setBikeField(start(), 'fork.length', null))).toContain('fork length is null');
  });

  it('refuses a path that leads nowhere, also one through a prototype', () => {
    for (const path of ['', 'fork', 'fork.colour', 'fork.length.x', '__proto__.x', 'fork.constructor'])
      expect(refusal(setBikeField(start(), path, 1)), path).not.toBeNull();
    expect(refusal(setBikeField(start(), 'fork.colour', 1))).toBe('A bike has no field fork.colour.');
  });
});

describe('sprockets', () => {
  const pair = { frontTeeth: 16, rearTeeth: 43, links: 111, axlePosition: 7.25 };

  it('are fitted together with their axle place, and nothing else changes', () => {
    const before = start();
    const after = done(fitSprockets(before, pair));
    expect(after.setup).toEqual({ ...before.setup, frontTeeth: 16, rearTeeth: 43, axlePosition: 7.25 });
    expect(after.bike).toBe(before.bike);
    expect(after.baseline).toBe(before.baseline);
  });

  it('bring their chain to a bike that has one, with a half link where its links are odd', () => {
    const onChain = done(setAdjuster(start(), 'chainLinks', 112));
    expect(onChain.bike.drive.halfLink).toBe(false);
    const even = done(fitSprockets(onChain, { ...pair, links: 110 }));
    expect(even.setup.chainLinks).toBe(110);
    expect(even.bike).toBe(onChain.bike);
    const odd = done(fitSprockets(onChain, pair));
    expect(odd.setup.chainLinks).toBe(111);
    expect(odd.bike.drive.halfLink).toBe(true);
  });

  it('are refused with teeth that no file may hold', () => {
    expect(refusal(fitSprockets(start(), { ...pair, rearTeeth: 43.5 }))).toContain('Rear sprocket');
  });
});

describe('gearbox ratios', () => {
  it('are set as a list, and refused beyond any gearbox', () => {
    expect(done(setGearRatios(start(), [2.6, 1.9])).bike.drive.gearRatios).toEqual([2.6, 1.9]);
    expect(refusal(setGearRatios(start(), [0.01]))).toContain('gear ratios');
  });
});
