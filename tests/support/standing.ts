/** Bikes stood on the ground for tests, which stop with the reason when a bike has no pose. */
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { machine, type Machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance, type Travel } from '../../src/core/standing/stance.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { plainBike, plainSetup } from './plain-bike.ts';

export const TOPPED_OUT: Travel = { front: 0, rear: 0 };

export function made(bike: Bike = plainBike, setup: Setup = plainSetup): Machine {
  const result = machine(bike, setup);
  if (!result.ok) throw new Error(`These parts make no machine: ${JSON.stringify(result)}`);
  return result;
}

/** The bike on its wheels, topped out unless `travel` says otherwise. */
export function standing(
  bike: Bike = plainBike,
  setup: Setup = plainSetup,
  travel: Travel = TOPPED_OUT,
): Stance {
  const result = stance(made(bike, setup), travel);
  if (!result.ok) throw new Error(`This machine has no pose: ${JSON.stringify(result)}`);
  return result;
}

/** Numbers that may replace those of the plain bike's stance, for worked numbers of readings. */
export interface Instead extends Partial<Omit<Stance, 'ok' | 'machine' | 'pose' | 'rearAxle' | 'centre'>> {
  readonly machine?: Partial<Machine>;
  readonly pose?: Partial<Omit<Stance['pose'], 'pivot'>> & { readonly pivot?: Partial<Point> };
  readonly rearAxle?: Partial<Point>;
  readonly centre?: Partial<Point>;
}

/** The plain bike's stance with some numbers replaced, as a reading sees it. */
export function stanceWith({ machine: parts, pose, rearAxle, centre, ...rest }: Instead): Stance {
  const plain = standing();
  return {
    ...plain,
    ...rest,
    machine: { ...plain.machine, ...parts },
    pose: { ...plain.pose, ...pose, pivot: { ...plain.pose.pivot, ...pose?.pivot } },
    rearAxle: { ...plain.rearAxle, ...rearAxle },
    centre: { ...plain.centre, ...centre },
  };
}
