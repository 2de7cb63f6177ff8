/** The saved fields of a bike: each with its validator, its default, its words and its help. */
import * as v from 'valibot';
import {
  angle,
  length,
  LONGEST_ABOUT,
  LONGEST_NAME,
  mass,
  MOST_TRAVEL_ROWS,
  placed,
  rate,
  thread,
} from './bounds.ts';
import { LARGEST_LENGTH } from '../../core/parts/bounds.ts';
import { drive, housing, rearBrake } from './drive-fields.ts';
import { linksField } from './link-fields.ts';
import { framePlace, framePoint, touchPlace } from './place-fields.ts';
import { eachTouchPart, TOUCH_PARTS, type TouchPlaces } from '../../core/parts/touch-parts.ts';
import { shock, springEnds } from './spring-fields.ts';
import { otherLegField, supportField } from './support-fields.ts';
import { eachFramePlace, FRAME_PLACES } from '../../core/parts/frame-places.ts';
import type { Bike, Bodywork, Fork, Frame, Swingarm, Wheel } from '../../core/parts/bike.ts';
import type { TravelRow } from '../../core/parts/rear-layout.ts';
import {
  assumed,
  choiceField,
  describedBy,
  documented,
  essential,
  flagField,
  numberField,
  numberOrNone,
  part,
  textField,
  type Leaf,
  type Part,
} from './field.ts';

/** Legs further from the steering axis than this are on no fork, degrees. */
const STEEPEST_LEGS = 30;

// Saved files have these two ahead of the sprung mass, and all others behind it.
const { countershaft, sprungCentre, ...otherPlaces } = eachFramePlace((key) => framePlace(FRAME_PLACES[key]));

const frame = part<Frame>('frame', 'Places are in mm from the swingarm pivot, x forward, y up.', {
  steeringHead: framePoint(
    'steering head',
    'Where the steering axis passes through the top of the upper fork clamp.',
    () => essential,
  ),
  axisAngleDeg: numberField(
    { words: 'steering axis angle', help: 'Lean of the steering axis back from the frame’s upright.' },
    essential,
    angle,
  ),
  headTubeLength: numberField(
    {
      words: 'steering head length',
      help: 'Along the axis; head-angle cups tilt the axis about its middle.',
    },
    assumed(180),
    length,
  ),
  countershaft,
  sprungCentre,
  sprungMass: numberField(
    { words: 'sprung weight', help: 'Weight of all that the springs carry, without rider and load.' },
    assumed(0),
    mass,
  ),
  ...otherPlaces,
  guideRadius: numberOrNone(
    describedBy(({ loop, sliderInFull }) => ({
      words: `${loop} slider radius over the pivot`,
      help: `Pivot centre to the ${loop === 'belt' ? 'belt’s pitch line' : 'chain’s pins'} as it lies on the ${sliderInFull}; none without one.`,
    })),
    length,
  ),
  lowerGuideRadius: numberOrNone(
    {
      words: 'chain slider radius under the pivot',
      help: 'The same below the pivot, where the lower run may lie with the throttle closed; none when it is the same as above. A roller elsewhere on the frame is not counted.',
    },
    length,
  ),
  touching: part<TouchPlaces>(
    'parts that may touch the ground',
    'Footrest and the like, by the place that touches first; each counts once its half width is known.',
    eachTouchPart((key) => touchPlace(TOUCH_PARTS[key])),
  ),
});

const fork = part<Fork>('fork', 'Measured with the fork topped out.', {
  length: numberField(
    { words: 'fork length', help: 'Axle to the top of the tube along the legs, topped out.' },
    essential,
    length,
  ),
  travel: numberField({ words: 'fork travel', help: 'Along the legs.' }, assumed(120), length),
  axleLead: numberField(
    { words: 'axle lead', help: 'Axle ahead of the legs’ centre line, square to the legs.' },
    assumed(0),
    placed,
  ),
  legAngleDeg: numberField(
    {
      words: 'leg angle',
      help: 'Legs steeper (+) or flatter (−) than the steering axis; 0 on almost every motorcycle.',
    },
    documented(0),
    { ...angle, least: -STEEPEST_LEGS, most: STEEPEST_LEGS },
  ),
  springLegs: numberField(
    {
      words: 'number of fork springs',
      help: 'Legs that hold a spring: 2, or 1 where the other leg only damps.',
    },
    documented(2),
    { least: 1, most: 2, quantity: 'count', whole: true },
  ),
  ends: springEnds('fork'),
  support: supportField('fork'),
  otherLeg: otherLegField,
  leastHeight: numberOrNone(
    {
      words: 'least fork tube above clamp',
      help: 'Least tube above the top clamp [top yoke] with which both clamps still hold enough, from the maker’s manual; none when not known.',
    },
    placed,
  ),
  lowerClampDepth: numberOrNone(
    {
      words: 'lower clamp’s underside',
      help: 'Top of the top clamp [top yoke] down to the underside of the lower one, along the legs; none when not known.',
    },
    length,
  ),
});

/** Stands in for a missing table: one mm of shock for two of wheel, whatever the travel. */
const HALF_AND_HALF: readonly TravelRow[] = [
  { wheelTravel: 0, shockStroke: 0 },
  { wheelTravel: 100, shockStroke: 50 },
];

const cell = v.pipe(v.number(), v.minValue(-LARGEST_LENGTH), v.maxValue(LARGEST_LENGTH));

