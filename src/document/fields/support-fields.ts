/** The saved fields of what holds an end up: null for a spring with one rate, else a spring of another kind, air, or both. */
import * as v from 'valibot';
import { ANY_PRESSURE, ANY_RATE, ANY_VOLUME, LARGEST_LENGTH } from '../../core/parts/bounds.ts';
import type { OtherLeg, Support } from '../../core/parts/support.ts';
import { documented, type Leaf } from './field.ts';

/** More rows than anyone measures. */
export const MOST_FORCE_ROWS = 200;
/** N. */
export const LARGEST_FORCE = 1e6;
export const LARGEST_EXPONENT = 10;
/** A common choice between air that keeps its temperature and air that gives off no heat; from memory. */
export const USUAL_EXPONENT = 1.3;

const between = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const length = between(0, LARGEST_LENGTH);
const place = between(-LARGEST_LENGTH, LARGEST_LENGTH);
const rate = between(ANY_RATE.least, ANY_RATE.most);
const volume = between(ANY_VOLUME.least, ANY_VOLUME.most);
const pressure = between(ANY_PRESSURE.least, ANY_PRESSURE.most);
const force = between(-LARGEST_FORCE, LARGEST_FORCE);
const lengthOrNone = v.optional(v.nullable(length), null);

const spring = v.variant('kind', [
  v.object({ kind: v.literal('oneRate') }),
  v.object({
    kind: v.literal('inSeries'),
    otherRate: rate,
    firstCloses: lengthOrNone,
    otherCloses: lengthOrNone,
  }),
  v.object({ kind: v.literal('twoRates'), secondRate: rate, changeover: length }),
  v.object({
    kind: v.literal('table'),
    rows: v.pipe(v.array(v.object({ pressed: place, force })), v.minLength(2), v.maxLength(MOST_FORCE_ROWS)),
  }),
  v.object({ kind: v.literal('none') }),
]);

const balance = v.object({ volume, bore: length, rod: length, pressure });
const air = v.object({
  bore: length,
  slidingTube: length,
  exponent: v.optional(between(0, LARGEST_EXPONENT), USUAL_EXPONENT),
  steelVolume: v.optional(volume, 0),
  balance: v.optional(v.nullable(balance), null),
});
const support = { spring, air: v.optional(v.nullable(air), null) };
const otherLeg = v.object({
  rate,
  preload: place,
  springTravel: lengthOrNone,
  airGap: length,
  airPressure: pressure,
  ...support,
});

const KINDS = '"oneRate", "inSeries", "twoRates", "table" and "none"';

/** What holds one leg or one shock up; `of` names it. */
export function supportField(of: 'fork' | 'shock'): Leaf<Support | null> {
  return {
    kind: 'leaf',
    words: `${of}’s springs and air`,
    help: `What holds the ${of} up; null for a spring with one rate whose air is not counted.`,
    quantity: null,
    validator: v.nullable(v.object(support)),
    expected: `null, or a spring of one of the kinds ${KINDS} with its figures, and air or null`,
    absent: documented(null),
    // A spring badly written is not a spring with one rate.
    refuseWrong: true,
    json: {},
    shape: 'support',
    bounds: null,
  };
}

export const otherLegField: Leaf<OtherLeg | null> = {
  kind: 'leaf',
  words: 'other fork leg',
  help: 'What the other leg holds instead of the same as the first; null while both are alike.',
  quantity: null,
  validator: v.nullable(otherLeg),
  expected: `null, or rate, preload, airGap, airPressure and a spring of one of the kinds ${KINDS}`,
  absent: documented(null),
  refuseWrong: true,
  json: {},
  shape: 'otherLeg',
  bounds: null,
};
