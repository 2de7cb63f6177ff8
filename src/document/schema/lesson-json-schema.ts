/** The published description of a lesson's file, as JSON Schema, with the adjusters and ride states that a step may name. */
import { ADJUSTERS } from '../../core/adjusters/all-adjusters.ts';
import { RIDE_STATES } from '../../core/riding/states/all-ride-states.ts';
import {
  LARGEST_TURN,
  LESSON_FORMAT,
  LESSON_SCHEMA,
  MOST_MINUTES,
  MOST_NOTES,
  MOST_SHOWN,
  MOST_STEPS,
  MOST_TURNS,
} from '../../lessons/lesson-file.ts';
import { LONGEST_ABOUT, LONGEST_NAME } from '../fields/bounds.ts';
import type { JsonObject } from '../json/json.ts';

const name = (description: string): JsonObject => ({
  description,
  type: 'string',
  minLength: 1,
  maxLength: LONGEST_NAME,
});
const text = (description: string): JsonObject => ({ description, type: 'string', maxLength: LONGEST_ABOUT });

const WAYS: readonly (readonly [string, JsonObject])[] = [
  ['by', amount('By so much, in the adjuster’s metric unit.')],
  ['times', amount('To so many times what it is.')],
  ['to', amount('To this value, in the adjuster’s metric unit.')],
  ['keep', name('Until the reading of this key is back where it was.')],
];

function amount(description: string): JsonObject {
  return { description, type: 'number', minimum: -LARGEST_TURN, maximum: LARGEST_TURN };
}

function turns(description: string): JsonObject {
  const keys = ADJUSTERS.filter(({ holds }) => holds === 'number' || holds === 'wholeNumber').map(
    ({ key }) => key,
  );
  return {
    description,
    type: 'array',
    maxItems: MOST_TURNS,
    items: {
      anyOf: WAYS.map(([way, json]) => ({
        type: 'object',
        required: ['adjuster', way],
        properties: { adjuster: { description: 'What is turned.', enum: keys }, [way]: json },
      })),
    },
  };
}

const TRIAL: JsonObject = {
  act: text('What is done, without a figure.'),
  from: turns('Turned before the figure is read for the first time.'),
  turns: turns('What is turned in this step.'),
  state: { description: 'How the bike is ridden or stands.', enum: RIDE_STATES.map(({ key }) => key) },
  figure: name('The reading that is looked at, by its key as the command “readings” prints it.'),
};
const TRIAL_KEYS = ['act', 'turns', 'state', 'figure'];

/** The schema of a lesson as it is written and as it may be written by hand. */
export function lessonJsonSchema(): JsonObject {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Sidestance lesson',
    description:
      'Steps of predict, do, look and why, for any bike. No figure stands in it: each is computed on the bike it runs on.',
    type: 'object',
    required: ['format', 'schema', 'title', 'steps', 'check'],
    properties: {
      format: { description: 'Says that this is such a file.', const: LESSON_FORMAT },
      schema: { description: 'The version of this description.', const: LESSON_SCHEMA },
      title: name('What it is called.'),
      goal: text('What a person can do or explain afterwards.'),
      minutes: { description: 'How long it takes.', type: 'integer', minimum: 1, maximum: MOST_MINUTES },
      caution: text('What could hurt somebody who does this on a real bike.'),
      prepare: turns('How the bike is made ready.'),
      shows: {
        description: 'Readings beside the figure once it is looked at, by their keys.',
        type: 'array',
        maxItems: MOST_SHOWN,
        items: { type: 'string', minLength: 1, maxLength: LONGEST_NAME },
      },
      steps: {
        description: 'One after the other.',
        type: 'array',
        minItems: 1,
        maxItems: MOST_STEPS,
        items: {
          type: 'object',
          required: [...TRIAL_KEYS, 'point', 'because', 'otherwise'],
          properties: {
            ...TRIAL,
            point: {
              description: 'Which way the figure goes where the point holds; null where no way is expected.',
              enum: ['more', 'less', 'same', null],
            },
            because: text('Why, said where it went that way; always, where no way is expected.'),
            otherwise: text('What may be behind it where it went another way.'),
          },
        },
      },
      check: {
        description: 'The question at the end. Its answer is computed from the bike.',
        type: 'object',
        required: TRIAL_KEYS,
        properties: TRIAL,
      },
      notes: {
        description: 'For the trainer alone.',
        type: 'array',
        maxItems: MOST_NOTES,
        items: { type: 'string', maxLength: LONGEST_ABOUT },
      },
      asSet: {
        description: 'The bike it was made on, as in a bike’s file without its baseline.',
        $ref: 'sidestance-bike.schema.json',
      },
    },
  };
}
