/** Tests of opening: what is refused and why, what is repaired and how that is said. */
import { countChanges } from './fields/repair.ts';
import { describe, expect, it } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import { SCHEMA } from './document.ts';
import { openDocument } from './open-document.ts';
import { openJson, type Opened } from './open-json.ts';
import type { Json, JsonObject } from './json/json.ts';

type Path = readonly string[];

/** The plain bike with one place changed; `undefined` takes the place away. */
function changed(path: Path, value: Json | undefined, from: JsonObject = plain): JsonObject {
  const [key, ...deeper] = path;
  const rest = Object.fromEntries(Object.entries(from).filter(([each]) => each !== key));
  if (deeper.length > 0) return { ...rest, [key]: changed(deeper, value, from[key] as JsonObject) };
  return value === undefined ? rest : { ...rest, [key]: value };
}

function opened(json: Json): Opened {
  const result = openJson(json);
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

const paths = (json: Json): string[] => opened(json).repairs.map((repair) => repair.path);

describe('opening a hand-written file', () => {
  it('names an unknown field in one line, whatever characters it holds', () => {
    const [repair] = opened({ ...plain, 'one\ntwo': 1 }).repairs;
    expect(repair.sentence).toBe('one\\ntwo is not used by this file format and was left out.');
  });

  it('opens one with the essential fields only, without a note about optional ones', () => {
    const { document, repairs } = opened(plain);
    expect(repairs).toEqual([]);
    expect(document.bike.frame.guideRadius).toBeNull();
    expect(document.bike.fork.legAngleDeg).toBe(0);
    expect(document.bike.drive.kind).toBe('chain');
    expect(document.setup.forkTubes).toBe(0);
    expect(document.setup.riderMass).toBe(80);
  });

  it('takes the file’s own bike and setup as baseline when it has none', () => {
    const { document } = opened(plain);
    expect(document.baseline).toEqual({ bike: document.bike, setup: document.setup });
  });

  it('takes the missing half of a baseline from the file itself', () => {
    const setup = changed(['clampOffset'], 28, plain.setup);
    const { document, repairs } = opened({ ...plain, baseline: { setup } });
    expect(repairs).toEqual([]);
    expect(document.baseline.setup.clampOffset).toBe(28);
    expect(document.baseline.bike).toEqual(document.bike);
  });

  it('says what it took for each field it had to assume', () => {
    const { document, repairs } = opened(changed(['bike', 'fork', 'travel'], undefined));
    expect(document.bike.fork.travel).toBe(120);
    expect(repairs).toEqual([
      {
        path: 'bike.fork.travel',
        sentence: 'The fork travel (bike.fork.travel) is missing; taken as 120 mm.',
        problem: 'The fork travel is missing.',
      },
    ]);
  });

  it('says it once when a whole part is missing', () => {
    const { repairs } = opened(changed(['bike', 'frame', 'sprungCentre'], undefined));
    expect(repairs.map((repair) => repair.sentence)).toEqual([
      'The sprung centre of gravity (bike.frame.sprungCentre) is missing; taken as 300 mm forward of the pivot, 200 mm above the pivot.',
    ]);
    const [shock] = opened(changed(['bike', 'drive'], 5)).repairs;
    expect(shock.sentence).toBe(
      'The drive (bike.drive) is 5, not a group of values; taken as the usual value of each of its fields.',
    );
  });

  it('accepts a byte order mark, Windows line ends and a note of the published schema', () => {
    const text = JSON.stringify({ $schema: './sidestance-bike.schema.json', ...plain }, null, 2);
    const result = openDocument(`\ufeff${text.replaceAll('\n', '\r\n')}`);
    expect(result.ok && result.value.repairs).toEqual([]);
  });
});

describe('repairing', () => {
  it.each([
    [['bike', 'fork', 'travel'], 'long', 'is "long" but must be a number from 0 to 100000; taken as 120 mm.'],
    [['bike', 'swingarm', 'slot'], -4, 'is -4 but must be a number from 0 to 100000; taken as 30 mm.'],
    [['bike', 'frame', 'sprungMass'], 1e9, 'must be a number from 0 to 100000; taken as 0 kg.'],
    [['bike', 'frame', 'guideRadius'], 'none', 'or null; taken as none.'],
    [
      ['bike', 'swingarm', 'tablePitchDeg'],
      null,
      'is null but must be a number from -180 to 180; taken as 0°.',
    ],
    [['bike', 'bodywork'], 'tank', 'must be one of "faired", "naked", "offRoad"; taken as "naked".'],
    [['bike', 'swingarm', 'travelTable'], [[0, 0]], 'taken as half a millimetre of shock for each of wheel.'],
    [
      ['bike', 'drive', 'gearRatios'],
      [99],
      'a list of at most 12 numbers from 0.1 to 20; taken as not known.',
    ],
    [['bike', 'name'], 7, 'taken as "Unnamed bike".'],
    [['setup', 'riderMass'], [80], 'is a list but must be'],
  ] as [Path, Json, string][])('replaces an impossible %j and says so', (path, value, words) => {
    const { repairs } = opened(changed(path, value));
    expect(repairs).toHaveLength(1);
    expect(repairs[0].path).toBe(path.join('.'));
    expect(repairs[0].sentence).toContain(words);
  });

  it('leaves out unknown fields and lists them wherever they stood', () => {
    const json = changed(['bike', 'fork', 'colour'], 'red', changed(['notes'], 'x'));
    expect(paths(json)).toEqual(['notes', 'bike.fork.colour']);
    expect(JSON.stringify(opened(json).document)).not.toContain('colour');
  });

  it('lists what it leaves out of a tyre stated twice and of a row with a third number', () => {
    const rows = plain.bike.swingarm.travelTable.map((row, i) => (i === 1 ? { ...row, force: 3 } : row));
    const json = changed(['bike', 'swingarm', 'travelTable'], rows);
    expect(paths(changed(['setup', 'rearTyre'], { code: '190/55-17', diameter: 640 }, json))).toEqual([
      'bike.swingarm.travelTable[1].force',
      'setup.rearTyre.diameter',
    ]);
  });

  it('sums up unknown fields beyond the first dozen', () => {
    const extra = Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`extra${i}`, i]));
    const { repairs } = opened({ ...plain, ...extra });
    expect(repairs).toHaveLength(13);
    expect(repairs[12].sentence).toBe('988 more unknown fields were left out.');
    expect(countChanges(repairs)).toBe(1000);
  });

  it('replaces a baseline that cannot be used by the file’s own bike and setup, and says why', () => {
    const { document, repairs } = opened({ ...plain, baseline: { bike: { name: 'half' }, setup: 3 } });
    expect(document.baseline).toEqual({ bike: document.bike, setup: document.setup });
    expect(repairs.map((repair) => repair.path)).toEqual(['baseline.bike', 'baseline.setup']);
    expect(repairs[0].sentence).toContain('There is no steering head, forward of the pivot');
    expect(paths({ ...plain, baseline: 'none' })).toEqual(['baseline']);
  });

  it('keeps a bike whose geometry cannot stand, because opening does not judge geometry', () => {
    expect(paths(changed(['bike', 'fork', 'length'], 10))).toEqual([]);
    expect(paths(changed(['setup', 'rearTyre'], { code: 'nonsense' }))).toEqual([]);
  });
});

