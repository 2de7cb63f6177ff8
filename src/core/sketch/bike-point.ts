/** What a point of the bike is: something a person can point at, with where it stands and how a hand moves it. */
import type { Setup } from '../adjusters/setup.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { Result } from '../numeric/result.ts';
import type { Bike } from '../parts/bike.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';

export interface Sketched {
  readonly bike: Bike;
  readonly setup: Setup;
}

/**
 * `onOtherPoint`: two points that make a line would fall together. `axleNotBehindPivot`: the arm would not trail, or
 * would have to hang steeper than upright. `linksCannotFollow`: the rear links cannot close with the point there.
 * `shockTurnsBack`: they close, but somewhere on the way the shock would grow longer as the wheel rises.
 * `noSuchPoint`: the bike's links have no such bolt.
 */
export type MoveReason =
  | 'notANumber'
  | 'onOtherPoint'
  | 'axleNotBehindPivot'
  | 'linksCannotFollow'
  | 'shockTurnsBack'
  | 'noSuchPoint';

/** Why a point cannot go where the rear links would have to be like this. */
export function moveReasonOf({ reason, because }: NoLinkage): MoveReason {
  const closes = because !== 'rodAndRockerInLine' && because !== 'armUpright';
  return reason === 'shockPulled' || (reason === 'armBeyondLinks' && closes)
    ? 'shockTurnsBack'
    : 'linksCannotFollow';
}

/** A bike with its setup as it stands, and where on the ground frame, mm, a point of it is to go. */
export interface Move extends Sketched {
  readonly stance: Stance;
  readonly target: Point;
}

/** The figures from which the place of a point follows, and the sentence that says so. */
export interface PlacedBy {
  /** Fields of the bike, from the bike down, such as `swingarm.length`. */
  readonly fields: readonly string[];
  /** The tyre whose outside diameter places the point; null for any other. */
  readonly tyre: 'frontTyre' | 'rearTyre' | null;
  readonly words: (bike: Bike) => string;
}

/** What stays still on the screen while a hand moves the point. With an axle still, the frame pitches about it. */
export type StaysStill = 'steeringHead' | 'countershaft' | 'frontAxle' | 'rearAxle';

export interface BikePoint {
  /** On the page. */
  readonly label: string;
  /** One sentence on where it is on a motorcycle. */
  readonly help: string;
  /** One more sentence for typing its place; may be left out. */
  readonly note?: string;
  /** Whether a bike has it. */
  readonly applies: (bike: Bike) => boolean;
  /** Where it stands, ground frame, mm; null for a bolt that the bike's links do not have, or a part that nobody measured. */
  readonly place: (stance: Stance, bike: Bike) => Point | null;
  /** The bike that has it at the target, with every other point left in its place. */
  readonly move: (move: Move) => Result<Sketched, MoveReason>;
  /** Null for a point that is placed by its two coordinates. */
  readonly placedBy: PlacedBy | null;
  readonly staysStill: StaysStill;
}

/** Every bike has the point. */
export function always(): boolean {
  return true;
}
