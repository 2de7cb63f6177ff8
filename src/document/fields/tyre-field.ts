/** The saved field of a tyre: its size code, or how large it was measured. */
import * as v from 'valibot';
import { LARGEST_LENGTH } from '../../core/parts/bounds.ts';
import type { Tyre } from '../../core/parts/tyre.ts';
import type { Absent, Described, Leaf } from './field.ts';

/** Longer than any code on a sidewall. */
export const LONGEST_CODE = 60;

const across = v.pipe(v.number(), v.minValue(0), v.maxValue(LARGEST_LENGTH));
const code = v.pipe(v.string(), v.maxLength(LONGEST_CODE));

export const tyreField = (described: Described, absent: Absent<Tyre>): Leaf<Tyre> => ({
  kind: 'leaf',
  ...described,
  quantity: null,
  validator: v.union([
    v.object({ code }),
    v.object({ diameter: across }),
    v.object({ circumference: across }),
  ]),
  expected:
    'a group with a code such as "190/55-17", or with a diameter or a circumference as a number in mm',
  absent,
  refuseWrong: false,
  json: {},
  shape: 'tyre',
  bounds: null,
});
