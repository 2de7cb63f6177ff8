/** Tests of the warning about a chain without slack. */
import { expect, it } from 'vitest';
import { roadSport } from '../../../tests/support/road-sport.ts';
import { machine } from '../../core/standing/machine.ts';
import { barTightWords, withBarTight } from './bar-tight-words.ts';
import type { WarningWords } from './warning-words.ts';

const { bike, setup } = roadSport;
const metric = { system: 'metric', decimal: '.' } as const;
const plain = (text: string) => text.replace(/\s/g, ' ');

function told(chainSlack: number, leastSlack = 10): WarningWords | null {
  const made = machine(bike, { ...setup, chainSlack });
  if (!made.ok) throw new Error(made.reason);
  return barTightWords({ ...bike, drive: { ...bike.drive, leastSlack } }, made, metric);
}

it('names the slack that is set, where the chain is tight and what to set', () => {
  expect(told(30)).toBeNull();
  const words = told(10);
  if (words === null) throw new Error('no warning');
  expect(plain(words.lead)).toBe('Chain slack 10.0 mm');
  expect(plain(words.short)).toMatch(/^the chain goes bar tight\. Do not ride like this\.$/);
  expect(plain(words.text)).toMatch(
    /^Do not ride like this: the chain goes bar tight \d\d\.\d mm into the rear travel.* needs \d\d\.\d mm with/,
  );
  const wanted = Number(/needs (\d+\.\d)/.exec(plain(words.text))?.[1]);
  expect(told(wanted)).toBeNull();
});

it('stands after what is graver and before wear', () => {
  const of = (key: WarningWords['key']): WarningWords => ({ key, lead: '', text: '', short: '' });
  const own = of('chainBarTight');
  const keys = (others: readonly WarningWords['key'][]) =>
    withBarTight(others.map(of), own).map(({ key }) => key);
  expect(keys([])).toEqual(['chainBarTight']);
  expect(keys(['steepAndShort', 'chainOnGuide'])).toEqual(['steepAndShort', 'chainBarTight', 'chainOnGuide']);
  expect(keys(['tyresOverlap'])).toEqual(['tyresOverlap', 'chainBarTight']);
  expect(withBarTight([of('chainOnGuide')], null)).toEqual([of('chainOnGuide')]);
});
