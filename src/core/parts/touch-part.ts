/** What is known of a part that may touch the ground before any bike has one. */
import type { FramePoint } from './frame-point.ts';

export interface TouchPart {
  /** On the page and, in small letters, in files. */
  readonly label: string;
  /** One sentence on which place of it is meant. */
  readonly help: string;
  /** Where it is taken to be until somebody measures it. */
  readonly absent: FramePoint;
}
