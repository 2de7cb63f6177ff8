/** The saved fields of a setup, one for each dial: its validator, its default, its words and its help. */
import * as v from 'valibot';
import type { Setup } from '../core/chassis/setup.ts';
import type { Tyre } from '../core/chassis/tyre.ts';
import { angle, LARGEST_LENGTH, length, mass, placed } from './bike-fields.ts';
import { documented, essential, numberField, part, type Leaf, type Part } from './field.ts';

/** Longer than any code on a sidewall. */
const LONGEST_CODE = 60;
/** More teeth than any sprocket; whether a chain can run on them the core decides. */
const MOST_TEETH = 1000;

const teeth = { least: 1, most: MOST_TEETH, quantity: 'teeth', whole: true } as const;

const across = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(LARGEST_LENGTH));
const code = v.pipe(v.string(), v.maxLength(LONGEST_CODE));

const measured = (key: 'diameter' | 'circumference', description: string) => ({
  type: 'object',
  required: [key],
  properties: {
    [key]: { description: `${description} Unit: mm.`, type: 'number', minimum: 0, maximum: LARGEST_LENGTH },
  },
});

const tyre = (end: 'front' | 'rear'): Leaf<Tyre> => ({
  kind: 'leaf',
  words: `${end} tyre`,
  help: 'By its size code, or by its outside diameter or rolling circumference as measured.',
  quantity: null,
  validator: v.union([
    v.object({ code }),
    v.object({ diameter: across }),
    v.object({ circumference: across }),
  ]),
  expected:
    'a group with a code such as "190/55-17", or with a diameter or a circumference as a number in mm',
  absent: essential,
  refuseWrong: false,
  json: {
    anyOf: [
      {
        type: 'object',
        required: ['code'],
        properties: {
          code: {
            description: 'Size code from the sidewall, such as 190/55-17.',
            type: 'string',
            maxLength: LONGEST_CODE,
          },
        },
      },
      measured('diameter', 'Outside diameter.'),
      measured('circumference', 'Rolling circumference.'),
    ],
  },
  bounds: null,
});

export const SETUP_PART: Part<Setup> = part<Setup>('setup', 'What the dials say.', {
  forkHeight: numberField(
    { words: 'fork height', help: 'Fork tube standing out above the top clamp; more lowers the front.' },
    documented(0),
    placed,
  ),
  forkExtender: numberField(
    {
      words: 'fork extender',
      help: 'Extra length screwed onto the fork tops; more lets the front stand higher.',
    },
    documented(0),
    placed,
  ),
  shockLength: numberField(
    {
      words: 'shock length',
      help: 'Shock longer (+) or shorter (−) than as delivered, eye to eye; longer raises the rear.',
    },
    documented(0),
    placed,
  ),
  frontTeeth: numberField(
    { words: 'number of front teeth', help: 'Teeth of the countershaft sprocket.' },
    essential,
    teeth,
  ),
  rearTeeth: numberField(
    { words: 'number of rear teeth', help: 'Teeth of the rear sprocket.' },
    essential,
    teeth,
  ),
  axlePosition: numberField(
    { words: 'axle position', help: 'Rear axle back from the front end of its slot.' },
    documented(0),
    placed,
  ),
  clampOffset: numberField(
    { words: 'clamp offset', help: 'Fork legs ahead of the steering axis, square to it.' },
    essential,
    placed,
  ),
  headInsertDeg: numberField(
    { words: 'head insert', help: 'Steering axis leaned further back (+) or stood up (−) by inserts.' },
    documented(0),
    angle,
  ),
  frontTyre: tyre('front'),
  rearTyre: tyre('rear'),
  frontTravelUsed: numberField(
    { words: 'front travel used', help: 'Fork travel used along the legs, in the state “as dialled”.' },
    documented(0),
    length,
  ),
  rearTravelUsed: numberField(
    {
      words: 'rear travel used',
      help: 'Rise of the rear axle from hanging, square to the ground, in the state “as dialled”.',
    },
    documented(0),
    length,
  ),
  riderMass: numberField({ words: 'rider mass', help: 'Rider in riding gear.' }, documented(0), mass),
  riderHeight: numberField(
    { words: 'rider height', help: 'Rider’s centre of gravity above the seat mark.' },
    documented(250),
    placed,
  ),
  loadMass: numberField({ words: 'load mass', help: 'Passenger or luggage.' }, documented(0), mass),
  loadHeight: numberField(
    { words: 'load height', help: 'Load’s centre of gravity above the load mark.' },
    documented(150),
    placed,
  ),
});
