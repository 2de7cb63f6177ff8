/** A bike as dialled, in plain numbers ready to be stood on the ground at any travel. */
import type { Bike } from '../chassis/bike.ts';
import { frontEnd, type FrontEnd } from '../chassis/front-end.ts';
import { noPose, type NoPose } from '../chassis/no-pose.ts';
import type { Setup } from '../chassis/setup.ts';
import { tyreDiameter } from '../chassis/tyre.ts';
import { LEAST_PITCH, MOST_PITCH, pitchPossible, pitchRadius, teethPossible } from '../drive/sprocket.ts';
import { rearSuspension, type RearSuspension } from '../linkage/rear-suspension.ts';

/** Everything that does not depend on the travel used. mm, radians, kg; points in frame coordinates. */
export interface Machine {
  readonly ok: true;
  readonly front: FrontEnd;
  readonly rear: RearSuspension;
  readonly frontRadius: number;
  readonly rearRadius: number;
  readonly countershaftX: number;
  readonly countershaftY: number;
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly frontSprocketRadius: number;
  readonly rearSprocketRadius: number;
  /** Pitch-line radius of the chain guide about the pivot; null without a guide. */
  readonly guideRadius: number | null;
  readonly sprungMass: number;
  readonly sprungX: number;
  readonly sprungY: number;
  readonly frontUnsprung: number;
  readonly rearUnsprung: number;
  readonly seatX: number;
  readonly seatY: number;
  readonly riderMass: number;
  readonly riderHeight: number;
  readonly loadX: number;
  readonly loadY: number;
  readonly loadMass: number;
  readonly loadHeight: number;
}

/** A bike with its dials set, or the reason why these parts cannot make one. */
export function machine(bike: Bike, setup: Setup): Machine | NoPose {
  const front = tyreDiameter(setup.frontTyre);
  if (!front.ok) return noPose(front.reason, { end: 'front' });
  const rear = tyreDiameter(setup.rearTyre);
  if (!rear.ok) return noPose(rear.reason, { end: 'rear' });
  if (!teethPossible(setup.frontTeeth))
    return noPose('teethImpossible', { end: 'front', found: setup.frontTeeth });
  if (!teethPossible(setup.rearTeeth))
    return noPose('teethImpossible', { end: 'rear', found: setup.rearTeeth });
  const suspension = rearSuspension(bike.swingarm, setup.shockLength, setup.axlePosition);
  if (!suspension.ok) return suspension;
  const masses = [
    bike.frame.sprungMass,
    bike.frontWheel.unsprungMass,
    bike.rearWheel.unsprungMass,
    setup.riderMass,
    setup.loadMass,
  ];
  const least = Math.min(...masses);
  if (least < 0) return noPose('massNegative', { found: least, limit: 0 });
  const pitch = bike.drive.chainPitch;
  if (!pitchPossible(pitch))
    return noPose('chainPitchImpossible', {
      found: pitch,
      limit: pitch > MOST_PITCH ? MOST_PITCH : LEAST_PITCH,
    });
  const made: Machine = {
    ok: true,
    front: frontEnd(bike, setup),
    rear: suspension,
    frontRadius: front.value / 2,
    rearRadius: rear.value / 2,
    countershaftX: bike.frame.countershaft.x,
    countershaftY: bike.frame.countershaft.y,
    frontTeeth: setup.frontTeeth,
    rearTeeth: setup.rearTeeth,
    frontSprocketRadius: pitchRadius(setup.frontTeeth, pitch),
    rearSprocketRadius: pitchRadius(setup.rearTeeth, pitch),
    guideRadius: bike.frame.guideRadius,
    sprungMass: bike.frame.sprungMass,
    sprungX: bike.frame.sprungCentre.x,
    sprungY: bike.frame.sprungCentre.y,
    frontUnsprung: bike.frontWheel.unsprungMass,
    rearUnsprung: bike.rearWheel.unsprungMass,
    seatX: bike.frame.seat.x,
    seatY: bike.frame.seat.y,
    riderMass: setup.riderMass,
    riderHeight: setup.riderHeight,
    loadX: bike.frame.loadMark.x,
    loadY: bike.frame.loadMark.y,
    loadMass: setup.loadMass,
    loadHeight: setup.loadHeight,
  };
  const wrong = wrongNumber(made);
  if (wrong !== null) return noPose(wrong);
  const { guideRadius } = made;
  const limit = largestGuide(made);
  return guideRadius !== null && !(guideRadius >= 0 && guideRadius < limit)
    ? noPose('guideImpossible', { found: guideRadius, limit })
    : made;
}

/** The guide radius from which one sprocket would lie within the guide, so that no run could leave it, mm. */
function largestGuide({
  rear,
  countershaftX,
  countershaftY,
  frontSprocketRadius,
  rearSprocketRadius,
}: Machine): number {
  const front = Math.hypot(countershaftX, countershaftY) + frontSprocketRadius;
  return Math.min(front, rear.arm + rearSprocketRadius);
}

/** Beyond this no number belongs to a motorcycle, in mm, kg or radians, and far beyond it sums overflow. */
const LARGEST = 1e6;

/** Why some number in the part cannot be reckoned with; null when all can. */
function wrongNumber(part: object): 'inputNotANumber' | 'inputTooLarge' | null {
  for (const value of Object.values(part) as unknown[]) {
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) return 'inputNotANumber';
      if (Math.abs(value) > LARGEST) return 'inputTooLarge';
    } else if (typeof value === 'object' && value !== null) {
      const wrong = wrongNumber(value);
      if (wrong !== null) return wrong;
    }
  }
  return null;
}
