/** Holds the numbered rules of DEVELOPERS.md against the tests that carry their numbers. */
import { expect, it } from 'vitest';
import { rulesTested, rulesTold } from './numbered-rules.ts';
import { filesBelow, textOf } from './source-files.ts';

it('R9: every numbered rule in DEVELOPERS.md has a test whose title begins with its number, and the reverse', () => {
  const told = rulesTold(textOf('DEVELOPERS.md'));
  const tests = [...filesBelow('src'), ...filesBelow('tests')].filter((file) =>
    /\.(test|spec)\.ts$/.test(file),
  );
  const tested = tests.flatMap((file) => rulesTested(textOf(file)));
  expect(told.filter((rule) => !tested.includes(rule))).toEqual([]);
  expect(tested.filter((rule) => !told.includes(rule))).toEqual([]);
  expect(told.filter((rule, index) => told.indexOf(rule) !== index)).toEqual([]);
});

it('numbers are read at the beginning of a title or a list item, and nowhere else', () => {
  expect(rulesTold('- **H3** Escape leaves.\n- **note** H4\n  - **H5** x\n**H6** y')).toEqual(['H3']);
  const text = ['(', "'H3: x'", ');'].join('');
  expect(rulesTested(`it${text} test${text} describe${text} it('the H3: x')`)).toEqual(['H3', 'H3']);
});
