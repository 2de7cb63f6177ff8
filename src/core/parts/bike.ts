/** What a motorcycle is made of: everything that stays as it is when a mechanic turns the adjusters. */

import type { DriveKind } from './drive-kind.ts';
import type { FramePlaces } from './frame-places.ts';
import type { FramePoint } from './frame-point.ts';
import type { LinkLayout, TravelRow } from './rear-layout.ts';
import type { OtherLeg, Support } from './support.ts';
import type { TouchPlaces } from './touch-parts.ts';

export interface Frame extends FramePlaces {
  /** Where the steering axis passes through the top of the upper fork clamp. */
  readonly steeringHead: FramePoint;
  /** Lean of the steering axis back from the frame's y axis, degrees, without head-angle cups. */
  readonly axisAngleDeg: number;
  /** Length of the frame's head tube along the axis, mm; head-angle cups tilt the axis about its middle. */
  readonly headTubeLength: number;
  readonly sprungMass: number;
  /** Radius about the pivot at which a chain lying on the guide has its pitch line, mm; null without a guide. */
  readonly guideRadius: number | null;
  /** The same below the pivot, for the lower run with the throttle closed; null when it is as large as the upper's. */
  readonly lowerGuideRadius: number | null;
  /** Parts that may touch the ground. */
  readonly touching: TouchPlaces;
}

/** What works beside the coil spring at one end of the bike, in one leg or one shock, as a mechanic writes it down. */
export interface SpringEnds {
  /** How far the spring can be pressed before its coils touch, mm; null when not known. */
  readonly springTravel: number | null;
  /** How far one turn of the preload adjuster moves it, mm; null when it has no thread. */
  readonly preloadThread: number | null;
  /** Preload with the adjuster turned all the way in, mm; null when not known. */
  readonly mostPreload: number | null;
  /** How much of the travel, from full extension, a top-out spring works in, mm; null without one. */
  readonly topOutLength: number | null;
  /** Rate of the top-out spring, N/mm. */
  readonly topOutRate: number;
  /** Travel or stroke used at which oil lock or bump stop begins, mm; null without one. */
  readonly bumpStart: number | null;
  /** Its force when pressed all the way, over its depth then, N/mm. */
  readonly bumpRate: number;
  /** 1 for a straight rate; more stiffens toward the end: force as depth to this power. */
  readonly bumpExponent: number;
}

export interface Fork {
  /** Axle to the top of the tube along the legs, topped out, mm. */
  readonly length: number;
  readonly travel: number;
  /** Axle ahead of the leg's centre line, square to the legs, mm. */
  readonly axleLead: number;
  /** Legs steeper (+) or flatter (−) than the steering axis, degrees; 0 on almost every motorcycle. */
  readonly legAngleDeg: number;
  /** Legs that hold a spring: 2, or 1 where the other leg only damps. */
  readonly springLegs: number;
  readonly ends: SpringEnds;
  /** What holds a leg up; null for a spring with one rate whose air is not counted. */
  readonly support: Support | null;
  /** Null while both legs are alike; with one `springLegs` says nothing. */
  readonly otherLeg: OtherLeg | null;
  /**
   * Least tube above the top clamp with which both clamps still hold enough, mm, by the maker's manual; null when not
   * known.
   */
  readonly leastHeight: number | null;
  /** Top of the upper clamp down to the underside of the lower one, along the legs, mm; null when not known. */
  readonly lowerClampDepth: number | null;
}

export interface Shock {
  /** Shocks that share the load: 1, or 2 side by side. */
  readonly count: number;
  readonly ends: SpringEnds;
  /** What holds a shock up; null for a spring with one rate. */
  readonly support: Support | null;
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
  /** The arm with all that is bolted to it, without wheel, brake and sprocket, kg; 0 where its share is counted with the wheel. */
  readonly mass: number;
  /** Its centre of gravity, mm: from the pivot toward the axle, and square above that line. */
  readonly centreAlong: number;
  readonly centreAbove: number;
  /** Shock and links as drawn; they stand in for the table. Null where only the table is known. */
  readonly links: LinkLayout | null;
}

