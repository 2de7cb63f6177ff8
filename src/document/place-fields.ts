/** The saved fields of a place on the frame. */
import type { FramePoint } from '../core/parts/frame-point.ts';
import { placed } from './bounds.ts';
import { assumed, documented, numberField, part, type Absent, type Part } from './field.ts';

export function framePoint(
  words: string,
  help: string,
  absent: (axis: 'x' | 'y') => Absent<number>,
): Part<FramePoint> {
  return part(words, help, {
    x: numberField(
      { words: `${words}, forward of the pivot`, help: `${help} Forward of the swingarm pivot.` },
      absent('x'),
      placed,
    ),
    y: numberField(
      { words: `${words}, above the pivot`, help: `${help} Above the swingarm pivot.` },
      absent('y'),
      placed,
    ),
  });
}

/** A place that is taken, and told, where a file leaves it out. */
export const pointAt = (x: number, y: number) => (axis: 'x' | 'y') => assumed(axis === 'x' ? x : y);

/** A place that is taken without a word, because nothing rests there unless the setup says so. */
export const quietlyAt = (x: number, y: number) => (axis: 'x' | 'y') => documented(axis === 'x' ? x : y);
