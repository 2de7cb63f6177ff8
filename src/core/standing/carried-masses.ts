/** What the frame carries on its springs: each mass and the place where it weighs on the frame. */
import type { PartSetup } from '../adjusters/machine-part-adjusters.ts';
import type { FramePlaces } from '../parts/frame-places.ts';
import type { FramePoint } from '../parts/frame-point.ts';

export interface CarriedMass {
  readonly key: 'sprung' | 'rider' | 'passenger' | 'fuel' | 'load' | 'swingarm';
  /** kg. */
  readonly mass: number;
  /** Where it weighs on the frame, frame coordinates, mm. */
  readonly at: FramePoint;
  /** Its centre of gravity above that place, square to the ground, mm. */
  readonly height: number;
  /** Whether it comes aboard to ride; all else stays on the empty bike. */
  readonly aboard: boolean;
}

/**
 * The bike above its springs, rider, passenger, fuel and luggage, kg and mm. `places` are those of the frame as seen
 * from the pivot as it stands. The rider sits as far forward of the seat mark as the setup says, along the frame's x
 * axis.
 */
export function carriedMasses(
  sprungMass: number,
  setup: PartSetup<'onFrame'>,
  places: FramePlaces,
): readonly CarriedMass[] {
  const { seat, sprungCentre, passengerSeat, tank, loadMark } = places;
  const { riderForward, riderMass, riderHeight, passengerMass, passengerHeight } = setup;
  const { fuelMass, loadMass, loadHeight } = setup;
  const rider = { x: seat.x + riderForward, y: seat.y };
  return [
    { key: 'sprung', mass: sprungMass, at: sprungCentre, height: 0, aboard: false },
    { key: 'rider', mass: riderMass, at: rider, height: riderHeight, aboard: true },
    { key: 'passenger', mass: passengerMass, at: passengerSeat, height: passengerHeight, aboard: true },
    { key: 'fuel', mass: fuelMass, at: tank, height: 0, aboard: false },
    { key: 'load', mass: loadMass, at: loadMark, height: loadHeight, aboard: true },
  ];
}
