/** What the adjusters say: everything a mechanic can adjust without changing what the bike is. */
import type { Tyre } from '../parts/tyre.ts';

export interface Setup {
  /** Fork tube standing out above the top clamp, mm; more lowers the front. */
  readonly forkTubes: number;
  /** Extra length screwed onto the fork tops, mm; more lets the front stand higher. */
  readonly forkExtenders: number;
  /** Shock longer (+) or shorter (−) than as delivered, mm, eye to eye; longer raises the rear. */
  readonly shockLength: number;
  /** Shim between the frame and the shock's mount, mm; thicker raises the rear. */
  readonly shockMountShim: number;
  /** Rod of the rear links longer (+) or shorter (−) than as drawn, mm. */
  readonly linkLength: number;
  /** Swingarm pivot moved by an eccentric, mm, forward (+) and up (+). */
  readonly pivotForward: number;
  readonly pivotUp: number;
  /** Rate of one fork spring, N/mm; 0 when not known. */
  readonly forkSpringRate: number;
  /** How far a fork spring is pressed, topped out, mm. */
  readonly forkPreload: number;
  /** Rate of one shock's spring, N/mm; 0 when not known. */
  readonly shockSpringRate: number;
  readonly shockPreload: number;
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  /** Rear axle back from the front end of its slot, mm. */
  readonly axlePosition: number;
  /** The chain on the bike, in links: the axle stands where it puts it. Null: the axle stands where it is set. */
  readonly chainLinks: number | null;
  /** Play of that chain, mm up and down together at the middle of the lower run, the wheel hanging. */
  readonly chainSlack: number;
  /** Fork legs ahead of the steering axis, square to it, mm. */
  readonly clampOffset: number;
  /** Steering axis leaned further back (+) or stood up (−) by a head insert, degrees. */
  readonly headAngleCupsDeg: number;
  readonly frontTyre: Tyre;
  readonly rearTyre: Tyre;
  /** Fork travel used along the legs, mm, in the state "travel set by hand". */
  readonly frontTravelUsed: number;
  /** Rise of the rear axle from hanging, square to the ground with the frame held, mm, in the state "travel set by hand". */
  readonly rearTravelUsed: number;
  readonly riderMass: number;
  /** Rider's centre of gravity above the seat mark, square to the ground, mm. */
  readonly riderHeight: number;
  /**
   * Where the rider sits, forward (+) or back (−) of the seat mark along the frame's x axis, mm. Fixed to the frame: were
   * it level with the ground, pitching the bike would shift the rider without work, and no rest would be one of least energy.
   */
  readonly riderForward: number;
  readonly passengerMass: number;
  /** Passenger's centre of gravity above the passenger's seat, square to the ground, mm. */
  readonly passengerHeight: number;
  readonly fuelMass: number;
  readonly loadMass: number;
  /** Load's centre of gravity above the load mark, square to the ground, mm. */
  readonly loadHeight: number;
  /** Acceleration in the state "on the gas", g. */
  readonly gas: number;
  /** Deceleration in the state "on the brakes", g. */
  readonly brake: number;
  /** Part of the braking that the front wheel does, per cent. */
  readonly brakeFrontShare: number;
  /** Lean in the state "mid-corner", degrees from upright. */
  readonly leanDeg: number;
  /** Acceleration (+) or deceleration (−) in the state "mid-corner", g. */
  readonly cornerGas: number;
  /** Air's drag, N, and its height above the ground in the bike's plane, mm; in all moving states. */
  readonly dragForce: number;
  readonly dragHeight: number;
}

export type AdjusterKey = keyof Setup;
/** The adjusters whose value is a number. */
export type NumberAdjusterKey = Exclude<AdjusterKey, 'frontTyre' | 'rearTyre' | 'chainLinks'>;
