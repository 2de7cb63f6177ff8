/** What a motorcycle is made of: everything that stays as it is when a mechanic turns the adjusters. */

/**
 * A place fixed to the main frame: mm from the swingarm pivot, x forward, y up, as the frame stood when it was
 * measured. Any steady choice of axes gives the same readings.
 */
export interface FramePoint {
  readonly x: number;
  readonly y: number;
}

/** One row of the rear suspension's table, mm: how far the axle has risen, and how far the shock is pushed in. */
export interface TravelRow {
  readonly wheelTravel: number;
  readonly shockStroke: number;
}

export interface Frame {
  /** Where the steering axis passes through the top of the upper fork clamp. */
  readonly steeringHead: FramePoint;
  /** Lean of the steering axis back from the frame's y axis, degrees, without any head insert. */
  readonly axisAngleDeg: number;
  /** Length of the frame's head tube along the axis, mm; a head insert tilts the axis about its middle. */
  readonly headTubeLength: number;
  readonly countershaft: FramePoint;
  /** Centre of gravity of everything the springs carry, without rider and load. */
  readonly sprungCentre: FramePoint;
  readonly sprungMass: number;
  /** Where the rider's weight meets the seat. */
  readonly seat: FramePoint;
  /** Where passenger or luggage rests. */
  readonly loadMark: FramePoint;
  /** Radius about the pivot at which a chain lying on the guide has its pitch line, mm; null without a guide. */
  readonly guideRadius: number | null;
}

export interface Fork {
  /** Axle to the top of the tube along the legs, topped out, mm. */
  readonly length: number;
  readonly travel: number;
  /** Axle ahead of the leg's centre line, square to the legs, mm. */
  readonly axleLead: number;
  /** Legs steeper (+) or flatter (−) than the steering axis, degrees; 0 on almost every motorcycle. */
  readonly legAngleDeg: number;
}

export interface Swingarm {
  /** Pivot to axle with the axle at the front end of its slot, mm. */
  readonly length: number;
  /** How far the axle can move back in its slot, mm. */
  readonly slot: number;
  /** Line pivot → axle below the frame's x axis, degrees, hanging, axle at the slot's front, shock as delivered. */
  readonly toppedOutAngleDeg: number;
  /** Rise of the axle from hanging to bottomed, square to the ground with the frame held, mm. */
  readonly wheelTravel: number;
  /**
   * Rear suspension as a table, from (0, 0) upward. Wheel travel is that of the axle square to the ground
   * with the frame held as measured and the axle at the front end of its slot.
   */
  readonly travelTable: readonly TravelRow[];
  /** Nose-up pitch of the frame's axes against the ground while the table was measured, degrees; mostly 0. */
  readonly tablePitchDeg: number;
  /** How far one turn of the shock's length adjuster moves it, mm; null when it has no thread. */
  readonly shockThread: number | null;
}

export interface Wheel {
  /** Bead diameter of the rim, mm (17 in is 431.8). */
  readonly rimDiameter: number;
  /** Unsprung mass that moves with this axle, kg. */
  readonly unsprungMass: number;
}

/** Shaft, belt and hub drives come beside this kind. */
export interface ChainDrive {
  readonly kind: 'chain';
  /** Chain pitch, mm: 15.875 for 5xx chains, 12.7 for 4xx (ISO 606). */
  readonly chainPitch: number;
}

/** How the bodywork is drawn; changes no number. */
export type Bodywork = 'faired' | 'naked' | 'offRoad';

export interface Bike {
  readonly name: string;
  /** Free words of the owner. */
  readonly about: string;
  /** True for the demonstration bikes, whose figures are made up. */
  readonly invented: boolean;
  readonly bodywork: Bodywork;
  readonly frame: Frame;
  readonly fork: Fork;
  readonly swingarm: Swingarm;
  readonly frontWheel: Wheel;
  readonly rearWheel: Wheel;
  readonly drive: ChainDrive;
}
