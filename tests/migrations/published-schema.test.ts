/** Holds the published description of the file format against the fields it is made from, and against the fixtures. */
import { readFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';
import { expect, it } from 'vitest';
import { bikesJsonSchema } from '../../src/document/schema/bikes-json-schema.ts';
import { documentJsonSchema } from '../../src/document/schema/json-schema.ts';
import { measureJsonSchema } from '../../src/commands/measure-schema.ts';
import { saveBikes } from '../../src/document/bikes-file.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { NOTES } from '../../src/document/sheet-notes.ts';
import { correctNote, newSheet } from '../../src/document/sheet.ts';
import { lessonJsonSchema } from '../../src/document/schema/lesson-json-schema.ts';
import { sheetJsonSchema } from '../../src/document/schema/sheet-json-schema.ts';
import { LESSONS } from '../../src/lessons/all-lessons.ts';
import { saveLesson } from '../../src/lessons/save-lesson.ts';
import { publishedSchema, schemaFaults } from '../support/schema-faults.ts';

const PUBLISHED = [
  { file: new URL('../../static/sidestance-bike.schema.json', import.meta.url), made: documentJsonSchema },
  { file: new URL('../../static/sidestance-sheet.schema.json', import.meta.url), made: sheetJsonSchema },
  { file: new URL('../../static/sidestance-bikes.schema.json', import.meta.url), made: bikesJsonSchema },
  { file: new URL('../../static/sidestance-lesson.schema.json', import.meta.url), made: lessonJsonSchema },
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

const frozen = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../fixtures/${path}`, import.meta.url), 'utf8'));

it('what the program writes follows the published schemas: a bike, a sheet, and several bikes with theirs', () => {
  const [bike, sheet, bikes] = ['bike', 'sheet', 'bikes'].map((name) =>
    publishedSchema(`sidestance-${name}.schema.json`),
  );
  for (const document of DEMO_BIKES) {
    const made = newSheet({
      day: '2026-05-02',
      madeAt: 5,
      bike: document.bike,
      setup: document.setup,
      notes: Object.fromEntries(NOTES.map(({ key, help }) => [key, help])),
      further: [{ name: 'Brake pads', text: 'new' }],
      readings: { riderUp: { trail: 96.4 } },
    });
    const put = correctNote(made, 'felt', 'What was felt', 'calm', 6);
    const card = { owner: 'Ada', notes: 'Low seat', tags: ['track'], archived: true };
    const text = saveBikes([{ id: 'one', card, document, sheets: [{ id: 's1', sheet: put }] }], 7);
    expect(schemaFaults(JSON.parse(saveDocument(document)), bike)).toEqual([]);
    expect(schemaFaults(JSON.parse(saveSheet(put)), sheet)).toEqual([]);
    expect(schemaFaults(JSON.parse(text), bikes)).toEqual([]);
  }
});

it('the published schema of several bikes takes no file that opening one refuses, and names the place', () => {
  const schema = publishedSchema('sidestance-bikes.schema.json');
  const file = frozen('sheets/v1/two-bikes.json') as { bikes: { id: unknown; sheets: unknown }[] };
  file.bikes[0].id = 7;
  file.bikes[1].sheets = [{ id: 's', sheet: { format: 'other' } }];
  expect(schemaFaults(file, schema)).toEqual(
    expect.arrayContaining([
      '.bikes[0].id: number is not string',
      '.bikes[1].sheets[0].sheet: day is missing',
      '.bikes[1].sheets[0].sheet.format: "other" is not sidestance-sheet',
    ]),
  );
});

it('what the program writes of a lesson follows its published schema, which takes no step that opening one leaves out', () => {
  const schema = publishedSchema('sidestance-lesson.schema.json');
  const [{ bike, setup }] = DEMO_BIKES;
  for (const lesson of LESSONS)
    for (const asSet of [null, { bike, setup }])
      expect(schemaFaults(JSON.parse(saveLesson({ lesson, asSet })), schema)).toEqual([]);
  const [lesson] = LESSONS;
  const broken = JSON.parse(saveLesson({ lesson, asSet: null })) as { steps: { state: string }[] };
  broken.steps[0].state = 'flying';
  expect(schemaFaults(broken, schema)).toHaveLength(1);
});
