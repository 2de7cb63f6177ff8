/** Holds package.json against what the built page is made of. */
import { expect, it } from 'vitest';
import { importsOf } from './imports-of.ts';
import { filesBelow, isCode, textOf } from './source-files.ts';

/** The package that a specifier names; null for a file of the project and for a module of node. */
function packageOf(specifier: string): string | null {
  if (specifier.startsWith('.') || specifier.startsWith('node:')) return null;
  return specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/');
}

it('R14: what the page is built from stands under dependencies, and nothing else does', () => {
  const shipped = filesBelow('src')
    .filter((file) => isCode(file) && !file.startsWith('src/commands/') && !/\.test\.[tj]s$/.test(file))
    .flatMap((file) => importsOf(file, textOf(file)))
    .map(({ specifier }) => packageOf(specifier))
    .filter((name) => name !== null);
  const { dependencies } = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };
  expect(shipped.length).toBeGreaterThan(0);
  expect([...new Set(shipped)].sort()).toEqual(Object.keys(dependencies));
});

it('a package is known by its first word, or by two where the first is a scope', () => {
  expect(packageOf('konva/lib/Core.js')).toBe('konva');
  expect(packageOf('@scope/name/part.js')).toBe('@scope/name');
  expect(packageOf('../core/x.ts')).toBeNull();
  expect(packageOf('node:fs')).toBeNull();
});
