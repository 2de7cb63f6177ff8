/** Tests of where the commands can run. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { unfitness } from './fitness.js';
import { root } from './install.js';

it('an old Node is named with the one that is needed, which is the one in package.json', () => {
  const manifest = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { engines: { node: string } };
  const oldest = manifest.engines.node.replace('>=', '');
  expect(unfitness(`${oldest}.0`, '/bikes/')).toBeUndefined();
  expect(unfitness('20.18.3', '/bikes/')).toBe(
    `Sidestance needs Node ${oldest} or newer, and this is 20.18.3.`,
  );
  for (const version of ['18.20.0', '20.9.0', '8.0.0'])
    expect(unfitness(version, '/bikes/')).toMatch(/^Sidestance needs/);
  for (const version of ['20.19.1', '20.100.0', '22.0.0', '100.1.0'])
    expect(unfitness(version, '/bikes/')).toBeUndefined();
});

it('a path that the build would cut off is named with its sign', () => {
  expect(unfitness('22.1.0', '/bikes/a #1/')).toBe(
    'Move the project: the path /bikes/a #1/ has a “#” in it, and the page cannot be built there.',
  );
  expect(unfitness('22.1.0', '/bikes/why?/')).toContain('“?”');
  expect(unfitness('22.1.0', '/bikes/a b (1) é/')).toBeUndefined();
});
