/** A bike with its adjusters set, in plain numbers, ready to stand on the ground at any travel. */
import { refuse } from '../numeric/refusal.ts';
import type { Bike } from '../parts/bike.ts';
import { eachFramePlace, type FramePlaces } from '../parts/frame-places.ts';
import { frontEnd, type FrontEnd } from '../chassis/front-end.ts';
import type { Setup } from '../adjusters/setup.ts';
import { tyreDiameter } from '../parts/tyre.ts';
import { whyNoLoop, type ChainLoop } from '../drive/chain-loop.ts';
import { suspensionAsSet } from '../linkage/suspension-as-set.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { withAxleAt, type Suspension } from '../linkage/suspension.ts';
import { wrongNumber } from '../numeric/wrong-number.ts';
import { hasRuns, type DriveKind } from '../parts/drive-kind.ts';
import { withRear, type ArmMass } from './arm-mass.ts';
import { axleSlot, loopOf, stretchOf, wornLoopOf } from './chain-of.ts';
import { axleForChain, SLOT_ROUNDING, type AxleMisfit, type AxleSlot } from './axle-in-slot.ts';
import { rearBrakeOf, torqueArmOf, type RearBrake, type StayedBrake } from './rear-brake.ts';
import { springSetOf, type SpringSet } from './spring-set.ts';
import { freeRadius, tyresOf, type Tyres } from './tyres.ts';
import { carriedMasses, type CarriedMass } from './carried-masses.ts';
import { fromPivot } from '../chassis/pivot-move.ts';
import { crownOf, touchingOf, type Crowns, type TouchPoint } from './touching.ts';

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

/** A bike with its adjusters set, or the reason why these parts cannot make one. */
export function machine(bike: Bike, setup: Setup): Machine | NoMachine {
  const front = tyreDiameter(setup.frontTyre);
  if (!front.ok) return refuse(front.reason, { end: 'front' });
  const rear = tyreDiameter(setup.rearTyre);
  if (!rear.ok) return refuse(rear.reason, { end: 'rear' });
  const { kind } = bike.drive;
  const runs = hasRuns(kind);
  const wrongLoop = runs ? whyNoLoop(setup.frontTeeth, setup.rearTeeth, bike.drive.chainPitch) : null;
  const wrongTeeth = wrongLoop?.reason === 'teethImpossible' ? wrongLoop : null;
  if (wrongTeeth !== null) return refuse('teethImpossible', wrongTeeth);
  const { slot } = bike.swingarm;
  // With a given chain, the chain finds the axle's place.
  const asSet = setup.chainLinks === null || !runs ? setup.axlePosition : 0;
  if (asSet < -SLOT_ROUNDING || asSet > slot + SLOT_ROUNDING)
    return refuse('axleOutOfSlot', { end: 'rear', found: asSet, limit: slot });
  const hung = suspensionAsSet(bike.swingarm, setup);
  if (!hung.ok) return hung;
  const { frame } = bike;
  const places = eachFramePlace((key) => fromPivot(frame[key], setup));
  const carried = carriedMasses(frame.sprungMass, setup, places);
  const frontUnsprung = bike.frontWheel.unsprungMass;
  const rearUnsprung = bike.rearWheel.unsprungMass;
  const { mass, centreAlong, centreAbove } = bike.swingarm;
  const least = Math.min(frontUnsprung, rearUnsprung, mass, ...carried.map(({ mass }) => mass));
  if (least < 0) return refuse('massNegative', { found: least, limit: 0 });
  if (wrongLoop !== null) return refuse('chainPitchImpossible', wrongLoop);
  const tyres = tyresOf(bike, front.value / 2, rear.value / 2);
  if (tyres !== null && !tyres.ok) return tyres;
  const torqueArm = kind === 'shaft' ? torqueArmOf(bike.housing, setup) : null;
  const loop = loopOf(bike.drive, setup.frontTeeth, setup.rearTeeth);
  const made: Machine = {
    ok: true,
    front: frontEnd(bike, setup),
    rear: hung,
    frontRadius: freeRadius(tyres, 'front', front.value / 2),
    rearRadius: freeRadius(tyres, 'rear', rear.value / 2),
    tyres,
    driveKind: kind,
    pivotForward: setup.pivotForward,
    pivotUp: setup.pivotUp,
    places,
    frontTeeth: setup.frontTeeth,
    rearTeeth: setup.rearTeeth,
    frontSprocketRadius: loop.frontRadius,
    rearSprocketRadius: loop.rearRadius,
    guideRadius: runs ? frame.guideRadius : null,
    lowerGuideRadius: runs ? (frame.lowerGuideRadius ?? frame.guideRadius) : null,
    chain: runs
      ? {
          loop:
            stretchOf(bike.drive) === 0 ? loop : wornLoopOf(bike.drive, setup.frontTeeth, setup.rearTeeth),
          slot: axleSlot(bike, setup),
          links: setup.chainLinks,
        }
      : null,
    frontUnsprung,
    rearUnsprung,
    rearWheelMass: rearUnsprung,
    armMass: { mass, along: centreAlong, above: centreAbove },
    armMoment: 0,
    carried,
    springs: springSetOf(bike, setup),
    brake: rearBrakeOf(bike.rearBrake, setup, torqueArm),
    touching: touchingOf(frame.touching, setup),
    crowns: {
      front: crownOf(bike.frontWheel, setup.frontTyre),
      rear: crownOf(bike.rearWheel, setup.rearTyre),
    },
    torqueArm,
  };
  const wrong = wrongNumber(made);
  if (wrong !== null) return refuse(wrong);
  const limit = largestGuide(made);
  for (const radius of [made.guideRadius, made.lowerGuideRadius])
    if (radius !== null && !(radius >= 0 && radius < limit))
      return refuse('guideImpossible', { found: radius, limit });
  return onChain(made);
}

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
