/** What turns the rear wheel, drawn so that its kind is seen at a glance. */
import type { Stance } from '../../core/standing/stance.ts';
import { beltDriveShapes } from '../chain/belt-drawing.ts';
import { chainDriveShapes } from '../chain/chain-drawing.ts';
import { hubCableShapes } from './hub-drawing.ts';
import { shaftDriveShapes } from './shaft-drawing.ts';
import type { Shape } from '../shapes/shape.ts';

/** What lies in front of the swingarm; `pitch` is that of the chain, mm. A hub's motor lies behind it, in the wheel. */
export function driveShapes(standing: Stance, pitch: number): Shape[] {
  switch (standing.machine.driveKind) {
    case 'chain':
      return chainDriveShapes(standing, pitch);
    case 'belt':
      return beltDriveShapes(standing);
    case 'shaft':
      return shaftDriveShapes(standing);
    case 'hub':
      return hubCableShapes(standing);
  }
}
