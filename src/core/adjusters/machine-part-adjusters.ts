/** Which adjusters each part of a machine follows from. */
import type { AdjusterKey, Setup } from './setup.ts';

/** An eccentric pivot, which every place on the frame is seen from. */
const PIVOT = ['pivotForward', 'pivotUp'] as const;

/** After these, shock and links are solved anew. */
export const LINK_ADJUSTERS = [...PIVOT, 'linkLength', 'shockMountShim', 'shockLength'] as const;

/** The springs, by end. */
export const SPRING_ADJUSTERS = {
  fork: ['forkSpringRate', 'forkPreload', 'forkAirGap', 'forkAirPressure'],
  shock: ['shockSpringRate', 'shockPreload', 'shockAirGap', 'shockAirPressure'],
} as const;

/**
 * The adjusters of each part. What makes a part is given these alone, so code that reads another one does not compile; and
 * a search, which keeps a part while its adjusters stay, needs no list of its own.
 */
export const MACHINE_PART_ADJUSTERS = {
  fixed: [],
  front: [...PIVOT, 'headAngleCupsDeg', 'clampOffset', 'forkExtenders', 'forkTubes'],
  rear: [...LINK_ADJUSTERS, 'axlePosition'],
  onFrame: [
    ...PIVOT,
    'riderForward',
    'riderMass',
    'riderHeight',
    'passengerMass',
    'passengerHeight',
    'fuelMass',
    'loadMass',
    'loadHeight',
  ],
  wheels: ['frontTyre', 'rearTyre'],
  onSprockets: ['frontTeeth', 'rearTeeth', 'chainSlack', 'chainLinks'],
  springs: [...SPRING_ADJUSTERS.fork, ...SPRING_ADJUSTERS.shock],
} as const satisfies Readonly<Record<string, readonly AdjusterKey[]>>;

export type MachinePartKey = keyof typeof MACHINE_PART_ADJUSTERS;

/** Of a setup, what one part of a machine follows from. */
export type PartSetup<Key extends MachinePartKey> = Pick<Setup, (typeof MACHINE_PART_ADJUSTERS)[Key][number]>;

/** How far an eccentric holds the pivot from where it is drawn, mm. */
export type PivotMove = Pick<Setup, (typeof PIVOT)[number]>;