/** What holds the rear brake's caliper. */
export interface RearBrakeMount {
  /**
   * Bolted to the swingarm, on a bracket about the axle that a stay holds to the frame, or to the housing of a shaft.
   */
  readonly caliper: 'onArm' | 'ownStay' | 'onHousing';
  /** Where the stay is bolted to the frame; this and what follows count with a stay only. */
  readonly stayAnchor: FramePoint;
  /** Rear axle to where the stay is bolted to the bracket, mm. */
  readonly bracketRadius: number;
  /** Bolt to bolt, mm. */
  readonly stayLength: number;
  /** On which side of the line from axle to anchor the bracket's bolt lies. */
  readonly bracketSide: 'above' | 'below';
}

/** What holds the housing of a shaft drive, with the bevel gears about the rear axle. */
export interface HousingMount {
  /** Fixed to the swingarm; or free to turn about the axle, held by an arm pinned to housing and frame. */
  readonly heldBy: 'swingarm' | 'torqueArm';
  /** Where the torque arm is bolted to the frame; this and what follows count with a torque arm only. */
  readonly armAnchor: FramePoint;
  /** Rear axle to where the torque arm is bolted to the housing, mm. */
  readonly boltRadius: number;
  /** Bolt to bolt, mm. */
  readonly armLength: number;
  /** On which side of the line from axle to anchor the housing's bolt lies. */
  readonly boltSide: 'above' | 'below';
}

export interface Wheel {
  /** Bead diameter of the rim, mm (17 in is 431.8). */
  readonly rimDiameter: number;
  /** Unsprung mass that moves with this axle, kg. */
  readonly unsprungMass: number;
  /** Radial rate of the tyre, load over sink, N/mm; null for a tyre that does not give. */
  readonly tyreRate: number | null;
  /** Weight that lay on the wheel while the tyre's size was measured, kg; 0 for a wheel off the ground. */
  readonly tyreMeasuredUnder: number;
  /** Radius of the tread across the tyre, mm; null when not known: then half of the width that its size code says. */
  readonly crownRadius: number | null;
}

export interface Drive {
  /**
   * By where the driving torque is held: chain and toothed belt pull at a distance from the pivot; a shaft's housing is
   * held by the swingarm or by a torque arm, and a hub's motor by the swingarm.
   */
  readonly kind: DriveKind;
  /** Pitch of chain or belt, mm: 15.875 for 5xx chains, 12.7 for 4xx (ISO 606). */
  readonly chainPitch: number;
  /** Whether one half link may be put into the chain, so that odd counts can be joined. */
  readonly halfLink: boolean;
  /** Fewest teeth of a front sprocket that goes over the countershaft. */
  readonly leastFrontTeeth: number;
  /** Crankshaft turns for one of the gearbox's input shaft; null when not known. */
  readonly primaryRatio: number | null;
  /** Input shaft turns for one of the countershaft, first gear first; empty when not known. */
  readonly gearRatios: readonly number[];
  /**
   * The chain as measured, pin to pin and pulled tight: over how many links, and mm; null while nobody has measured.
   */
  readonly measuredLinks: number;
  readonly measuredLength: number | null;
  /** Per cent longer than new at which the maker calls it worn out; null when not known. */
  readonly wearLimit: number | null;
  /** Slack to keep where the chain is tightest, mm up and down together. */
  readonly leastSlack: number;
}

/** How the bodywork is drawn; changes no number. */
export type Bodywork = 'faired' | 'naked' | 'offRoad';

export interface Bike {
  readonly name: string;
  /** The owner's notes. */
  readonly about: string;
  /** True for the demonstration bikes, whose figures are made up. */
  readonly invented: boolean;
  readonly bodywork: Bodywork;
  readonly frame: Frame;
  readonly fork: Fork;
  readonly swingarm: Swingarm;
  readonly shock: Shock;
  readonly rearBrake: RearBrakeMount;
  readonly housing: HousingMount;
  readonly frontWheel: Wheel;
  readonly rearWheel: Wheel;
  readonly drive: Drive;
}