const plusMinus = v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(LARGEST_LENGTH)));

const travelTable: Leaf<readonly TravelRow[]> = {
  kind: 'leaf',
  words: 'travel table',
  help: 'Rows of wheel travel and shock stroke, from (0, 0) upward, both rising from row to row; each may have the ± within which it was read.',
  quantity: null,
  validator: v.pipe(
    v.array(
      v.object({
        wheelTravel: cell,
        shockStroke: cell,
        wheelTravelPlusMinus: plusMinus,
        shockStrokePlusMinus: plusMinus,
      }),
    ),
    v.minLength(2),
    v.maxLength(MOST_TRAVEL_ROWS),
  ),
  expected: `2 to ${MOST_TRAVEL_ROWS} rows, each with wheelTravel and shockStroke as numbers, and a ± of neither below 0`,
  absent: assumed(HALF_AND_HALF),
  standsIn: 'half a millimetre of shock for each of wheel',
  refuseWrong: false,
  json: {},
  shape: 'travelTable',
  bounds: null,
};

const swingarm = part<Swingarm>('swingarm', 'Measured with the axle at the front end of its slot.', {
  length: numberField(
    { words: 'swingarm length', help: 'Pivot to axle with the axle at the front end of its slot.' },
    essential,
    length,
  ),
  slot: numberField(
    { words: 'axle slot', help: 'How far the axle can move back in its slot.' },
    assumed(30),
    length,
  ),
  toppedOutAngleDeg: numberField(
    {
      words: 'swingarm angle, topped out',
      help: 'Line from pivot to axle below the frame’s level line, hanging, with the shock as delivered.',
    },
    essential,
    angle,
  ),
  wheelTravel: numberField(
    {
      words: 'rear wheel travel',
      help: 'Rise of the axle from hanging to bottomed, square to the ground with the frame held.',
    },
    assumed(120),
    length,
  ),
  travelTable,
  tablePitchDeg: numberField(
    {
      words: 'table pitch',
      help: 'Frame tilt while measured, nose up positive; mostly 0.',
    },
    documented(0),
    angle,
  ),
  shockThread: numberOrNone(
    {
      words: 'shock thread',
      help: 'How far one turn of the shock’s length adjuster moves it; none when it has no thread.',
    },
    thread,
  ),
  mass: numberField(
    {
      words: 'swingarm weight',
      help: 'The arm with all that is bolted to it, without wheel, brake and sprocket; the program splits it between axle and pivot. 0 where the rear unsprung weight holds a share of it already.',
    },
    documented(0),
    mass,
  ),
  centreAlong: numberField(
    {
      words: 'swingarm centre of gravity, along the arm',
      help: 'From the pivot toward the axle: where the arm balances on an edge.',
    },
    documented(0),
    length,
  ),
  centreAbove: numberField(
    {
      words: 'swingarm centre of gravity, above the arm',
      help: 'Square above the line from pivot to axle; below it counts as less than 0.',
    },
    documented(0),
    placed,
  ),
  links: linksField,
});

const wheel = (end: 'front' | 'rear'): Part<Wheel> =>
  part<Wheel>(`${end} wheel`, `The ${end} wheel and what moves with it.`, {
    rimDiameter: numberField(
      { words: `${end} rim diameter`, help: 'Bead diameter of the rim, such as 17 in.' },
      assumed(431.8),
      length,
    ),
    unsprungMass: numberField(
      {
        words: `${end} unsprung weight`,
        help:
          end === 'front'
            ? 'Weight that moves with the front axle.'
            : 'Weight that moves with the rear axle: wheel, brake and sprocket, and a share of the swingarm where its own weight is not entered.',
      },
      assumed(0),
      mass,
    ),
    tyreRate: numberOrNone(
      {
        words: `${end} tyre rate`,
        help: 'Load over sink, upright; none for a rigid tyre. It gives only where the springs carry the bike.',
      },
      rate,
    ),
    tyreMeasuredUnder: numberField(
      {
        words: `${end} weight while tyre was measured`,
        help: 'Weight on this wheel while its size was measured; 0 off the ground. So its sink counts once.',
      },
      documented(0),
      mass,
    ),
    crownRadius: numberOrNone(
      {
        words: `${end} crown radius`,
        help: 'Radius of the tread across the tyre; none when not known: then half of the width in its size code.',
      },
      length,
    ),
  });

export const BIKE_PART: Part<Bike> = part<Bike>(
  'bike',
  'What stays as it is when the adjusters are turned.',
  {
    name: textField(
      { words: 'name', help: 'What the bike is called.' },
      assumed('Unnamed bike'),
      LONGEST_NAME,
    ),
    about: textField({ words: 'notes', help: 'The owner’s notes.' }, documented(''), LONGEST_ABOUT),
    invented: flagField(
      { words: 'mark of made-up figures', help: 'True when the figures belong to no real motorcycle.' },
      documented(false),
    ),
    bodywork: choiceField<Bodywork>(
      { words: 'bodywork', help: 'How the bodywork is drawn; changes no number.' },
      documented('naked'),
      ['faired', 'naked', 'offRoad'],
    ),
    frame,
    fork,
    swingarm,
    shock,
    rearBrake,
    housing,
    frontWheel: wheel('front'),
    rearWheel: wheel('rear'),
    drive,
  },
);
