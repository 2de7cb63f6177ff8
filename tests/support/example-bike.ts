/** The bike that a worked example describes, built from the example's words, and standing on its wheels. */
import type { Fork, Frame, Swingarm } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { ExampleWords } from './example-words.ts';
import { carrying, placedBike, withCountershaftAt, type Placed, type PlacedMass } from './placed-bike.ts';
import { withFork, withFrame, withSwingarm } from './plain-bike.ts';
import { standing } from './standing.ts';
import type { Given } from './worked-example.ts';

/**
 * What stands in where an example says nothing: a bike of usual size whose frame stands level, lengths in mm and
 * angles in degrees.
 */
const USUAL = { front: 300, rear: 320, wheelbase: 1400, rake: 24, offset: 30, pivot: { x: 400, y: 40 } };
/** Springs that hold any bike topped out, so that it stands as the example places it, N/mm and mm. */
const STIFF = { forkSpringRate: 100, forkPreload: 50, shockSpringRate: 500, shockPreload: 50 };
/** How far ahead of the pivot along a run the front sprocket lies, mm: the run is the same wherever it is. */
const ALONG = 80;

/** Throws when the example uses a word that is not known here, and when its bike does not stand. */
export function exampleBike(given: readonly Given[]): StandingBike {
  const words = new ExampleWords(given);
  const placed = withParts(onItsWheels(words), words);
  const onRuns = withPart(withRuns(withMasses(placed, words), words), words);
  const travel = { front: words.mm('fork travel used') ?? 0, rear: words.mm('rear travel used') ?? 0 };
  const setup: Setup = { ...onRuns.setup, frontTravelUsed: travel.front, rearTravelUsed: travel.rear };
  const engine = words.g('engine braking');
  const carried = words.has('mass') && setup.forkSpringRate > 0;
  const on =
    engine === undefined
      ? standBike(onRuns.bike, setup, carried ? 'riderUp' : 'travelByHand')
      : standBike(onRuns.bike, { ...setup, engineDeceleration: engine }, 'throttleClosed');
  if (!on.ok) throw new Error(on.reason);
  const lever = words.mm('shock lever');
  words.expectAllUsed();
  return lever === undefined ? on : { ...on, arm: { ...on.arm, lever } };
}

/** Wheels, steering and pivot where the example has them. */
function onItsWheels(words: ExampleWords): Placed {
  const frontRadius = words.mm('front wheel radius') ?? USUAL.front;
  const rearRadius = words.mm('rear wheel radius') ?? USUAL.rear;
  const rake = words.angle('rake') ?? words.angle('axis in the frame') ?? (USUAL.rake * Math.PI) / 180;
  const offset = words.mm('offset') ?? USUAL.offset;
  const pivot = pivotFromAxle(words, rearRadius);
  const apart = words.mm('axle distance');
  // On equal wheels the axles are as far apart as the patches; then each end gets its own wheel.
  if (apart !== undefined) {
    const { bike, setup } = placedBike({
      frontRadius: 300,
      rearRadius: 300,
      wheelbase: apart,
      rake,
      offset,
      pivot,
    });
    const tyre = (radius: number) => ({ diameter: 2 * radius });
    return { bike, setup: { ...setup, frontTyre: tyre(frontRadius), rearTyre: tyre(rearRadius) } };
  }
  const wheelbase = words.mm('wheelbase') ?? USUAL.wheelbase;
  const { bike, setup } = placedBike({ frontRadius, rearRadius, wheelbase, rake, offset, pivot });
  const down = words.angle('frame nose down');
  if (down === undefined) return { bike, setup };
  // A taller rear wheel tips the line through both axles, and the frame with it, by that angle.
  const axles = Math.hypot(wheelbase, frontRadius - rearRadius);
  const line = Math.asin((frontRadius - rearRadius) / axles) - down;
  return { bike, setup: { ...setup, rearTyre: { diameter: 2 * (frontRadius - axles * Math.sin(line)) } } };
}

function pivotFromAxle(words: ExampleWords, rearRadius: number): Point {
  const height = words.mm('pivot height');
  const ahead = words.mm('pivot ahead');
  const above = words.mm('pivot above the axle') ?? (height === undefined ? undefined : height - rearRadius);
  const length = words.mm('swingarm length');
  const fall = words.angle('swingarm angle');
  if (length !== undefined && fall !== undefined)
    return { x: length * Math.cos(fall), y: length * Math.sin(fall) };
  const y = above ?? USUAL.pivot.y;
  return { x: ahead ?? (length === undefined ? USUAL.pivot.x : Math.sqrt(length * length - y * y)), y };
}

/** Fork, swingarm, frame, tyres and teeth as the example has them. */
function withParts({ bike, setup }: Placed, words: ExampleWords): Placed {
  const fork = known<Partial<Fork>>({
    length: words.mm('legs below the top clamp'),
    travel: words.mm('fork travel'),
    leastHeight: words.mm('least fork tube above clamp'),
    lowerClampDepth: words.mm('lower clamp depth'),
  });
  const ratio = words.plain('stroke per travel');
  const wheelTravel = words.mm('rear travel');
  const most = wheelTravel ?? bike.swingarm.wheelTravel;
  const swingarm = known<Partial<Swingarm>>({
    wheelTravel,
    travelTable:
      ratio === undefined
        ? undefined
        : [0, most].map((travel) => ({ wheelTravel: travel, shockStroke: ratio * travel })),
  });
  const seatUp = words.mm('seat above the pivot');
  const shaftUp = words.mm('front sprocket above the pivot');
  const frame = known<Partial<Frame>>({
    guideRadius: words.mm('guide radius'),
    seat: seatUp === undefined ? undefined : { x: 0, y: seatUp },
    countershaft: shaftUp === undefined ? undefined : { ...bike.frame.countershaft, y: shaftUp },
  });
  const changes = known<Partial<Setup>>({
    forkTubes: words.mm('fork tubes above the clamp'),
    frontTyre: words.tyre('front tyre'),
    rearTyre: words.tyre('rear tyre'),
    frontTeeth: words.plain('front teeth'),
    rearTeeth: words.plain('rear teeth'),
    forkSpringRate: words.rate('fork spring rate'),
    shockSpringRate: words.rate('shock spring rate'),
    shockPreload: words.mm('shock preload'),
    chainSlack: words.mm('chain slack'),
  });
  const springs =
    'forkSpringRate' in changes || 'shockSpringRate' in changes || words.has('mass') ? STIFF : {};
  return {
    bike: withFork(withSwingarm(withFrame(bike, frame), swingarm), fork),
    setup: { ...setup, ...springs, ...changes },
  };
}

