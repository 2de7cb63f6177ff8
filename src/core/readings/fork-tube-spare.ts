/** Fork tube beyond the least that the clamps must hold. */
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

/**
 * Tube above the top clamp minus the least that the maker's manual allows, mm, a fork extender counted out; below
 * zero the clamps hold too little tube. No answer while the least height is not known.
 * Example: fork tubes above the clamp 5 mm, least fork tube above clamp 2 mm → 3 mm.
 */
export const forkTubeSpare: Reading = {
  key: 'forkTubeSpare',
  label: 'Fork tube to spare',
  group: 'suspension',
  quantity: 'length',
  construction: 'forkTop',
  read: ({ machine: { front } }) => front.tubeSpare ?? absent('noLeastHeight'),
  more: 'more tube above the clamp',
  less: 'less tube above the clamp',
  help: {
    what: 'Tube standing out of the top clamp [top yoke] beyond the least that the maker’s manual gives.',
    sign: 'Positive is safe; below zero the clamps hold too little tube.',
    measured: 'Ruler from the top clamp to the top of the tube, less the manual’s least.',
    feels: 'Nothing, until a clamp slips; keep it above zero.',
  },
};
