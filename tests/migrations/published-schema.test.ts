/** Holds the published description of the file format against the fields it is made from, and against the fixtures. */
import { readFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';
import { expect, it } from 'vitest';
import { documentJsonSchema } from '../../src/document/json-schema.ts';

const published = new URL('../../static/sidestance-bike.schema.json', import.meta.url);

it('the published schema is the one made from the fields (run with -u to write it anew)', async () => {
  const options = await resolveConfig(published);
  const text = await format(JSON.stringify(documentJsonSchema()), { ...options, parser: 'json' });
  await expect(text).toMatchFileSnapshot(published.pathname);
});

it('every field of the published schema says in words what it is', () => {
  const faults: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node !== 'object' || node === null) return;
    if ('properties' in node)
      for (const [key, each] of Object.entries(node.properties as Record<string, object>))
        if (!('$ref' in each) && !('description' in each)) faults.push(`${path}.${key}`);
    Object.entries(node).forEach(([key, each]) => walk(each, `${path}.${key}`));
  };
  walk(JSON.parse(readFileSync(published, 'utf8')), '');
  expect(faults).toEqual([]);
});