/** A part that may touch, and the treads of the tyres, where the example names them. */
function withPart({ bike, setup }: Placed, words: ExampleWords): Placed {
  const pivotHeight = standing(bike, setup).pose.pivot.y;
  const high = words.mm('part height');
  const below = words.mm('part below the pivot') ?? (high === undefined ? undefined : pivotHeight - high);
  if (below === undefined) return { bike, setup };
  const crownRadius = words.mm('crown radius') ?? null;
  const footrest = { x: 0, y: -below, halfWidth: words.mm('half width') ?? 0 };
  return {
    bike: {
      ...withFrame(bike, { touching: { ...bike.frame.touching, footrest } }),
      frontWheel: { ...bike.frontWheel, crownRadius },
      rearWheel: { ...bike.rearWheel, crownRadius },
    },
    setup,
  };
}

/** The masses that the example names: one on the frame and one above the seat, or one whole centre of gravity. */
function withMasses(placed: Placed, words: ExampleWords): Placed {
  const { wheelbase } = standing(placed.bike, placed.setup).pose;
  const slope = words.plain('load-transfer slope');
  const whole: PlacedMass = {
    mass: words.kg('mass') ?? 200,
    ahead: words.mm('centre ahead') ?? wheelbase / 2,
    high: words.mm('centre height') ?? (slope ?? 0.4) * wheelbase,
  };
  const two = ['first mass', 'second mass'].flatMap((name): PlacedMass[] => {
    const mass = words.kg(name);
    if (mass === undefined) return [];
    return [
      { mass, ahead: words.mm(`${name} ahead`) ?? whole.ahead, high: words.mm(`${name} high`) ?? whole.high },
    ];
  });
  if (two.length > 0) return carrying(placed, two);
  const rearUnsprung = words.kg('rear unsprung mass') ?? 0;
  const { rearAxle } = standing(placed.bike, placed.setup);
  const share = rearUnsprung / (whole.mass - rearUnsprung);
  const { bike, setup } = carrying(placed, [
    {
      mass: whole.mass - rearUnsprung,
      ahead: whole.ahead * (1 + share),
      high: whole.high + share * (whole.high - rearAxle.y),
    },
  ]);
  return { bike: { ...bike, rearWheel: { ...bike.rearWheel, unsprungMass: rearUnsprung } }, setup };
}

/** The countershaft where the example has it, or where a run passes the pivot as the example says. */
function withRuns(placed: Placed, words: ExampleWords): Placed {
  const on = standing(placed.bike, placed.setup);
  const fromAxle = {
    x: words.mm('front sprocket ahead of the axle'),
    y: words.mm('front sprocket above the axle'),
  };
  if (fromAxle.x !== undefined && fromAxle.y !== undefined)
    return withCountershaftAt(placed, on, { x: fromAxle.x, y: on.rearAxle.y + fromAxle.y });
  const above = words.mm('upper run above the pivot');
  if (above !== undefined) return withCountershaftAt(placed, on, shaftBelowRun(on, above));
  const below = words.mm('lower run below the pivot');
  return below === undefined ? placed : withCountershaftAt(placed, on, shaftAboveRun(on, below));
}

/** Where the front sprocket lies under an upper run that passes `lever` mm above the pivot. */
function shaftBelowRun(on: Stance, lever: number): Point {
  const { rearSprocketRadius, frontSprocketRadius } = on.machine;
  const angle = lineToPivot(on) - Math.asin((rearSprocketRadius - lever) / armLength(on));
  return besidePivot(on, angle, lever - frontSprocketRadius);
}

/** Where the front sprocket lies on a lower run that passes `lever` mm below the pivot. */
function shaftAboveRun(on: Stance, lever: number): Point {
  const { rearSprocketRadius, frontSprocketRadius } = on.machine;
  const angle = lineToPivot(on) + Math.asin((rearSprocketRadius - lever) / armLength(on));
  return besidePivot(on, angle, frontSprocketRadius - lever);
}

const lineToPivot = ({ pose, rearAxle }: Stance): number =>
  Math.atan2(pose.pivot.y - rearAxle.y, pose.pivot.x);
const armLength = ({ pose, rearAxle }: Stance): number => Math.hypot(pose.pivot.x, pose.pivot.y - rearAxle.y);

function besidePivot({ pose }: Stance, angle: number, aside: number): Point {
  return {
    x: pose.pivot.x + ALONG * Math.cos(angle) - aside * Math.sin(angle),
    y: pose.pivot.y + ALONG * Math.sin(angle) + aside * Math.cos(angle),
  };
}

/** The same without what the example does not say. */
function known<Part extends object>(part: { readonly [Key in keyof Part]: Part[Key] | undefined }): Part {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as Part;
}
