/** What the dials say: everything a mechanic can adjust without changing what the bike is. */
import type { Tyre } from './tyre.ts';

export interface Setup {
  /** Fork tube standing out above the top clamp, mm; more lowers the front. */
  readonly forkHeight: number;
  /** Extra length screwed onto the fork tops, mm; more lets the front stand higher. */
  readonly forkExtender: number;
  /** Shock longer (+) or shorter (−) than as delivered, mm, eye to eye; longer raises the rear. */
  readonly shockLength: number;
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  /** Rear axle back from the front end of its slot, mm. */
  readonly axlePosition: number;
  /** Fork legs ahead of the steering axis, square to it, mm. */
  readonly clampOffset: number;
  /** Steering axis leaned further back (+) or stood up (−) by a head insert, degrees. */
  readonly headInsertDeg: number;
  readonly frontTyre: Tyre;
  readonly rearTyre: Tyre;
  /** Fork travel used along the legs, mm, in the state "as dialled". */
  readonly frontTravelUsed: number;
  /** Rise of the rear axle from hanging, square to the ground with the frame held, mm, in the state "as dialled". */
  readonly rearTravelUsed: number;
  readonly riderMass: number;
  /** Rider's centre of gravity above the seat mark, square to the ground, mm. */
  readonly riderHeight: number;
  readonly loadMass: number;
  /** Load's centre of gravity above the load mark, square to the ground, mm. */
  readonly loadHeight: number;
}

export type DialKey = keyof Setup;
/** The dials whose value is a number. */
export type NumberDialKey = Exclude<DialKey, 'frontTyre' | 'rearTyre'>;
