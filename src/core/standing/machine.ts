/** A bike with its adjusters set, in plain numbers, ready to stand on the ground at any travel. */
import type { Setup } from '../adjusters/setup.ts';
import type { FrontEnd } from '../chassis/front-end.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { withAxleAt, type Suspension } from '../linkage/suspension.ts';
import { refuse } from '../numeric/refusal.ts';
import type { Bike } from '../parts/bike.ts';
import type { DriveKind } from '../parts/drive-kind.ts';
import type { FramePlaces } from '../parts/frame-places.ts';
import { withRear, type ArmMass } from './arm-mass.ts';
import { axleForChain, SLOT_ROUNDING, type AxleMisfit, type AxleSlot } from './axle-in-slot.ts';
import type { CarriedMass } from './carried-masses.ts';
import { NEW_PARTS, type MachineParts } from './machine-parts.ts';
import type { RearBrake, StayedBrake } from './rear-brake.ts';
import type { SpringSet } from './spring-set.ts';
import type { Crowns, TouchPoint } from './touching.ts';
import type { Tyres } from './tyres.ts';

/** Everything that does not depend on the travel used. mm, radians, kg; points in frame coordinates. */
export interface Machine {
  readonly ok: true;
  readonly front: FrontEnd;
  readonly rear: Suspension;
  /** Axle to ground: of the free tyre, or as loaded where the springs carry a bike whose tyres give. */
  readonly frontRadius: number;
  readonly rearRadius: number;
  /** Tyres that give; null where both are rigid. */
  readonly tyres: Tyres | null;
  readonly driveKind: DriveKind;
  /** How far an eccentric holds the pivot from where it is drawn, frame coordinates. */
  readonly pivotForward: number;
  readonly pivotUp: number;
  /** The places on the frame, as seen from the pivot as it stands. */
  readonly places: FramePlaces;
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly frontSprocketRadius: number;
  readonly rearSprocketRadius: number;
  /** Pitch-line radius of the chain guide about the pivot; null without a guide. */
  readonly guideRadius: number | null;
  /** The same of the guide under the pivot, for the lower run. */
  readonly lowerGuideRadius: number | null;
  /** The chain or belt with its slot, worn as it is, and its links where they are named; null with a shaft or hub drive. */
  readonly chain: { readonly loop: ChainLoop; readonly slot: AxleSlot; readonly links: number | null } | null;
  readonly frontUnsprung: number;
  /** With the swingarm's share. */
  readonly rearUnsprung: number;
  readonly rearWheelMass: number;
  readonly armMass: ArmMass;
  readonly armMoment: number;
  /** What the frame carries on its springs. */
  readonly carried: readonly CarriedMass[];
  readonly springs: SpringSet;
  readonly brake: RearBrake;
  /** Parts that may touch the ground, as far as they are measured, as seen from the pivot as it stands. */
  readonly touching: readonly TouchPoint[];
  /** Radii of the treads across; null where not known. */
  readonly crowns: Crowns;
  /** What holds a shaft's housing; null where the swingarm does, and with every other drive. */
  readonly torqueArm: StayedBrake | null;
}

/** Why these parts make no machine. */
export type NoMachine = NoLinkage | AxleMisfit;

/**
 * A bike with its adjusters set, or the reason why these parts cannot make one. `parts` makes its parts, and may give back
 * those of the setup before where nothing has turned that they follow from.
 */
export function machine(bike: Bike, setup: Setup, parts: MachineParts = NEW_PARTS): Machine | NoMachine {
  const { part: wheels, wrong: wrongWheels } = parts.wheels(bike, setup);
  // A tyre size that cannot be read is refused first; an impossible tyre rate only later.
  if (!wheels.ok && isUnread(wheels)) return wheels;
  const { kind } = bike.drive;
  const onSprockets = parts.onSprockets(bike, setup);
  const { wrongLoop, loop, chain } = onSprockets.part;
  const wrongTeeth = wrongLoop?.reason === 'teethImpossible' ? wrongLoop : null;
  if (wrongTeeth !== null) return refuse('teethImpossible', wrongTeeth);
  const { slot } = bike.swingarm;
  // With a given chain, the chain finds the axle's place.
  const asSet = setup.chainLinks === null || chain === null ? setup.axlePosition : 0;
  if (asSet < -SLOT_ROUNDING || asSet > slot + SLOT_ROUNDING)
    return refuse('axleOutOfSlot', { end: 'rear', found: asSet, limit: slot });
  const { part: hung, wrong: wrongRear } = parts.rear(bike, setup);
  if (!hung.ok) return hung;
  const onFrame = parts.onFrame(bike, setup);
  const { places, carried, touching, brake, torqueArm } = onFrame.part;
  const fixed = parts.fixed(bike, setup);
  const { frontUnsprung, rearUnsprung, armMass } = fixed.part;
  let least = Math.min(frontUnsprung, rearUnsprung, armMass.mass);
  for (const { mass } of carried) least = Math.min(least, mass);
  if (least < 0) return refuse('massNegative', { found: least, limit: 0 });
  if (wrongLoop !== null) return refuse('chainPitchImpossible', wrongLoop);
  if (!wheels.ok) return wheels;
  const front = parts.front(bike, setup);
  const springs = parts.springs(bike, setup);
  const wrong =
    front.wrong ??
    wrongRear ??
    wrongWheels ??
    onFrame.wrong ??
    onSprockets.wrong ??
    fixed.wrong ??
    springs.wrong;
  if (wrong !== null) return refuse(wrong);
  const made: Machine = {
    ok: true,
    front: front.part,
    rear: hung,
    frontRadius: wheels.frontRadius,
    rearRadius: wheels.rearRadius,
    tyres: wheels.tyres,
    driveKind: kind,
    pivotForward: setup.pivotForward,
    pivotUp: setup.pivotUp,
    places,
    frontTeeth: setup.frontTeeth,
    rearTeeth: setup.rearTeeth,
    frontSprocketRadius: loop.frontRadius,
    rearSprocketRadius: loop.rearRadius,
    guideRadius: fixed.part.guideRadius,
    lowerGuideRadius: fixed.part.lowerGuideRadius,
    chain,
    frontUnsprung,
    rearUnsprung,
    rearWheelMass: rearUnsprung,
    armMass,
    armMoment: 0,
    carried,
    springs: springs.part,
    brake,
    touching,
    crowns: wheels.crowns,
    torqueArm,
  };
  const limit = largestGuide(made);
  for (const radius of [made.guideRadius, made.lowerGuideRadius])
    if (radius !== null && !(radius >= 0 && radius < limit))
      return refuse('guideImpossible', { found: radius, limit });
  return onChain(made);
}

const isUnread = ({ reason }: NoPose): boolean =>
  reason === 'tyreCodeUnreadable' || reason === 'tyreSizeImpossible';

/** The machine with its axle where a chain of named links, as worn, puts it: longer links let it stand further back. */
function onChain(made: Machine): Machine | NoMachine {
  const { chain } = made;
  if (chain === null || chain.links === null) return withRear(made, made.rear);
  const place = axleForChain(made, chain.loop, chain.slot, chain.links);
  return place.ok ? withRear(made, withAxleAt(made.rear, place.axlePosition)) : place;
}

/** The guide radius from which one sprocket would lie within the guide, so that no run could leave it, mm. */
function largestGuide({ rear, places, frontSprocketRadius, rearSprocketRadius }: Machine): number {
  const front = Math.hypot(places.countershaft.x, places.countershaft.y) + frontSprocketRadius;
  return Math.min(front, rear.arm + rearSprocketRadius);
}
