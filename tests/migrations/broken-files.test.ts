/** Opens every broken file the project keeps, and expects of each its refusal or its repairs. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { textOfBytes } from '../../src/document/json/file-text.ts';
import { openDocument } from '../../src/document/open-document.ts';

const folder = new URL('../../fixtures/broken/', import.meta.url);
const decode = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);

function open(bytes: Uint8Array) {
  const text = textOfBytes(bytes, decode);
  return text.ok ? openDocument(text.value) : text;
}

/** The kind of refusal, or the paths of the repairs of a file that opens all the same. */
const expected: Readonly<Record<string, string | readonly string[]>> = {
  'absurd-teeth.json': 'fieldWrong',
  'blank.json': 'empty',
  'bom.json': [],
  'broken-baseline.json': ['baseline.bike', 'baseline.setup'],
  'bytes.json': 'notText',
  'crlf.json': [],
  'cut-off.json': 'cutOff',
  'deep-in-field.json': 'tooDeep',
  'deep.json': 'tooDeep',
  'empty.json': 'empty',
  'half-tooth.json': 'fieldWrong',
  'infinite.json': 'fieldWrong',
  'latin1.json': 'notText',
  'nan-text.json': 'notJson',
  'negative-fork.json': 'fieldWrong',
  'newer.json': 'newer',
  'no-schema.json': 'schemaUnreadable',
  'no-setup.json': 'fieldMissing',
  'not-ours.json': 'notOurs',
  'null.json': 'notOurs',
  'other-text.json': 'notJson',
  'pedals.json': 'fieldWrong',
  'proto-essential.json': 'fieldMissing',
  'proto.json': ['__proto__', 'bike.__proto__', 'bike.constructor'],
  'repeated-name.json': 'repeatedName',
  'trailing-comma.json': 'notJson',
  'utf16.json': 'notText',
  'wrong-optional.json': [
    'bike.invented',
    'bike.frame.sprungCentre',
    'bike.fork.travel',
    'bike.swingarm.slot',
    'setup.riderMass',
  ],
  'wrong-types.json': 'fieldWrong',
};

it('has an expectation for every broken file and a file for every expectation', () => {
  expect(readdirSync(folder).sort()).toEqual(Object.keys(expected).sort());
});

it.each(Object.entries(expected))('%s is refused or repaired as expected', (name, outcome) => {
  const result = open(readFileSync(new URL(name, folder)));
  if (result.ok) expect(result.value.repairs.map((repair) => repair.path)).toEqual(outcome);
  else {
    expect(result.reason.kind).toBe(outcome);
    expect(result.reason.sentence).toMatch(/^[A-Z].*[.]$/);
    expect(result.reason.sentence.length).toBeLessThan(500);
  }
});

it('a file that names prototypes reaches none, and takes nothing from one', () => {
  const result = open(readFileSync(new URL('proto.json', folder)));
  if (!result.ok) throw new Error(result.reason.sentence);
  const { document } = result.value;
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  expect('polluted' in document).toBe(false);
  expect('polluted' in document.bike).toBe(false);
  expect(document.bike.bodywork).toBe('naked');
  expect(Object.getPrototypeOf(document.bike)).toBe(Object.prototype);
});

// That these end at all within the runner's own limit shows that nothing hangs; speed is for the benches.

it('50 MB are refused for their size, as bytes and as text', () => {
  const text = `"${'x'.repeat(50_000_000)}"`;
  const bytes = new Uint8Array(50_000_000);
  const results = [openDocument(text), open(bytes)];
  for (const result of results)
    expect(!result.ok && result.reason).toEqual({
      kind: 'tooLarge',
      sentence: 'The file is 50.0 MB; a bike takes a few kB, and nothing above 5.0 MB is opened.',
    });
});

it('5 MB of text made to be slow to look at is refused like any other', () => {
  const slow = [
    '{"a":"' + '\\"'.repeat(2_400_000),
    '[' + '"'.repeat(4_900_000),
    '[0' + ',0'.repeat(2_400_000),
  ];
  expect(slow.map((text) => openDocument(text).ok)).toEqual([false, false, false]);
});
