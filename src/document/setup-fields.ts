/** The saved fields of a setup, one for each adjuster: its validator, its default, its words and its help. */
import * as v from 'valibot';
import type { Setup } from '../core/adjusters/setup.ts';
import type { Tyre } from '../core/parts/tyre.ts';
import { angle, LARGEST_LENGTH, length, mass, placed, rate } from './bounds.ts';
import { documented, essential, numberField, numberOrNone, part, type Leaf, type Part } from './field.ts';

/** Longer than any code on a sidewall. */
const LONGEST_CODE = 60;
/** More teeth than any sprocket; whether a chain can run on them the core decides. */
const MOST_TEETH = 1000;

/** More links than any chain; whether they can be joined the core decides. */
const MOST_LINKS = 1000;
/** Beyond these no motorcycle is ridden, g and N. */
const acceleration = { least: -10, most: 10, quantity: 'acceleration' } as const;
const LARGEST_FORCE = 1e5;

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

export const SETUP_PART: Part<Setup> = part<Setup>('setup', 'What the adjusters say.', {
  forkTubes: numberField(
    { words: 'fork height', help: 'Fork tube standing out above the top clamp; more lowers the front.' },
    documented(0),
    placed,
  ),
  forkExtenders: numberField(
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
  shockMountShim: numberField(
    { words: 'top shim', help: 'Shim between the frame and the shock’s mount; thicker raises the rear.' },
    documented(0),
    placed,
  ),
  linkLength: numberField(
    { words: 'link rod', help: 'Rod of the rear links longer (+) or shorter (−) than as drawn.' },
    documented(0),
    placed,
  ),
  pivotForward: numberField(
    { words: 'pivot forward', help: 'Swingarm pivot moved forward (+) or back (−) by an eccentric.' },
    documented(0),
    placed,
  ),
  pivotUp: numberField(
    { words: 'pivot up', help: 'Swingarm pivot moved up (+) or down (−) by an eccentric.' },
    documented(0),
    placed,
  ),
  forkSpringRate: numberField(
    { words: 'fork spring rate', help: 'Rate of one fork spring; 0 when not known.' },
    documented(0),
    rate,
  ),
  forkPreload: numberField(
    { words: 'fork preload', help: 'How far a fork spring is pressed, topped out.' },
    documented(0),
    placed,
  ),
  shockSpringRate: numberField(
    { words: 'shock spring rate', help: 'Rate of one shock’s spring; 0 when not known.' },
    documented(0),
    rate,
  ),
  shockPreload: numberField(
    { words: 'shock preload', help: 'How far a shock’s spring is pressed, topped out.' },
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
  chainLinks: numberOrNone(
    {
      words: 'chain’s links',
      help: 'The chain on the bike: the axle stands where it puts it. None: the axle stands at its position above.',
    },
    { least: 1, most: MOST_LINKS, quantity: 'links', whole: true },
  ),
  chainSlack: numberField(
    {
      words: 'chain slack',
      help: 'Up and down together at the middle of the lower run, the wheel hanging; counts with links given.',
    },
    documented(30),
    length,
  ),
  clampOffset: numberField(
    { words: 'clamp offset', help: 'Fork legs ahead of the steering axis, square to it.' },
    essential,
    placed,
  ),
  headAngleCupsDeg: numberField(
    { words: 'head insert', help: 'Steering axis leaned further back (+) or stood up (−) by inserts.' },
    documented(0),
    angle,
  ),
  frontTyre: tyre('front'),
  rearTyre: tyre('rear'),
  frontTravelUsed: numberField(
    {
      words: 'front travel used',
      help: 'Fork travel used along the legs, in the state “Travel set by hand”.',
    },
    documented(0),
    length,
  ),
  rearTravelUsed: numberField(
    {
      words: 'rear travel used',
      help: 'Rise of the rear axle from hanging, square to the ground, in the state “Travel set by hand”.',
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
  riderForward: numberField(
    {
      words: 'rider forward',
      help: 'Rider’s centre of gravity moved forward (+) or back (−) on the seat.',
    },
    documented(0),
    placed,
  ),
  passengerMass: numberField(
    { words: 'passenger mass', help: 'Passenger in riding gear.' },
    documented(0),
    mass,
  ),
  passengerHeight: numberField(
    { words: 'passenger height', help: 'Passenger’s centre of gravity above the passenger’s seat.' },
    documented(250),
    placed,
  ),
  fuelMass: numberField(
    { words: 'fuel mass', help: 'Fuel in the tank; a litre of petrol weighs about 0.75 kg.' },
    documented(0),
    mass,
  ),
  loadMass: numberField({ words: 'load mass', help: 'Luggage.' }, documented(0), mass),
  loadHeight: numberField(
    { words: 'load height', help: 'Load’s centre of gravity above the load mark.' },
    documented(150),
    placed,
  ),
  gas: numberField(
    { words: 'gas', help: 'Acceleration in the ride state “Accelerating”.' },
    documented(0.5),
    acceleration,
  ),
  brake: numberField(
    { words: 'braking', help: 'Deceleration in the ride state “Braking”.' },
    documented(0.6),
    acceleration,
  ),
  brakeFrontShare: numberField(
    { words: 'front brake’s share', help: 'Part of the braking that the front wheel does.' },
    documented(100),
    { least: 0, most: 100, quantity: 'percent' },
  ),
  leanDeg: numberField(
    { words: 'lean', help: 'Lean from upright in the ride state “Mid-corner”.' },
    documented(40),
    angle,
  ),
  cornerGas: numberField(
    {
      words: 'gas in the corner',
      help: 'Acceleration (+) or deceleration (−) in the ride state “Mid-corner”.',
    },
    documented(0),
    acceleration,
  ),
  dragForce: numberField(
    { words: 'drag', help: 'Of the air, against the direction of travel, in every moving state.' },
    documented(0),
    { least: 0, most: LARGEST_FORCE, quantity: 'force' },
  ),
  dragHeight: numberField(
    { words: 'drag’s height', help: 'Above the ground, in the bike’s own plane.' },
    documented(600),
    length,
  ),
});
