/** The saved fields of a place on the frame. */
import type { FramePlace } from '../../core/parts/frame-place.ts';
import type { FramePoint } from '../../core/parts/frame-point.ts';
import { placed } from './bounds.ts';
import { assumed, documented, essential, numberField, part, type Absent, type Part } from './field.ts';

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

/** The saved fields of a place that the frame's list names, with what its file says of it. */
export function framePlace({ label, help, absent }: FramePlace): Part<FramePoint> {
  const words = label.charAt(0).toLowerCase() + label.slice(1);
  return framePoint(words, help, (axis) => {
    if (absent === null) return essential;
    return absent.said ? assumed(absent.at[axis]) : documented(absent.at[axis]);
  });
}

/** A place that is taken without a note, because nothing rests there unless the setup says so. */
export const quietlyAt = (x: number, y: number) => (axis: 'x' | 'y') => documented(axis === 'x' ? x : y);
