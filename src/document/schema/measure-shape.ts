/** The published shape of the rows that a bike was measured by, apart from their reading so that the page does not carry it. */
import type { JsonObject } from '../json/json.ts';
import { MEASURE_LIMITS, MOST_PHOTOS } from '../measure.ts';
import {
  KEPT_RINGS,
  LAST_TIME,
  LEAST_PHOTO_SIZE,
  LONGEST_PHOTO_KEY,
  MOST_PHOTO_CLICKS,
} from '../measure-photo.ts';

const { rows, key, figure, parts, leastSd, largest, note } = MEASURE_LIMITS;

const text = (description: string, maxLength: number, rest: JsonObject = {}): JsonObject => ({
  description,
  type: 'string',
  maxLength,
  ...rest,
});

const rowJson: JsonObject = {
  description: 'One measurement.',
  type: 'object',
  required: ['kind', 'state', 'figure'],
  properties: {
    kind: text('Key of the kind, such as distance.', key),
    parts: {
      description: 'Keys of the parts it is measured between, in the order of the kind.',
      type: 'array',
      maxItems: parts,
      items: { type: 'string', maxLength: key },
      default: [],
    },
    state: text('Key of the state in which the bike was held.', key),
    otherState: {
      description: 'Key of the second state of a change between two; null for any other kind.',
      type: ['string', 'null'],
      maxLength: key,
      default: null,
    },
    figure: text('As typed, such as 17 3/4 or 120/70-17; empty while nothing is.', figure),
    unit: text('As typed behind it, such as in; empty for mm, degrees or kg.', figure, { default: '' }),
    sd: {
      description:
        'Standard deviation in mm, degrees or kg, half of the ± on the page; null for that of the kind.',
      type: ['number', 'null'],
      minimum: leastSd,
      maximum: largest,
      default: null,
    },
    outOfPlane: {
      description: 'How far one part lies behind the other, square to the side view. Unit: mm.',
      type: 'number',
      minimum: 0,
      maximum: largest,
      default: 0,
    },
    fromOther: {
      description: 'Whether an angle was read from the other reference, such as from horizontal.',
      type: 'boolean',
      default: false,
    },
    off: { description: 'Whether the row is left out.', type: 'boolean', default: false },
    note: text('In your own words.', note, { default: '' }),
  },
};

const number = (description: string, minimum: number, maximum: number = largest): JsonObject => ({
  description,
  type: 'number',
  minimum,
  maximum,
});

const place = {
  xPx: number('Pixels from the left edge of the upright picture, before mirroring.', -largest),
  yPx: number('Pixels from the upper edge, downward.', -largest),
  sdPx: number('Standard deviation of the click, pixels.', LEAST_PHOTO_SIZE),
  depth: number('How far it stands out from the middle of the bike toward the camera. Unit: mm.', -largest),
  depthSd: number('Standard deviation of that. Unit: mm.', 0),
};

const clickList = (description: string, on: JsonObject): JsonObject => ({
  description,
  type: 'array',
  maxItems: MOST_PHOTO_CLICKS,
  items: { type: 'object', required: Object.keys({ ...on, ...place }), properties: { ...on, ...place } },
});

const photoFields: JsonObject = {
  keptAt: number(
    'When its picture was put beside the bike in the browser, milliseconds since 1970; the file itself holds no picture.',
    0,
    LAST_TIME,
  ),
  state: text('Key of the state in which the bike was held.', LONGEST_PHOTO_KEY),
  side: { description: 'The side of the bike that the camera stood on.', enum: ['right', 'left'] },
  widthPx: number('Width of the picture, pixels.', LEAST_PHOTO_SIZE),
  heightPx: number('Height of the picture, pixels.', LEAST_PHOTO_SIZE),
  focalPx: number('Focal length, pixels.', LEAST_PHOTO_SIZE),
  focalSd: number('Standard deviation of that, pixels.', 0),
  bulgeSd: number('Standard deviation of the lens’s bulge at the corners, per cent.', 0),
  clicks: clickList('Parts that were clicked.', { part: text('Key of the part.', LONGEST_PHOTO_KEY) }),
  rims: clickList('Points on the edges of rims, and on the pins of the chain on its sprockets.', {
    wheel: { description: 'The wheel, or the sprocket.', enum: [...KEPT_RINGS] },
    radius: number('Radius of the edge, or of the pitch circle. Unit: mm.', LEAST_PHOTO_SIZE),
    radiusSd: number('Standard deviation of that. Unit: mm.', 0),
  }),
};

const photoJson: JsonObject = {
  description: 'One photo: how it was taken, and what was clicked on it.',
  type: 'object',
  required: Object.keys(photoFields),
  properties: photoFields,
};

/** The sheet as it stands in a bike's file. */
export function measureShape(setup: JsonObject): JsonObject {
  return {
    title: 'Measured by',
    description:
      'What was measured on this bike with tape, gauge and scales and read in its papers; left out where nothing was.',
    type: 'object',
    required: ['rows'],
    properties: {
      taken: {
        description:
          'True once the bike was taken over from these rows: then the travel in setup is that at which it was measured.',
        type: 'boolean',
      },
      gaugeZeroed: {
        description:
          'Whether the angle gauge was zeroed on the floor in line with the bike; otherwise the slope of the floor is unknown.',
        type: 'boolean',
        default: true,
      },
      setup: {
        description: 'Where the adjusters stood while the bike was measured; left out, as in the file.',
        ...setup,
      },
      rows: { description: 'In any order.', type: 'array', maxItems: rows, items: rowJson },
      photos: {
        description: 'Photos of the bike, fitted together with the rows; left out where there is none.',
        type: 'array',
        maxItems: MOST_PHOTOS,
        items: photoJson,
      },
    },
  };
}
