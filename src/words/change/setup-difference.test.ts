/** Tests of how two setups differ, in words. */
import { expect, it } from 'vitest';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { differencesInLine, settingDifferences } from './setup-difference.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

it('names each adjuster that stands differently, with both settings, in the order of the list', () => {
  const to = {
    ...plainSetup,
    rearTeeth: plainSetup.rearTeeth + 1,
    shockLength: 3,
    rearTyre: { diameter: 640 },
  };
  const found = settingDifferences(plainSetup, to, 'chain', style);
  expect(found.map(({ key }) => key).sort()).toEqual(['rearTeeth', 'rearTyre', 'shockLength']);
  expect(plain(differencesInLine(found.filter(({ key }) => key === 'shockLength')))).toBe(
    `Shock length ${plainSetup.shockLength.toFixed(1)} mm → 3.0 mm`,
  );
  expect(plain(found.find(({ key }) => key === 'rearTyre')?.to ?? '')).toBe('640.0 mm across');
});

it('says nothing of two setups that are the same', () => {
  expect(settingDifferences(plainSetup, { ...plainSetup }, 'chain', style)).toEqual([]);
  expect(differencesInLine([])).toBe('');
});
