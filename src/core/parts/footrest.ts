/** The footrest: its tip. */
import type { TouchPart } from './touch-part.ts';

export const footrest: TouchPart = {
  label: 'Footrest [peg]',
  help: 'The footrest’s tip, or the lowest place under it, with the footrest down.',
  absent: { x: -60, y: -90 },
};
