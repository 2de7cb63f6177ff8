/** Bikes built backwards: from where things stand on the ground to the bike that has them there. */
import { inFrame } from '../../src/core/chassis/pose.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Point } from '../../src/core/plane/point.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { plainBike, plainSetup, withFork, withFrame, withSwingarm } from './plain-bike.ts';
import { standing } from './standing.ts';

export interface Placed {
  readonly bike: Bike;
  readonly setup: Setup;
}

/** The plain bike's parts put on given axles and steering, level, topped out; lengths in mm. */
export interface Places {
  readonly rearRadius: number;
  readonly frontRadius: number;
  readonly wheelbase: number;
  /** Steering axis from vertical, radians, and the front axle ahead of it. */
  readonly rake: number;
  readonly offset: number;
  /** Pivot ahead of and above the rear axle; anywhere usual when it does not matter. */
  readonly pivot?: Point;
}

/** Fork length of placed bikes, mm: any will do. */
const FORK = 400;
/** Pivot of bikes that do not say where it is, from the rear axle, mm. */
const PIVOT = { x: 400, y: 40 };

export function placedBike(places: Places): Placed {
  const { pivot = PIVOT } = places;
  const axle = { x: places.wheelbase - pivot.x, y: places.frontRadius - places.rearRadius - pivot.y };
  const head = {
    x: axle.x - places.offset * Math.cos(places.rake) - FORK * Math.sin(places.rake),
    y: axle.y - places.offset * Math.sin(places.rake) + FORK * Math.cos(places.rake),
  };
  const framed = withFrame(plainBike, {
    steeringHead: head,
    axisAngleDeg: (places.rake * 180) / Math.PI,
    guideRadius: null,
  });
  const forked = withFork(framed, { length: FORK, travel: 100, axleLead: 0 });
  const bike = withSwingarm(forked, {
    length: Math.hypot(pivot.x, pivot.y),
    toppedOutAngleDeg: (Math.atan2(pivot.y, pivot.x) * 180) / Math.PI,
  });
  const setup: Setup = {
    ...plainSetup,
    forkTubes: 0,
    clampOffset: places.offset,
    frontTyre: { diameter: 2 * places.frontRadius },
    rearTyre: { diameter: 2 * places.rearRadius },
  };
  return { bike, setup };
}

/** A mass and where its centre stands, mm from the rear contact patch. */
export interface PlacedMass {
  readonly mass: number;
  readonly ahead: number;
  readonly high: number;
}

/** The same bike carrying one or two masses and nothing else: the first on the frame, the second as its rider. */
export function carrying({ bike, setup }: Placed, [first, rider]: readonly PlacedMass[]): Placed {
  const on = standing(bike, setup);
  const place = ({ ahead, high }: PlacedMass): Point => inFrame(on.pose, { x: ahead, y: high });
  const wheel = {
    rimDiameter: 400,
    unsprungMass: 0,
    tyreRate: null,
    tyreMeasuredUnder: 0,
    crownRadius: null,
  };
  return {
    bike: {
      ...withFrame(bike, {
        sprungMass: first.mass,
        sprungCentre: place(first),
        seat: rider === undefined ? bike.frame.seat : place(rider),
      }),
      frontWheel: wheel,
      rearWheel: wheel,
    },
    setup: { ...setup, riderMass: rider?.mass ?? 0, riderHeight: 0, loadMass: 0 },
  };
}

/** The same bike with its countershaft put elsewhere on the ground frame, topped out. */
export function withCountershaftAt({ bike, setup }: Placed, on: Stance, at: Point): Placed {
  return { bike: withFrame(bike, { countershaft: inFrame(on.pose, at) }), setup };
}
