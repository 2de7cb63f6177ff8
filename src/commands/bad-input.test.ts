/** What cannot be, in a file: it opens or is repaired in words, and each command says what is wrong and what to change. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BAD_INPUTS, REFUSED_INPUTS } from '../../tests/support/bad-inputs.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import type { BikeDocument } from '../document/document.ts';
import { openDocument } from '../document/open-document.ts';
import { documentJson, saveDocument } from '../document/save-document.ts';
import { planCommand } from './plan.ts';
import { readingsCommand } from './readings.ts';

const [road] = DEMO_BIKES;
const temporary = mkdtempSync(join(tmpdir(), 'sidestance-bad-input-'));
afterAll(() => rmSync(temporary, { recursive: true }));

let files = 0;
function written(text: string): string {
  const file = join(temporary, `${(files += 1)}.json`);
  writeFileSync(file, text);
  return file;
}

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

interface Printed {
  readonly states: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

describe.each(BAD_INPUTS)('$name', ({ good, edit, wrong, advice, hangs }) => {
  const edited = edit(good);
  if (!edited.ok) throw new Error(edited.reason.sentence);
  const bad: BikeDocument = edited.value;

  it('opens from its file as it was saved, with nothing repaired in silence', () => {
    const found = openDocument(saveDocument(bad));
    if (!found.ok) throw new Error(found.reason.sentence);
    expect(found.value.document).toEqual(bad);
    expect(found.value.repairs).toEqual([]);
  });

  it('is said by the readings command with its reason and what to change', () => {
    const { code, out, err } = readingsCommand([written(saveDocument(bad))]);
    expect(code).toBe(hangs ? 0 : 1);
    if (!hangs) {
      expect(out).toBe('');
      expect(plain(err)).toContain(wrong);
      expect(plain(err)).toContain(advice);
      expect(err.match(/\n/g)).toHaveLength(1);
      return;
    }
    const { states } = JSON.parse(out) as Printed;
    for (const { key, springsCarry } of RIDE_STATES) {
      if (!springsCarry) {
        expect(states[key]).toHaveProperty('rake.value');
        continue;
      }
      expect(Object.keys(states[key])).toEqual(['noAnswer']);
      expect(plain(String(states[key].noAnswer))).toContain(wrong);
      expect(plain(String(states[key].noAnswer))).toContain(advice);
    }
  });

  it('is said by the plan command with its reason and what to change', async () => {
    const asked = ['--target', 'trail@riderUp=95±1', '--with', 'forkTubes=0..4'];
    const { code, out, err } = await planCommand([written(saveDocument(bad)), ...asked], () => undefined);
    // Where every combination fails alike, the search is done and says why.
    expect(code === 0 ? (JSON.parse(out) as { plans: unknown[] }).plans : []).toEqual([]);
    expect(plain(code === 0 ? out : err)).toContain(wrong);
    expect(plain(code === 0 ? out : err)).toContain(advice);
  });
});

describe.each(REFUSED_INPUTS)('$name', ({ inFile: { of, key, value }, wrong }) => {
  it('in a file is repaired, and the command says so beside its answer', () => {
    const json = JSON.parse(JSON.stringify(documentJson(road))) as {
      setup: Record<string, unknown>;
      bike: { frontWheel: Record<string, unknown> };
    };
    (of === 'setup' ? json.setup : json.bike.frontWheel)[key] = value;
    const { code, out, err } = readingsCommand([written(JSON.stringify(json))]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toHaveProperty('states');
    expect(err).toContain(String(value));
    expect(err).toContain(key);
    expect(wrong).not.toBe('');
  });
});

describe.each(REFUSED_INPUTS.filter(({ inFile }) => inFile.of === 'setup'))('$name', (refused) => {
  it('on the command line is refused in one line, with the state to use', () => {
    const { key, value } = refused.inFile;
    const { code, out, err } = readingsCommand([written(saveDocument(road)), '--set', `${key}=${value}`]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(refused.wrong);
    expect(err).toContain(refused.advice);
    expect(err.match(/\n/g)).toHaveLength(1);
  });
});
