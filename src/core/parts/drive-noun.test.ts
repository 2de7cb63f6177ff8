/** Tests of what a drive is called. */
import { expect, it } from 'vitest';
import { driveNoun, nameDrive, type DriveText } from './drive-noun.ts';

const LENGTH: DriveText = ({ Loop, units }) => `${Loop} length in ${units}`;

it('a belt is called a belt and counted in teeth', () => {
  expect(nameDrive(LENGTH, driveNoun('belt'))).toBe('Belt length in teeth');
});

it.each(['chain', 'shaft', 'hub'] as const)('a bike with %s reads the words of a chain', (kind) => {
  expect(nameDrive(LENGTH, driveNoun(kind))).toBe('Chain length in links');
});

it('a text without the drive’s nouns is the same for both', () => {
  expect(nameDrive('Wheelbase', driveNoun('belt'))).toBe(nameDrive('Wheelbase', driveNoun('chain')));
});
