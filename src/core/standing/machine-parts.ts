/** The parts of a machine that follow from a few adjusters each. */
import type { MachinePartKey, PartSetup } from '../adjusters/machine-part-adjusters.ts';
import { frontEnd } from '../chassis/front-end.ts';
import type { NoPose } from '../chassis/no-pose.ts';
import { fromPivot } from '../chassis/pivot-move.ts';
import { whyNoLoop, type ChainLoop, type NoLoop } from '../drive/chain-loop.ts';
import { suspensionAsSet } from '../linkage/suspension-as-set.ts';
import { refuse } from '../numeric/refusal.ts';
import { wrongNumber, type Wrong } from '../numeric/wrong-number.ts';
import type { Bike } from '../parts/bike.ts';
import { hasRuns } from '../parts/drive-kind.ts';
import { eachFramePlace, type FramePlaces } from '../parts/frame-places.ts';
import { tyreDiameter } from '../parts/tyre.ts';
import type { ArmMass } from './arm-mass.ts';
import type { AxleSlot } from './axle-in-slot.ts';
import { carriedMasses, type CarriedMass } from './carried-masses.ts';
import { axleSlot, loopOf, stretchOf, wornLoopOf } from './chain-of.ts';
import { rearBrakeOf, torqueArmOf, type RearBrake, type StayedBrake } from './rear-brake.ts';
import { springSetOf } from './spring-set.ts';
import { crownOf, touchingOf, type Crowns, type TouchPoint } from './touching.ts';
import { freeRadius, tyresOf, type Tyres } from './tyres.ts';

/** A part, and whether a number in it cannot be computed with. */
interface Checked<Part> {
  readonly part: Part;
  readonly wrong: Wrong | null;
}

/** What the frame holds and carries, as seen from the pivot as it stands. */
interface OnFrame {
  readonly places: FramePlaces;
  readonly carried: readonly CarriedMass[];
  readonly touching: readonly TouchPoint[];
  readonly brake: RearBrake;
  readonly torqueArm: StayedBrake | null;
}

/** Axle to ground of the free tyres, mm, or why there is none. */
interface Wheels {
  readonly ok: true;
  readonly frontRadius: number;
  readonly rearRadius: number;
  /** Null where both are rigid. */
  readonly tyres: Tyres | null;
  readonly crowns: Crowns;
}

/** What no adjuster changes. */
interface Fixed {
  readonly guideRadius: number | null;
  readonly lowerGuideRadius: number | null;
  readonly frontUnsprung: number;
  readonly rearUnsprung: number;
  readonly armMass: ArmMass;
}

/** What the sprockets' teeth and the chain's length and slack fix. */
interface OnSprockets {
  readonly wrongLoop: NoLoop | null;
  /** As new; it means nothing on a shaft or hub drive. */
  readonly loop: ChainLoop;
  /** Null with a shaft or hub drive. */
  readonly chain: {
    readonly loop: ChainLoop;
    readonly slot: AxleSlot;
    readonly links: number | null;
  } | null;
}

/** Makes one part of a bike's machine from the adjusters that it follows from. */
export type PartMaker<Read, Part> = (bike: Bike, setup: Read) => Checked<Part>;

const checked =
  <Read, Part extends object>(make: (bike: Bike, setup: Read) => Part): PartMaker<Read, Part> =>
  (bike, setup) => {
    const part = make(bike, setup);
    return { part, wrong: wrongNumber(part) };
  };

/** Makes every part anew. */
export const NEW_PARTS = {
  fixed: checked(fixedOf),
  front: checked(frontEnd),
  rear: checked(({ swingarm }: Bike, setup: PartSetup<'rear'>) => suspensionAsSet(swingarm, setup)),
  onFrame: checked(onFrameOf),
  wheels: checked(wheelsOf),
  onSprockets: checked(onSprocketsOf),
  springs: checked(springSetOf),
} as const satisfies { readonly [Key in MachinePartKey]: PartMaker<PartSetup<Key>, unknown> };

export type MachineParts = typeof NEW_PARTS;

function fixedOf({ drive, frame, frontWheel, rearWheel, swingarm }: Bike, _setup: PartSetup<'fixed'>): Fixed {
  const runs = hasRuns(drive.kind);
  return {
    guideRadius: runs ? frame.guideRadius : null,
    lowerGuideRadius: runs ? (frame.lowerGuideRadius ?? frame.guideRadius) : null,
    frontUnsprung: frontWheel.unsprungMass,
    rearUnsprung: rearWheel.unsprungMass,
    armMass: { mass: swingarm.mass, along: swingarm.centreAlong, above: swingarm.centreAbove },
  };
}

function onFrameOf({ frame, drive, housing, rearBrake }: Bike, setup: PartSetup<'onFrame'>): OnFrame {
  const places = eachFramePlace((key) => fromPivot(frame[key], setup));
  const torqueArm = drive.kind === 'shaft' ? torqueArmOf(housing, setup) : null;
  return {
    places,
    carried: carriedMasses(frame.sprungMass, setup, places),
    touching: touchingOf(frame.touching, setup),
    brake: rearBrakeOf(rearBrake, setup, torqueArm),
    torqueArm,
  };
}

function onSprocketsOf(bike: Bike, setup: PartSetup<'onSprockets'>): OnSprockets {
  const { drive } = bike;
  const { frontTeeth, rearTeeth, chainLinks } = setup;
  const runs = hasRuns(drive.kind);
  const loop = loopOf(drive, frontTeeth, rearTeeth);
  const worn = stretchOf(drive) === 0 ? loop : wornLoopOf(drive, frontTeeth, rearTeeth);
  return {
    wrongLoop: runs ? whyNoLoop(frontTeeth, rearTeeth, drive.chainPitch) : null,
    loop,
    chain: runs ? { loop: worn, slot: axleSlot(bike, setup), links: chainLinks } : null,
  };
}

function wheelsOf(bike: Bike, { frontTyre, rearTyre }: PartSetup<'wheels'>): Wheels | NoPose {
  const front = tyreDiameter(frontTyre);
  if (!front.ok) return refuse(front.reason, { end: 'front' });
  const rear = tyreDiameter(rearTyre);
  if (!rear.ok) return refuse(rear.reason, { end: 'rear' });
  const tyres = tyresOf(bike, front.value / 2, rear.value / 2);
  if (tyres !== null && !tyres.ok) return tyres;
  return {
    ok: true,
    frontRadius: freeRadius(tyres, 'front', front.value / 2),
    rearRadius: freeRadius(tyres, 'rear', rear.value / 2),
    tyres,
    crowns: { front: crownOf(bike.frontWheel, frontTyre), rear: crownOf(bike.rearWheel, rearTyre) },
  };
}
