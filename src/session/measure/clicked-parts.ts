/** Which parts are clicked otherwise than as points: rims by their edge, sprockets by the chain's pins. */
import type { MeasurePartKey } from '../../core/measure/held/measure-parts.ts';
import type { SprocketKey } from '../../core/measure/photo/photo.ts';

export type Wheel = 'frontWheel' | 'rearWheel';

/** Whether what is clicked is a rim. */
export function isWheel(part: MeasurePartKey): part is Wheel {
  return part === 'frontWheel' || part === 'rearWheel';
}

/** Whether what is clicked are the pins of the chain on a sprocket. */
export function isSprocket(part: MeasurePartKey): part is SprocketKey {
  return part === 'frontSprocket' || part === 'rearSprocket';
}
