/** The published shape of the rows that a bike was measured by, apart from their reading so that the page does not carry it. */
import type { JsonObject } from './json.ts';
import { MEASURE_LIMITS } from './measure.ts';

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

/** The sheet as it stands in a bike's file. */
export function measureShape(setup: JsonObject): JsonObject {
  return {
    title: 'Measured by',
    description:
      'What was measured on this bike with tape, gauge and scales and read in its papers; left out where nothing was.',
    type: 'object',
    required: ['rows'],
    properties: {
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
    },
  };
}
