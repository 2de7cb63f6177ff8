/** Holds that the program has nothing that only tests use. */
import { describe, expect, it } from 'vitest';
import { namesOf } from './declarations.ts';
import { onlyTestsUse } from './only-tests-use.ts';
import { filesBelow, isCode, textOf } from './source-files.ts';

/**
 * What nothing imports: the page's own script, the commands of package.json, what a command or the build loads by its path, and the
 * schemas that the project publishes, which a test keeps up to date.
 */
const ENTRIES = [
  'src/app/main.ts',
  ...Object.values((JSON.parse(textOf('package.json')) as { scripts: Record<string, string> }).scripts)
    .map((script) => /^node (src\/commands\/\S+)$/.exec(script)?.[1])
    .filter((file) => file !== undefined),
  'src/commands/licences.js',
  'src/commands/offline-build.js',
  'src/commands/plan.ts',
  'src/commands/readings.ts',
  'src/commands/measure.ts',
  'src/document/schema/bikes-json-schema.ts',
  'src/document/schema/json-schema.ts',
  'src/document/schema/lesson-json-schema.ts',
  'src/document/schema/sheet-json-schema.ts',
];

it('R15: everything exported under src is used by the program, not by tests alone', () => {
  const files = filesBelow('src').filter((file) => isCode(file) && !file.endsWith('.test.ts'));
  const texts = new Map(files.map((file) => [file, textOf(file)]));
  expect(ENTRIES.length).toBeGreaterThan(5);
  expect(ENTRIES.filter((file) => !texts.has(file))).toEqual([]);
  expect(onlyTestsUse(texts, ENTRIES)).toEqual([]);
});

describe('the finder of what only tests use', () => {
  const found = (files: Readonly<Record<string, string>>) =>
    onlyTestsUse(new Map(Object.entries(files)), ['main.ts']);

  it('finds an export that nobody takes, and those that only it uses', () => {
    expect(
      found({
        'main.ts': "import { a } from './x.ts'; a();",
        'x.ts': "import { f } from './y.ts'; export function a() {} export function b() { return f(); }",
        'y.ts': 'export function f() { return g; } export const g = 1;',
      }),
    ).toEqual(['x.ts: b', 'y.ts: f', 'y.ts: g']);
  });

  it('passes an export that its own file uses', () => {
    const x = 'export interface A { b: B } export type B = 1; export function f(a: A) { return a; }';
    expect(found({ 'main.ts': "import { f } from './x.ts'; f(1);", 'x.ts': x })).toEqual([]);
  });

  it('does not take a member of the same name for a use', () => {
    const x = 'export const a = 1; export const f = (o) => o.a + { a: 2 }.a;';
    expect(found({ 'main.ts': "import { f } from './x.ts'; f();", 'x.ts': x })).toEqual(['x.ts: a']);
  });

  it('counts what a dynamic import, an import of all, a worker and a component take', () => {
    const x = 'export const a = 1;';
    for (const use of [
      "await import('./x.ts');",
      "import * as x from './x.ts'; x.a;",
      "new Worker(new URL('./x.ts', import.meta.url));",
      "export { a } from './x.ts';",
    ])
      expect(found({ 'main.ts': use, 'x.ts': x })).toEqual([]);
    const component = '<!-- C. -->\n<script lang="ts">import { a } from \'./x.ts\';</script>\n<p>{a}</p>';
    expect(found({ 'main.ts': "import C from './C.svelte'; C;", 'C.svelte': component, 'x.ts': x })).toEqual(
      [],
    );
  });

  it('finds what only a component uses that nothing shows', () => {
    const component = '<script lang="ts">import { a } from \'./x.ts\';</script>';
    expect(found({ 'main.ts': '1;', 'C.svelte': component, 'x.ts': 'export const a = 1;' })).toEqual([
      'x.ts: a',
    ]);
  });
});

it('reads every form of export and import', () => {
  const { exported, imported } = namesOf(
    'x.ts',
    `import a, { b as c } from './a.ts';
    export function d() {}
    export class E {}
    export interface F {}
    export const { g, h: [i] } = c;
    const j = 1;
    export { j as k };
    export { l } from './l.ts';
    export enum M {}
    export default a;`,
  );
  expect([...exported.keys()]).toEqual(['d', 'E', 'F', 'g', 'i', 'k', 'l', 'M', 'default']);
  expect([...imported.values()].map(({ specifier, name }) => `${specifier} ${name}`)).toEqual([
    './a.ts default',
    './a.ts b',
    './l.ts l',
  ]);
});