describe('refusing', () => {
  const reason = (json: Json) => {
    const result = openJson(json);
    return result.ok ? null : result.reason;
  };

  it.each([
    ['steering head, forward of the pivot', ['bike', 'frame', 'steeringHead', 'x']],
    ['steering head, above the pivot', ['bike', 'frame', 'steeringHead', 'y']],
    ['steering axis angle', ['bike', 'frame', 'axisAngleDeg']],
    ['front sprocket, forward of the pivot', ['bike', 'frame', 'countershaft', 'x']],
    ['fork length', ['bike', 'fork', 'length']],
    ['swingarm length', ['bike', 'swingarm', 'length']],
    ['swingarm angle, topped out', ['bike', 'swingarm', 'toppedOutAngleDeg']],
    ['adjuster “Front sprocket”', ['setup', 'frontTeeth']],
    ['adjuster “Rear sprocket”', ['setup', 'rearTeeth']],
    ['adjuster “Triple-clamp [yoke] offset”', ['setup', 'clampOffset']],
    ['adjuster “Front tyre”', ['setup', 'frontTyre']],
    ['adjuster “Rear tyre”', ['setup', 'rearTyre']],
  ] as [string, Path][])('names the %s when it is missing, and when it is not a number', (words, path) => {
    const missing = reason(changed(path, undefined));
    expect(missing).toMatchObject({ kind: 'fieldMissing', path: path.join('.') });
    expect(missing?.sentence).toBe(`There is no ${words} (${path.join('.')}).`);
    const wrong = reason(changed(path, 'x'));
    expect(wrong).toMatchObject({ kind: 'fieldWrong', path: path.join('.') });
    expect(wrong?.sentence).toContain(`The ${words} (${path.join('.')}) is "x" but must be`);
  });

  it('names every essential field of a part that is missing as a whole', () => {
    const sentence = reason(changed(['setup'], undefined))?.sentence;
    for (const words of ['Front sprocket', 'Triple-clamp [yoke] offset', 'Rear tyre'])
      expect(sentence).toContain(words);
  });

  it('refuses a kind of drive it does not know instead of taking it for a chain', () => {
    expect(reason(changed(['bike', 'drive', 'kind'], 'pedals'))).toMatchObject({ kind: 'fieldWrong' });
  });

  it('refuses other files, unreadable schemas and newer ones', () => {
    expect(reason([])).toMatchObject({ kind: 'notOurs' });
    expect(reason({ schema: 1 })).toMatchObject({ kind: 'notOurs' });
    expect(reason({ ...plain, schema: '1' })).toMatchObject({ kind: 'schemaUnreadable' });
    expect(reason({ ...plain, schema: -1 })).toMatchObject({ kind: 'schemaUnreadable' });
    expect(reason({ ...plain, schema: SCHEMA + 1 })?.sentence).toContain('newer');
  });

  it('takes nothing from the prototype of what it reads', () => {
    const inherited: JsonObject = Object.create({ length: 740 });
    expect(reason(changed(['bike', 'fork'], inherited))).toMatchObject({ path: 'bike.fork.length' });
  });

  it('cuts a long strange value short in its sentence', () => {
    const sentence = reason(changed(['setup', 'clampOffset'], 'x'.repeat(100_000)))?.sentence ?? '';
    expect(sentence.length).toBeLessThan(200);
  });
});
