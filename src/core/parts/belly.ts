/** The belly: the lowest place under engine, exhaust or fairing. */
import type { TouchPart } from './touch-part.ts';

export const belly: TouchPart = {
  label: 'Belly',
  help: 'The lowest place under engine, exhaust or fairing.',
  absent: { x: 170, y: -190 },
};
