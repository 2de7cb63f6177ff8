/** The saved fields of a place on the frame. */
import type { FramePlace } from '../../core/parts/frame-place.ts';
import type { FramePoint } from '../../core/parts/frame-point.ts';
import type { TouchPart } from '../../core/parts/touch-part.ts';
import type { TouchPlace } from '../../core/parts/touch-parts.ts';
import { length, placed } from './bounds.ts';
import {
  assumed,
  documented,
  essential,
  numberField,
  numberOrNone,
  part,
  type Absent,
  type Part,
} from './field.ts';

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

const plainWords = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

/** The saved fields of a place that the frame's list names, with what its file says of it. */
export function framePlace({ label, help, absent }: FramePlace): Part<FramePoint> {
  const words = plainWords(label);
  return framePoint(words, help, (axis) => {
    if (absent === null) return essential;
    return absent.said ? assumed(absent.at[axis]) : documented(absent.at[axis]);
  });
}

/** The saved fields of a part that may touch the ground. */
export function touchPlace({ label, help, absent }: TouchPart): Part<TouchPlace> {
  const words = plainWords(label);
  const { fields } = framePoint(words, help, (axis) => documented(absent[axis]));
  return part<TouchPlace>(words, help, {
    ...fields,
    halfWidth: numberOrNone(
      {
        words: `${words}, half width`,
        help: `${help} How far out it stands from the middle of the bike; none while not measured, and it does not count then.`,
      },
      length,
    ),
  });
}

/** A place that is taken without a note, because nothing rests there unless the setup says so. */
export const quietlyAt = (x: number, y: number) => (axis: 'x' | 'y') => documented(axis === 'x' ? x : y);
