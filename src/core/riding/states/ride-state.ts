/** What a ride state is: a way in which a bike is held and loaded while it is read. */
import type { Setup } from '../../adjusters/setup.ts';
import type { LoadCase } from './load-case.ts';

/** The rows of states from which a person chooses, in their order. */
export const RIDE_GROUPS = ['standing', 'riding', 'given'] as const;
export type RideGroup = (typeof RIDE_GROUPS)[number];

export interface RideState {
  /** The same word as in the file's name, the code, the JSON output and saved choices. */
  readonly key: string;
  /** The key it had until lately, still written for one version. */
  readonly formerly?: string;
  readonly label: string;
  /** Standing on the springs, ridden on them, or at a travel that the springs do not settle. */
  readonly group: RideGroup;
  /** Whether the springs carry the bike, so that there is no answer without their rates. */
  readonly springsCarry: boolean;
  /** What the adjusters say of it. */
  readonly loadCase: (setup: Setup) => LoadCase;
  /** Its place in the corner sequence, 0 where that begins to 1 where it ends; left out where it is no part of that. */
  readonly cornerPart?: number;
  /** How the suspension is held when a bike is weighed in it, in words; left out where nobody weighs a bike so. */
  readonly weighed?: string;
}
