/** Tests of finding missing packages. */
import { expect, it } from 'vitest';
import { missingPackages } from './install.js';

const lock = {
  packages: {
    '': {},
    'node_modules/a': { version: '1.0.0' },
    'node_modules/other-machine': { version: '1.0.0', optional: true },
  },
};

it('nothing is missing when every package is installed in its version, whatever other machines need', () => {
  expect(missingPackages(lock, { packages: { 'node_modules/a': { version: '1.0.0' } } })).toEqual([]);
});

it('an absent package and one in another version are both missing', () => {
  expect(missingPackages(lock, { packages: {} })).toEqual(['node_modules/a']);
  expect(missingPackages(lock, { packages: { 'node_modules/a': { version: '1.0.1' } } })).toEqual([
    'node_modules/a',
  ]);
});
