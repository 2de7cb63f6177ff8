/** The saved fields of the drive and of what holds the rear brake. */
import * as v from 'valibot';
import type { Drive, HousingMount, RearBrakeMount } from '../../core/parts/bike.ts';
import { length } from './bounds.ts';
import {
  assumed,
  choiceField,
  describedBy,
  documented,
  flagField,
  numberField,
  numberOrNone,
  part,
  type Leaf,
} from './field.ts';
import { framePoint, quietlyAt } from './place-fields.ts';

/** Ratios of gears beyond these are on no motorcycle. */
const ratio = { least: 0.1, most: 20, quantity: 'ratio' } as const;
const MOST_GEARS = 12;
/** More links than any chain has. */
const MOST_MEASURED = 1000;

const gearRatios: Leaf<readonly number[]> = {
  kind: 'leaf',
  words: 'gear ratios',
  help: 'Turns of the gearbox’s [transmission’s] input shaft for one of the countershaft, first gear first; empty when not known.',
  quantity: null,
  validator: v.pipe(
    v.array(v.pipe(v.number(), v.minValue(ratio.least), v.maxValue(ratio.most))),
    v.maxLength(MOST_GEARS),
  ),
  expected: `a list of at most ${MOST_GEARS} numbers from ${ratio.least} to ${ratio.most}`,
  absent: documented([]),
  standsIn: 'not known',
  refuseWrong: false,
  json: {
    type: 'array',
    maxItems: MOST_GEARS,
    items: { type: 'number', minimum: ratio.least, maximum: ratio.most },
  },
  bounds: null,
};

export const drive = part<Drive>('drive', 'How the engine turns the rear wheel.', {
  // Another kind of drive is not a chain badly written, so it is refused rather than replaced.
  kind: choiceField(
    {
      words: 'kind of drive',
      help: 'Chain or toothed belt, which pull along a run; a shaft, or a hub motor.',
    },
    documented('chain'),
    ['chain', 'belt', 'shaft', 'hub'],
    true,
  ),
  chainPitch: numberField(
    describedBy(({ loop }) => ({
      words: `${loop} pitch`,
      help: '15.875 mm for roller chains of the 5xx sizes, 12.7 mm for 4xx (ISO 606); of a toothed belt, tooth to tooth.',
    })),
    assumed(15.875),
    length,
  ),
  halfLink: flagField(
    {
      words: 'half link',
      help: 'Whether one half link may be put into the chain, so that odd counts can be joined.',
    },
    documented(false),
  ),
  leastFrontTeeth: numberField(
    {
      words: 'fewest front teeth',
      help: 'Fewest teeth of a front sprocket that goes over the countershaft.',
    },
    documented(10),
    { least: 6, most: 60, quantity: 'teeth', whole: true },
  ),
  primaryRatio: numberOrNone(
    {
      words: 'primary ratio',
      help: 'Turns of the crankshaft for one of the gearbox’s input shaft; none when not known.',
    },
    ratio,
  ),
  gearRatios,
  measuredLinks: numberField(
    { words: 'links measured', help: 'Over how many links the chain’s wear was measured.' },
    documented(20),
    { least: 1, most: MOST_MEASURED, quantity: 'links', whole: true },
  ),
  measuredLength: numberOrNone(
    {
      words: 'length of the links measured',
      help: 'Pin to pin with the chain pulled tight; none for a chain that counts as new.',
    },
    length,
  ),
  wearLimit: numberOrNone(
    {
      words: 'chain’s wear limit',
      help: 'How much longer than new the chain may become before its maker calls it worn out; none when not known.',
    },
    { least: 0, most: 100, quantity: 'percent' },
  ),
  leastSlack: numberField(
    {
      words: 'least chain slack',
      help: 'Up and down together, kept where the chain is tightest in the rear travel.',
    },
    documented(10),
    length,
  ),
});

export const rearBrake = part<RearBrakeMount>('rear brake', 'What holds the rear brake’s caliper.', {
  caliper: choiceField(
    {
      words: 'rear caliper',
      help: 'Bolted to the swingarm, on a bracket about the axle that a brake stay holds to the frame, or to a shaft’s housing.',
    },
    documented('onArm'),
    ['onArm', 'ownStay', 'onHousing'],
    true,
  ),
  stayAnchor: framePoint(
    'brake stay’s anchor',
    'Where the caliper’s stay is bolted to the frame.',
    quietlyAt(0, 60),
  ),
  bracketRadius: numberField(
    { words: 'bracket radius', help: 'Rear axle to where the stay is bolted to the caliper’s bracket.' },
    documented(90),
    length,
  ),
  stayLength: numberField({ words: 'brake stay’s length', help: 'Bolt to bolt.' }, documented(500), length),
  bracketSide: choiceField(
    {
      words: 'bracket’s side',
      help: 'On which side of the line from axle to anchor the bracket’s bolt lies.',
    },
    documented('above'),
    ['above', 'below'],
    true,
  ),
});

export const housing = part<HousingMount>('shaft housing', 'What holds the housing of a shaft drive.', {
  heldBy: choiceField(
    {
      words: 'shaft’s housing',
      help: 'Fixed to the swingarm; or free to turn about the axle, held by a torque arm to the frame.',
    },
    documented('swingarm'),
    ['swingarm', 'torqueArm'],
    true,
  ),
  armAnchor: framePoint(
    'torque arm’s anchor',
    'Where the torque arm of the shaft’s housing is bolted to the frame.',
    quietlyAt(-10, -70),
  ),
  boltRadius: numberField(
    { words: 'housing radius', help: 'Rear axle to where the torque arm is bolted to the housing.' },
    documented(90),
    length,
  ),
  armLength: numberField({ words: 'torque arm’s length', help: 'Bolt to bolt.' }, documented(500), length),
  boltSide: choiceField(
    {
      words: 'housing’s side',
      help: 'On which side of the line from axle to anchor the housing’s bolt lies.',
    },
    documented('below'),
    ['above', 'below'],
    true,
  ),
});
