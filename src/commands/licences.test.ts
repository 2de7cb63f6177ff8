/** Tests of the file of licences: which package a module belongs to, and that none is left out. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { licenceOf, licencesText, packageFolderOf } from './licences.js';

const place = mkdtempSync(join(tmpdir(), 'sidestance-licences-'));
afterAll(() => {
  rmSync(place, { recursive: true });
});

function addPackage(name: string, licence: string | null): string {
  const folder = join(place, 'node_modules', name);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, version: '1.2.3', license: 'MIT' }));
  if (licence !== null) writeFileSync(join(folder, 'LICENSE.md'), licence);
  return folder;
}

describe('the file of licences', () => {
  it('finds the package of a module, also one with a scope or inside another', () => {
    expect(packageFolderOf('/a/node_modules/idb/build/index.js')).toBe('/a/node_modules/idb');
    expect(packageFolderOf('/a/node_modules/@x/y/z.js?v=1')).toBe('/a/node_modules/@x/y');
    expect(packageFolderOf('/a/node_modules/x/node_modules/y/z.js')).toBe('/a/node_modules/x/node_modules/y');
    expect(packageFolderOf('/a/src/main.ts')).toBeNull();
  });

  it('has the project first and each package once, by name, with its version and its text', () => {
    const [b, a] = [addPackage('beta', 'Text of beta\r\n'), addPackage('alpha', 'Text of alpha')];
    const text = licencesText([`${b}/x.js`, `${b}/y.js`, `${a}/z.js`, '/own/main.ts'], {
      title: 'Own 1.0.0',
      text: 'Own text',
    });
    const titles = text.split('\n').filter((_, i, lines) => lines[i + 1]?.startsWith('---'));
    expect(titles).toEqual(['Own 1.0.0', 'alpha 1.2.3 (MIT)', 'beta 1.2.3 (MIT)']);
    expect(text).toContain('Text of beta\n');
    expect(text).not.toContain('\r');
  });

  it('ends the build over a package without a text', () => {
    expect(() => licenceOf(addPackage('gamma', null))).toThrow('gamma brings no text of its licence');
  });
});
