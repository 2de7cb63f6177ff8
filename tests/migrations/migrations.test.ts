/** Opens the frozen documents of every schema there has been. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadCase } from '../../src/core/riding/states/all-ride-states.ts';
import { SCHEMA } from '../../src/document/document.ts';
import { isJsonObject, type Json, type JsonObject } from '../../src/document/json/json.ts';
import { runMigrations, MIGRATIONS } from '../../src/document/migrations.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { saveDocument } from '../../src/document/save-document.ts';

const folder = new URL('../../fixtures/documents/', import.meta.url);
const schemas = readdirSync(folder).sort();
const files = schemas.flatMap((name) =>
  readdirSync(new URL(`${name}/`, folder)).map((file) => `${name}/${file}`),
);
const textOf = (file: string): string => readFileSync(new URL(file, folder), 'utf8');

function objectOf(file: string): JsonObject {
  const json: Json = JSON.parse(textOf(file));
  if (!isJsonObject(json)) throw new Error(`${file} is not an object`);
  return json;
}

function opened(text: string) {
  const result = openDocument(text);
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

describe('the chain of migrations', () => {
  it('has a migration from every older schema to the next, and frozen documents of every schema', () => {
    expect(MIGRATIONS.map((each) => each.from)).toEqual(Array.from({ length: SCHEMA }, (_, i) => i));
    expect(schemas).toEqual(Array.from({ length: SCHEMA + 1 }, (_, i) => `v${i}`));
  });

  it('every migration that changes anything runs on a frozen document and changes it, and the one that only added fields leaves it', () => {
    const changing = new Set<number>();
    for (const file of files) {
      const saved = objectOf(file);
      for (const { from, migrate } of MIGRATIONS) {
        const before = runMigrations(saved, Number(saved.schema), from, () => {});
        if (before.schema === from && JSON.stringify(migrate(before)) !== JSON.stringify(before))
          changing.add(from);
      }
    }
    const ONLY_MADE_ROOM = 1;
    expect([...changing].sort()).toEqual(
      MIGRATIONS.map((each) => each.from).filter((from) => from !== ONLY_MADE_ROOM),
    );
  });

  it('leaves what it is given untouched, and a document of the present schema as it is', () => {
    const old = objectOf('v0/road.json');
    runMigrations(old, 0, SCHEMA, () => {});
    expect(old).toEqual(objectOf('v0/road.json'));
    const present = objectOf('v4/road.json');
    expect(runMigrations(present, SCHEMA, SCHEMA, () => {})).toBe(present);
  });

  it('survives documents that are damaged where it works', () => {
    for (const bike of [undefined, null, 3, 'x', [], {}, { swingarm: null }, { swingarm: [1] }] as Json[])
      expect(openDocument(JSON.stringify({ ...objectOf('v0/road.json'), bike })).ok).toBe(false);
  });
});

describe('frozen documents', () => {
  it.each(files)('%s opens, saying only that it is old, and survives being saved', (file) => {
    const { document, repairs } = opened(textOf(file));
    expect(repairs.map((repair) => repair.sentence)).toEqual(
      file.startsWith('v0/')
        ? [
            'The file is of an older schema (0): the swingarm’s angle was named anew, and the baseline is the bike as it was saved.',
          ]
        : [],
    );
    expect(opened(saveDocument(document))).toEqual({ document, repairs: [] });
  });

  it('a draft’s swingarm angle arrives under its present name, and its baseline is the bike itself', () => {
    const { document } = opened(textOf('v0/road.json'));
    expect(document.bike.swingarm.toppedOutAngleDeg).toBe(12);
    expect(document.baseline).toEqual({ bike: document.bike, setup: document.setup });
  });

  it('one of the present schema is written byte for byte as it was', () => {
    expect(saveDocument(opened(textOf('v4/worn-chain.json')).document)).toBe(textOf('v4/worn-chain.json'));
  });

  it('one from before fields were added gets them with neutral values, and keeps all else as it was', () => {
    const { bike } = opened(textOf('v2/road.json')).document;
    const { measuredLinks, measuredLength, wearLimit, leastSlack } = bike.drive;
    expect({ measuredLinks, measuredLength, wearLimit, leastSlack }).toEqual({
      measuredLinks: 20,
      measuredLength: null,
      wearLimit: null,
      leastSlack: 10,
    });
    for (const { ends } of [bike.fork, bike.shock]) expect(ends.mostPreload).toBeNull();
    expect(saveDocument(opened(textOf('v2/road.json')).document)).toBe(textOf('v4/road.json'));
  });

  it('adjusters under their former names arrive under the present ones with the same figures', () => {
    const { setup, baseline } = objectOf('v2/worn-chain.json') as unknown as {
      setup: Record<string, unknown>;
      baseline: { setup: Record<string, unknown> };
    };
    const { document } = opened(textOf('v2/worn-chain.json'));
    for (const [was, is] of [
      [setup, document.setup],
      [baseline.setup, document.baseline.setup],
    ] as const) {
      expect(is.forkTubes).toBe(was.forkHeight);
      expect(is.forkExtenders).toBe(was.forkExtender);
      expect(is.headAngleCupsDeg).toBe(was.headInsertDeg);
      expect(is.shockMountShim).toBe(was.topShim);
      expect(is.chainSlack).toBe(was.chainPlay);
    }
  });

  it('acceleration below zero in the corner arrives as braking of that size, on bike and baseline, and acts the same', () => {
    const { document, repairs } = opened(textOf('v3/slowing-corner.json'));
    expect(repairs).toEqual([]);
    const { setup, baseline } = document;
    expect([setup.cornerAcceleration, setup.cornerBraking]).toEqual([0, 0.25]);
    expect([baseline.setup.cornerAcceleration, baseline.setup.cornerBraking]).toEqual([0, 0.1]);
    expect(loadCase('midCorner', setup)).toMatchObject({ forces: { acceleration: -0.25 } });
  });

  it.each(['gas', 'brake'])('a saved %s below zero counts as none, and a note says so', (name) => {
    const file = objectOf('v2/road.json');
    const setup = { ...(file.setup as JsonObject), [name]: -0.12 };
    const { document, repairs } = opened(JSON.stringify({ ...file, setup }));
    const key = name === 'gas' ? 'acceleration' : 'braking';
    expect(document.setup[key]).toBe(0);
    expect(repairs.map(({ path }) => path)).toEqual([`setup.${key}`]);
    expect(repairs[0].sentence).toMatch(/is -0\.12 but must be a number from 0 to 10; taken as 0\.$/);
  });
});
