/** The side stand, folded up. */
import type { TouchPart } from './touch-part.ts';

export const sideStand: TouchPart = {
  label: 'Side stand',
  help: 'The side stand’s outermost place, folded up.',
  absent: { x: 20, y: -150 },
};
