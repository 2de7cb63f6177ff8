/** Holds every import under src against the table of folders. */
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findCycle } from './cycles.ts';
import { folders } from './folders.js';
import { importsOf } from './imports-of.ts';
import { judgeImport } from './judge-import.js';
import { filesBelow, isCode, textOf } from './source-files.ts';

const code = filesBelow('src')
  .filter(isCode)
  .map((file) => ({ file, imports: importsOf(file, textOf(file)) }));

describe('imports', () => {
  it('R1: every import under src is one the table of folders allows', () => {
    expect(code.length).toBeGreaterThan(0);
    const refused = code.flatMap(({ file, imports }) =>
      imports
        .map(({ specifier, typeOnly }) => judgeImport(file, specifier, typeOnly))
        .filter((reason) => reason !== undefined)
        .map((reason) => `${file}: ${reason}`),
    );
    expect(refused).toEqual([]);
  });

  it('R2: no files import one another in a ring, not even for types', () => {
    const graph = new Map(
      code.map(({ file, imports }) => [
        file,
        imports
          .filter(({ specifier }) => specifier.startsWith('.'))
          .map(({ specifier }) => posix.join(posix.dirname(file), specifier)),
      ]),
    );
    expect(findCycle(graph)).toBeUndefined();
  });

  it('the table itself has no ring of folders and names only folders it has', () => {
    const graph = new Map(folders.map((each) => [each.folder, [...each.values, ...each.types]]));
    expect(findCycle(graph)).toBeUndefined();
    expect([...graph.values()].flat().filter((name) => !graph.has(name))).toEqual([]);
  });
});

describe('the reader of imports', () => {
  it('finds type imports, re-exports, dynamic imports, import types and worker addresses', () => {
    const text = `import type { A } from './a.ts';
      import { type B } from './b.ts';
      export { c } from './c.ts';
      export type * from './d.ts';
      const e = import('./e.ts');
      type F = import('./f.ts').F;
      const g = new URL('./g.ts', import.meta.url);
      import './h.ts';
      const folder = new URL('../..', import.meta.url);`;
    expect(importsOf('x.ts', text).map((each) => each.specifier + (each.typeOnly ? ' type' : ''))).toEqual([
      './a.ts type',
      './b.ts',
      './c.ts',
      './d.ts type',
      './e.ts',
      './f.ts type',
      './g.ts',
      './h.ts',
    ]);
  });

  it('reads both script blocks of a component and not its markup', () => {
    const text = `<!-- A. -->
      <script module lang="ts">import { a } from './a.ts';</script>
      <script lang="ts">import { b } from './b.ts';</script>
      <p>import c from './c.ts'</p>`;
    expect(importsOf('x.svelte', text).map((each) => each.specifier)).toEqual(['./a.ts', './b.ts']);
  });
});

describe('the judge of imports', () => {
  const judge = (file: string, specifier: string, typeOnly = false) => judgeImport(file, specifier, typeOnly);

  it('allows what the table allows', () => {
    expect(judge('src/core/chassis/pose.ts', '../plane/point.ts')).toBeUndefined();
    expect(judge('src/ui/view/side-view.svelte', '../../render/konva/paint.ts')).toBeUndefined();
    expect(judge('src/document/bike.ts', '../core/chassis/bike.ts', true)).toBeUndefined();
    expect(judge('src/core/plane/point.test.ts', 'vitest')).toBeUndefined();
    expect(judge('src/curves/axis.ts', 'd3-scale')).toBeUndefined();
    expect(judge('src/ui/chain/a.svelte', './b.svelte')).toBeUndefined();
    expect(judge('src/ui/page/tabs.ts', '../chain/chain-panel.svelte')).toBeUndefined();
  });

  it('lets tests alone read the bikes that tests share', () => {
    expect(judge('src/core/plane/point.test.ts', '../../../tests/support/plain-bike.ts')).toBeUndefined();
    expect(judge('src/core/plane/point.ts', '../../../tests/support/plain-bike.ts')).toMatch(/no folder/);
  });

  it('lets a test alone look at the rooms of its folder, and at the folder of its room', () => {
    expect(judge('src/session/a.test.ts', './tabs/b.svelte.ts')).toBeUndefined();
    expect(judge('src/session/a.svelte.ts', './tabs/b.svelte.ts')).toMatch(
      /session may not import session\/tabs/,
    );
    expect(judge('src/core/riding/states/a.test.ts', '../stand-bike.ts')).toBeUndefined();
    expect(judge('src/core/riding/states/a.ts', '../stand-bike.ts')).toMatch(/may not import core\/riding:/);
    expect(judge('src/core/riding/states/a.test.ts', '../../readings/trail.ts')).toMatch(/may not import/);
  });

  it('refuses an upward, a sideways and an unlisted import with the reason of the folder', () => {
    expect(judge('src/core/plane/point.ts', '../chassis/pose.ts', true)).toMatch(
      /core\/plane may not import core\/chassis: plane geometry knows shapes/,
    );
    expect(judge('src/core/drive/chain.ts', '../linkage/loop.ts')).toMatch(/sibling/);
    expect(judge('src/session/sheet.svelte.ts', '../../render/konva/paint.ts')).toMatch(/without a canvas/);
    expect(judge('src/ui/chain/a.svelte', '../ride/b.svelte')).toMatch(
      /ui\/chain may not import ui\/ride: panels/,
    );
    expect(judge('src/core/drive/chain.ts', '../nowhere/x.ts')).toMatch(/no folder of the table/);
  });

  it('refuses values where only types are allowed', () => {
    expect(judge('src/document/bike.ts', '../core/chassis/pose.ts')).toMatch(/only types/);
  });

  it('refuses packages that are not the folder’s, and test packages outside tests', () => {
    expect(judge('src/ui/curves/curves-panel.svelte', 'd3-scale')).toMatch(
      /ui\/curves may not import the package d3-scale/,
    );
    expect(judge('src/core/plane/point.ts', 'vitest')).toMatch(/the package vitest/);
    expect(judge('src/core/plane/point.ts', '@salusoft89/planegcs')).toMatch(/@salusoft89\/planegcs/);
    expect(judge('src/storage/file.ts', 'node:fs')).toMatch(/no browser has/);
  });

  it('refuses a folder the table does not name and a specifier without an extension', () => {
    expect(judge('src/utils/x.ts', './y.ts')).toMatch(/does not name/);
    expect(judge('src/ui/view/A.svelte', '../session')).toMatch(/extension/);
  });
});

describe('the finder of rings', () => {
  it('returns the ring and nothing that only leads to it', () => {
    const graph = new Map([
      ['a', ['b']],
      ['b', ['c']],
      ['c', ['d', 'b']],
      ['d', []],
    ]);
    expect(findCycle(graph)).toEqual(['b', 'c']);
  });

  it('finds no ring where paths only meet again', () => {
    const graph = new Map([
      ['a', ['b', 'c']],
      ['b', ['d']],
      ['c', ['d']],
      ['d', []],
    ]);
    expect(findCycle(graph)).toBeUndefined();
  });
});
