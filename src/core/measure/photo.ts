/** What a photo of the bike says: where on the picture its parts were clicked, and how the picture was taken. */
import type { MeasureStateKey } from './all-measure-states.ts';
import type { MeasurePartKey } from './measure-parts.ts';

/** A place on the upright picture before mirroring, in continuous pixels: (0, 0) is the upper left corner, y down. */
interface Click {
  readonly xPx: number;
  readonly yPx: number;
  /** Standard deviation of the hand, pixels. */
  readonly sdPx: number;
  /** How far what was clicked stands out from the bike's middle plane toward the camera, mm, and its standard deviation. */
  readonly depth: number;
  readonly depthSd: number;
}

/** A point or mark that was clicked; up to a few times each. */
export interface PartClick extends Click {
  readonly part: MeasurePartKey;
}

/** A point on the edge of a rim: where along the edge is not known. */
export interface RimClick extends Click {
  readonly wheel: 'frontWheel' | 'rearWheel';
  /** Radius of the edge that was clicked, mm, and its standard deviation. */
  readonly radius: number;
  readonly radiusSd: number;
}

export interface MeasurePhoto {
  readonly state: MeasureStateKey;
  /** The side that the camera stood on; from the left the picture is mirrored. */
  readonly side: 'right' | 'left';
  readonly widthPx: number;
  readonly heightPx: number;
  /** Focal length in pixels of the uncropped picture, and its standard deviation. */
  readonly focalPx: number;
  readonly focalSd: number;
  /** Standard deviation of the lens's bulge at the corners, per cent; 0 for a lens without. */
  readonly bulgeSd: number;
  readonly clicks: readonly PartClick[];
  readonly rims: readonly RimClick[];
}
