/** A bike from its weigh-in: its whole mass and centre, and what its springs carry, as saved. */
import { refuse } from '../numeric/refusal.ts';
import type { Bike } from '../parts/bike.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { onGround } from '../chassis/pose.ts';
import { asStored } from '../chassis/pivot-move.ts';
import type { Setup } from '../adjusters/setup.ts';
import { sprungFromWhole } from '../riding/loads.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { NoStand } from '../riding/no-stand.ts';
import { rideStateOf, type RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import type { Stance } from '../standing/stance.ts';
import { weighIn, type WeighedCentre, type WeighIn } from './weigh-in.ts';

export interface WeighedBike {
  readonly ok: true;
  /** As it was weighed, with the fuel that was in it. */
  readonly whole: WeighedCentre;
  /** Part of the whole on the front wheel with both wheels level, per cent. */
  readonly frontShare: number;
  /** Without fuel, kg, with its centre in frame coordinates as they are saved. */
  readonly sprungMass: number;
  readonly sprungCentre: FramePoint;
  /** The bike as it was held, with that mass and centre and the fuel of the weighing. */
  readonly on: Stance;
}

/** Travel that changes by less than this from one round to the next has settled, mm. */
const SETTLED = 1e-9;
/** The travel depends on the centre only through the lean of the fork, so a few rounds are enough. */
const MOST_TURNS = 60;

/**
 * Mass and centre of what the springs carry, without rider, load and fuel, from a weigh-in with nobody and nothing on
 * the bike, `fuel` kg in its tank, and both ends held as in the ride state `held`. `given` makes the weigh-in from
 * the bike as it stands, because lengths that nobody measured are those of the bike. A bike that sags by its own
 * weight is found together with its mass, so its former mass does not matter. No answer when the weigh-in has none,
 * the centre is not between the axles or below the ground, fuel and unsprung parts weigh as much as the whole, or the
 * bike does not stand.
 */
export function weighedBike(
  bike: Bike,
  setup: Setup,
  held: RideStateKey,
  fuel: number,
  given: (on: Stance) => WeighIn,
): WeighedBike | NoStand {
  const asSet: Setup = { ...setup, fuelMass: fuel };
  let on = standBike(bike, asSet, rideStateOf(held).springsCarry ? 'toppedOut' : held);
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    if (!on.ok) return on;
    const found = weighedOn(on, asSet, given(on));
    if (!found.ok) return found;
    const { sprungMass, sprungCentre } = found;
    const weighed: Bike = { ...bike, frame: { ...bike.frame, sprungMass, sprungCentre } };
    const next = standBike(weighed, asSet, held, on.travel);
    if (!next.ok) return next;
    const moved = Math.max(
      Math.abs(next.travel.front - on.travel.front),
      Math.abs(next.travel.rear - on.travel.rear),
    );
    if (moved <= SETTLED) return { ...found, on: next };
    on = next;
  }
  return refuse('notConverged');
}

/** No motorcycle has its centre below half of a wheel's radius. Common practice, no source. */
const LOWEST_PER_RADIUS = 0.5;
/** Nor above so much of its wheelbase: a tall one has it at half, and would tip over its front wheel there. */
const HIGHEST_PER_WHEELBASE = 0.75;

/** The lowest and the highest centre of gravity that a motorcycle can have without its rider, mm above the ground. */
function heightsPossible({ wheelbase, frontRadius, rearRadius }: WeighIn): readonly [number, number] {
  return [
    LOWEST_PER_RADIUS * Math.min(frontRadius.value, rearRadius.value),
    HIGHEST_PER_WHEELBASE * wheelbase.value,
  ];
}

function weighedOn(on: Stance, setup: Setup, given: WeighIn): WeighedBike | NoEquilibrium {
  const whole = weighIn(given);
  if (!whole.ok) return whole;
  const { mass, x, y } = whole;
  if (!(x > 0)) return refuse('massBehindRearAxle');
  if (!(x < given.wheelbase.value)) return refuse('massAheadOfFrontAxle');
  const [lowest, highest] = heightsPossible(given);
  if (!(y >= lowest)) return refuse('centreHeightImpossible', { found: y, limit: lowest });
  if (!(y <= highest)) return refuse('centreHeightImpossible', { found: y, limit: highest });
  const { pose, machine } = on;
  const fuel = setup.fuelMass;
  if (!(fuel < mass)) return refuse('fuelTooHeavy', { found: fuel, limit: mass });
  const tank = onGround(pose, machine.places.tank);
  const dry = mass - fuel;
  const sprung = sprungFromWhole(on, dry, (mass * x - fuel * tank.x) / dry, (mass * y - fuel * tank.y) / dry);
  if (!sprung.ok) return sprung;
  return {
    ok: true,
    whole,
    frontShare: (100 * given.front.value) / mass,
    sprungMass: sprung.mass,
    sprungCentre: asStored(sprung.centre, setup),
    on,
  };
}
