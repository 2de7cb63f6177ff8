/** Holds the published description of the file format against the fields it is made from, and against the fixtures. */
import { readFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';
import { expect, it } from 'vitest';
import { documentJsonSchema } from '../../src/document/json-schema.ts';
import { measureJsonSchema } from '../../src/commands/measure-schema.ts';
import { sheetJsonSchema } from '../../src/document/sheet-json-schema.ts';

const PUBLISHED = [
  { file: new URL('../../static/sidestance-bike.schema.json', import.meta.url), made: documentJsonSchema },
  { file: new URL('../../static/sidestance-sheet.schema.json', import.meta.url), made: sheetJsonSchema },
  { file: new URL('../../static/sidestance-measure.schema.json', import.meta.url), made: measureJsonSchema },
] as const;

it.each(PUBLISHED)(
  'the published schema is the one made from the fields: $file (run with -u to write it anew)',
  async ({ file, made }) => {
    const options = await resolveConfig(file);
    const text = await format(JSON.stringify(made()), { ...options, parser: 'json' });
    await expect(text).toMatchFileSnapshot(file.pathname);
  },
);

it.each(PUBLISHED)('every field of the published schema says in words what it is: $file', ({ file }) => {
  const faults: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node !== 'object' || node === null) return;
    if ('properties' in node)
      for (const [key, each] of Object.entries(node.properties as Record<string, object>))
        if (!('$ref' in each) && !('description' in each)) faults.push(`${path}.${key}`);
    Object.entries(node).forEach(([key, each]) => walk(each, `${path}.${key}`));
  };
  walk(JSON.parse(readFileSync(file, 'utf8')), '');
  expect(faults).toEqual([]);
});
