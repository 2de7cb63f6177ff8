/** The places at which a person sees an end of the bike rise or drop, and by how much each does. */
import { inFrame, onGround } from '../chassis/pose.ts';
import { asStored, fromPivot } from '../chassis/pivot-move.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { freeRadius } from '../standing/tyres.ts';
import type { Stance } from '../standing/stance.ts';

export interface HeightPlace {
  readonly key: 'front' | 'rear' | 'seat' | 'tail';
  readonly label: string;
  readonly end: 'front' | 'rear';
  /** The adjuster that workshops turn to move this place. */
  readonly adjuster: 'forkTubes' | 'shockLength';
  /** What a sentence says before the amount, and where a tape is held, behind it; empty where the name says it. */
  readonly words: readonly [string, string];
  /** The place on the frame as it stands, ground frame, mm; it moves with the frame from then on. */
  readonly on: (stance: Stance) => { readonly x: number; readonly y: number };
}

export const HEIGHT_PLACES: readonly HeightPlace[] = [
  {
    key: 'front',
    label: 'Front end',
    end: 'front',
    adjuster: 'forkTubes',
    words: ['front end', 'straight above the axle'],
    // Straight above the axle, where the tyre ends and a tape can be held.
    on: ({ frontAxle, machine }) => ({
      x: frontAxle.x,
      y: frontAxle.y + freeRadius(machine.tyres, 'front', machine.frontRadius),
    }),
  },
  {
    key: 'rear',
    label: 'Rear end',
    end: 'rear',
    adjuster: 'shockLength',
    words: ['rear end', 'straight above the axle'],
    on: ({ rearAxle, machine }) => ({
      x: rearAxle.x,
      y: rearAxle.y + freeRadius(machine.tyres, 'rear', machine.rearRadius),
    }),
  },
  {
    key: 'seat',
    label: 'Seat',
    end: 'rear',
    adjuster: 'shockLength',
    words: ['seat', ''],
    on: ({ pose, machine }) => onGround(pose, machine.places.seat),
  },
  {
    key: 'tail',
    label: 'Tail',
    end: 'rear',
    adjuster: 'shockLength',
    words: ['tail', ''],
    on: ({ pose, machine }) => onGround(pose, machine.places.loadMark),
  },
];

export type HeightPlaceKey = HeightPlace['key'];

/** The place of a key. */
export function heightPlace(key: HeightPlaceKey): HeightPlace {
  // Keys are those of the list, so each has its row.
  return HEIGHT_PLACES.find((place) => place.key === key) as HeightPlace;
}

/**
 * How much higher a place of the frame stands in `to` than in `from`, mm, positive upward. Both are the same bike with
 * adjusters set differently. Always has an answer.
 */
export function heightRise(place: HeightPlace, from: Stance, to: Stance): number {
  const { before, after } = heightsAt(place, from, to);
  return after - before;
}

/** How high a place of the frame stands above the ground in `from` and the same place of the frame in `to`, mm. */
export function heightsAt(
  place: HeightPlace,
  from: Stance,
  to: Stance,
): { readonly before: number; readonly after: number } {
  const was = place.on(from);
  const inItsFrame = inFrame(from.pose, was);
  return { before: was.y, after: onGround(to.pose, seenFrom(inItsFrame, from, to)).y };
}

/** A point in frame coordinates of one stance in those of another, whose pivot an eccentric may hold elsewhere. */
function seenFrom(point: FramePoint, from: Stance, to: Stance): FramePoint {
  return fromPivot(asStored(point, from.machine), to.machine);
}
