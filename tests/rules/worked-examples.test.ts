/** Holds every worked example in the core's docstrings against what the code computes. */
import { describe, expect, it } from 'vitest';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { degrees } from '../../src/core/units/convert.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { exampleBike } from '../support/example-bike.ts';
import { argumentsOf, examplesIn, halfDigit, readExample, type Example } from '../support/worked-example.ts';
import { filesBelow, root, textOf } from './source-files.ts';

const FILES = filesBelow('src/core').filter((file) => /(?<!\.test)\.ts$/.test(file));
const EXAMPLES = FILES.flatMap((file) => examplesIn(textOf(file)).map((example) => ({ ...example, file })));
/** Docstrings spell a reading as its export, which is its key. */
const READINGS_BY_KEY = new Map(READINGS.map((reading) => [reading.key, reading]));
/** What a function calls the bike that it takes. */
const A_BIKE = ['stance', 'on'];

/** What the code makes of an example, in the unit that the docstring writes. */
async function computed(example: Example, file: string): Promise<unknown> {
  const reading = READINGS_BY_KEY.get(example.of);
  if (example.parameters === null && reading !== undefined) {
    const { metric, fromCore } = QUANTITIES[reading.quantity];
    expect(example.result.unit).toBe(metric.symbol);
    const value = reading.read(exampleBike(example.given));
    return typeof value === 'number' ? fromCore(value) : value;
  }
  const exports = (await import(/* @vite-ignore */ `${root}${file}`)) as Record<string, unknown>;
  const ask = exports[example.of];
  if (typeof ask !== 'function') throw new Error(`${example.of} is neither a reading nor a function`);
  const ofBike = example.parameters?.length === 1 && A_BIKE.includes(String(example.parameters[0]));
  const found: unknown = Reflect.apply(
    ask,
    null,
    ofBike ? [exampleBike(example.given)] : argumentsOf(example),
  );
  const value = typeof found === 'object' && found !== null && 'value' in found ? found.value : found;
  return example.result.unit === '°' ? degrees(Number(value)) : value;
}

it('R13: every reading has one worked example, and every example in the core is what the code computes', () => {
  const readings = EXAMPLES.filter(({ of, parameters }) => parameters === null && READINGS_BY_KEY.has(of));
  expect(readings.map(({ of }) => of).sort()).toEqual(READINGS.map(({ key }) => key).sort());
  expect(FILES.filter((file) => /\bWorked: /.test(textOf(file)))).toEqual([]);
});

describe('a worked example', () => {
  it.each(EXAMPLES.map((example) => [`${example.file}: ${example.of}`, example] as const))(
    '%s is what the code computes, to the last digit written',
    async (_, example) => {
      const { value } = example.result;
      const found = await computed(example, example.file);
      expect(found).toEqual(expect.any(Number));
      const off = Math.abs(Number(found) - value);
      expect(off, `${Number(found)} and not ${value}`).toBeLessThanOrEqual(halfDigit(example.result));
    },
  );
});

describe('the reader of examples', () => {
  it('reads names, numbers, units and digits from a docstring, wherever its lines end', () => {
    const text = `/** Not here. */\nimport x from './x.ts';\n/**\n * Half.\n * Example: gap 3 mm,\n * turn −0.50°, front tyre 120/70-17 →\n * 1.25. Others follow.\n */\nexport function half(gap, { turn }) {}`;
    expect(examplesIn(text)).toEqual([
      {
        of: 'half',
        parameters: ['gap', ['turn']],
        given: [
          { name: 'gap', is: { value: 3, unit: 'mm', digits: 0 } },
          { name: 'turn', is: { value: -0.5, unit: '°', digits: 2 } },
          { name: 'front tyre', is: '120/70-17' },
        ],
        result: { value: 1.25, unit: '', digits: 2 },
      },
    ]);
    expect(examplesIn('/** Nothing. */\nexport const a = 1;')).toEqual([]);
  });

  it.each(['gap 3 mm', 'gap → 3', 'gap 3 furlongs → 1', 'gap 3 → 1 → 2', 'gap 3 → one'])(
    'refuses “%s”',
    (words) => {
      expect(() => readExample(words)).toThrow();
    },
  );

  it('refuses a name that is no parameter, and a word that no bike knows', () => {
    const [example] = examplesIn('/** Example: gap 3, width 4 → 7. */\nexport function f(gap) {}');
    expect(() => argumentsOf(example)).toThrow('width');
    expect(() => exampleBike([{ name: 'number of mirrors', is: { value: 2, unit: '', digits: 0 } }])).toThrow(
      'mirrors',
    );
    expect(() => exampleBike([{ name: 'wheelbase', is: { value: 55, unit: '°', digits: 0 } }])).toThrow(
      'wheelbase',
    );
  });
});
