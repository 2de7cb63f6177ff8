/** The silencer: where its outside is lowest. */
import type { TouchPart } from './touch-part.ts';

export const silencer: TouchPart = {
  label: 'Silencer',
  help: 'Where the silencer’s outside is lowest and furthest out.',
  absent: { x: -180, y: -60 },
};
