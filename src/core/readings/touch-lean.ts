/** Lean at first touch: how far the bike leans before a part is on the ground. */
import { degrees } from '../units/convert.ts';
import { MOST_LEAN, touchLean as leanAtTouch } from '../riding/touch-lean.ts';
import { absent } from './absent.ts';
import type { Reading } from './reading.ts';

/**
 * Lean from upright at which the first of the parts that may touch is on the ground, radians, the springs as deep as
 * that lean presses them. No answer while no part or no tread is measured, or where nothing touches.
 * Example: part height 200 mm, half width 300 mm, crown radius 85 mm → 36.3°.
 */
export const touchLean: Reading = {
  key: 'touchLean',
  label: 'Lean at first touch',
  group: 'balance',
  quantity: 'angle',
  construction: 'clearance',
  read: (stance) => {
    const { touching, crowns } = stance.machine;
    if (touching.length === 0) return absent('nothingMeasured');
    if (crowns.front === null || crowns.rear === null) return absent('noCrown');
    return leanAtTouch(stance) ?? absent('nothingTouches');
  },
  more: 'leans further before a part touches',
  less: 'a part touches sooner',
  help: {
    what: 'How far the bike leans from upright until footrest, silencer, belly or side stand touches, in a steady corner with the springs pressed by it. The wheels point straight ahead.',
    sign: `Zero upright; more is further over. Beyond ${Math.round(degrees(MOST_LEAN))}° nothing is looked for.`,
    measured: 'Computed from the heights and half widths of the parts and the round of the tyres.',
    feels:
      'A hard part on the ground can lift a tyre off it. Treat the figure as a limit to stay away from, and never ride to it.',
  },
};
