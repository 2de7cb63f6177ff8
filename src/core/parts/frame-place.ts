/** What is known of a place on the frame before any bike has one: its name, its help, and where it is when a file leaves it out. */
import type { FramePoint } from './frame-point.ts';

export interface FramePlace {
  /** On the page and, in small letters, in files. */
  readonly label: string;
  /** One sentence on where it is on a motorcycle. */
  readonly help: string;
  /** Whether a bike has it only where a chain or a belt runs. */
  readonly needsRun: boolean;
  /**
   * Where it is taken to be when a file leaves it out, and whether a note then says so; null when every bike has
   * it.
   */
  readonly absent: { readonly at: FramePoint; readonly said: boolean } | null;
}
