/** The weigh-in on the page: what was read and measured, what it says of the bike, and saving that as one edit. */
import type { Bike } from '../../core/parts/bike.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { weighedBike, type WeighedBike } from '../../core/weighing/weighed-bike.ts';
import type { Measured, WeighIn } from '../../core/weighing/weigh-in.ts';
import type {
  OwnLength,
  UnlikeLength,
  WeighedEnd,
  WeighedKey,
} from '../../core/weighing/weigh-in-figures.ts';
import { setBikeField, type Edited } from '../../document/edits.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

const TO_READ: readonly WeighedKey[] = ['front', 'rear', 'lift', 'raisedReading'];
const OWN_LENGTHS: readonly OwnLength[] = ['wheelbase', 'frontRadius', 'rearRadius'];
/**
 * Every uncertainty on the page is the one within which the true value lies 19 times out of 20: twice the standard
 * uncertainty (JCGM 100, k = 2), in what is typed as in what comes out.
 */
const COVERAGE = 2;
/** What a bathroom scale and a tape are good for, until the user says otherwise. */
const FIRST_SCALE_ERROR = 0.5;
const FIRST_LENGTH_ERROR = 2;
/** A height known no better than this is worth a better weighing, mm. */
const POOR_HEIGHT = 25;
/** Decimals kept of mass and centre: rounding far below what anyone can weigh. */
const KEPT_DECIMALS = 7;

function rounded(value: number): number {
  return Number(value.toFixed(KEPT_DECIMALS));
}

function otherEnd(end: WeighedEnd): WeighedEnd {
  return end === 'front' ? 'rear' : 'front';
}

export class Weighing {
  readonly #session: BikeSession;

  /** Scale readings in kg and the lift in mm. Zero is none yet: a scale that carries a wheel shows more. */
  readonly figures = $state<Record<WeighedKey, number>>({ front: 0, rear: 0, lift: 0, raisedReading: 0 });
  first = $state<WeighIn['first']>('wheelsLevel');
  raised = $state<WeighedEnd>('rear');
  /** Whose scale was read with the axle raised. */
  read = $state<WeighedEnd>('front');
  held = $state<RideStateKey>('noRider');
  /** Lengths as measured, mm; null for the bike's own. */
  readonly typed = $state<Record<OwnLength, number | null>>({
    wheelbase: null,
    frontRadius: null,
    rearRadius: null,
  });
  /** Fuel in the tank, kg; null for what its adjuster says. */
  typedFuel = $state<number | null>(null);
  /** Within which the true value lies 19 times out of 20, kg and mm. */
  scaleError = $state(FIRST_SCALE_ERROR);
  lengthError = $state(FIRST_LENGTH_ERROR);

  /** The committed bike: while a hand drags, the weigh-in waits. */
  readonly #asSet = $derived.by(() => this.#session.history.present);
  readonly fuel: number = $derived.by(() => this.typedFuel ?? this.#asSet.setup.fuelMass);
  /** The first figure that is still to be read; null when all are there. */
  readonly missing: WeighedKey | null = $derived(TO_READ.find((key) => this.figures[key] === 0) ?? null);
  /** What the weigh-in says, or why it says nothing; null while a figure is missing. */
  readonly outcome: WeighedBike | NoStand | null = $derived.by(() => {
    if (this.missing !== null) return null;
    const { bike, setup } = this.#asSet;
    return weighedBike(bike, setup, this.held, this.fuel, (on) => this.#given(on));
  });
  /** The bike as it was held, for its own lengths; null while it cannot stand so. */
  readonly on: Stance | null = $derived.by(() => {
    const { outcome } = this;
    if (outcome !== null && outcome.ok) return outcome.on;
    const { bike, setup } = this.#asSet;
    const asSet = { ...setup, fuelMass: this.fuel };
    const held = standBike(bike, asSet, this.held);
    if (held.ok) return held;
    const hanging = standBike(bike, asSet, 'toppedOut');
    return hanging.ok ? hanging : null;
  });
  /** The lengths that are reckoned with, mm: as measured, else the bike's own; null without a bike. */
  readonly lengths: Readonly<Record<OwnLength, number>> | null = $derived.by(() =>
    this.on === null ? null : this.#lengthsOf(this.on),
  );
  /** Lengths that differ from the bike's own by more than a tape is likely to be off. */
  readonly unlike: readonly UnlikeLength[] = $derived.by(() => {
    if (this.on === null) return [];
    const own = ownLengths(this.on);
    return OWN_LENGTHS.flatMap((key) => {
      const measured = this.typed[key];
      if (measured === null || Math.abs(measured - own[key]) <= this.lengthError) return [];
      return [{ key, measured, own: own[key] }];
    });
  });
  /** Uncertainties of what comes out, 19 times out of 20, kg and mm; null without an outcome. */
  readonly errors: { readonly mass: number; readonly x: number; readonly y: number } | null = $derived.by(
    () => {
      const { outcome } = this;
      if (outcome === null || !outcome.ok) return null;
      const { massUncertainty, xUncertainty, yUncertainty } = outcome.whole;
      return { mass: COVERAGE * massUncertainty, x: COVERAGE * xUncertainty, y: COVERAGE * yUncertainty };
    },
  );
  /** Whether the height is known so badly that weighing anew is worth the trouble. */
  readonly heightPoor: boolean = $derived.by(() => this.errors !== null && this.errors.y > POOR_HEIGHT);
  /** Whether the bike has this mass and this centre already. */
  readonly isUsed: boolean = $derived.by(() => {
    const { outcome } = this;
    if (outcome === null || !outcome.ok) return false;
    const { frame } = this.#asSet.bike;
    const { mass, centre } = kept(outcome);
    return (
      frame.sprungMass === mass && frame.sprungCentre.x === centre.x && frame.sprungCentre.y === centre.y
    );
  });

  constructor({ session }: Pick<Workbench, 'session'>) {
    this.#session = session;
    session.listen({ opened: () => this.clear() });
  }

  /** The axle that was raised; the scale under the other wheel is the one that stays where it was. */
  raise(end: WeighedEnd): void {
    this.raised = end;
    this.read = otherEnd(end);
  }

  /** Forgets the lengths measured: the bike's own count again. */
  takeOwnLengths(): void {
    for (const key of OWN_LENGTHS) this.typed[key] = null;
  }

  /** Saves what the weigh-in says as the bike's mass and centre, as one entry of the history. */
  use(label: string): void {
    const { outcome } = this;
    if (outcome === null || !outcome.ok) return;
    const { mass, centre } = kept(outcome);
    this.#session.commit((from): Edited => {
      const heavy = setBikeField(from, 'frame.sprungMass', mass);
      return heavy.ok ? setBikeField(heavy.value, 'frame.sprungCentre', { ...centre }) : heavy;
    }, label);
  }

  /** Another bike has another weight: what was read and measured of this one is forgotten. */
  clear(): void {
    for (const key of TO_READ) this.figures[key] = 0;
    this.takeOwnLengths();
    this.typedFuel = null;
  }

  #lengthsOf(on: Stance): Record<OwnLength, number> {
    const own = ownLengths(on);
    const lengthOf = (key: OwnLength): number => this.typed[key] ?? own[key];
    return {
      wheelbase: lengthOf('wheelbase'),
      frontRadius: lengthOf('frontRadius'),
      rearRadius: lengthOf('rearRadius'),
    };
  }

  #given(on: Stance): WeighIn {
    const { wheelbase, frontRadius, rearRadius } = this.#lengthsOf(on);
    const { front, rear, lift, raisedReading } = this.figures;
    const weight = (value: number): Measured => ({ value, uncertainty: this.scaleError / COVERAGE });
    const length = (value: number): Measured => ({ value, uncertainty: this.lengthError / COVERAGE });
    return {
      wheelbase: length(wheelbase),
      frontRadius: length(frontRadius),
      rearRadius: length(rearRadius),
      front: weight(front),
      rear: weight(rear),
      first: this.first,
      lift: length(lift),
      raised: this.raised,
      raisedReading: weight(raisedReading),
      read: this.read,
    };
  }
}

function ownLengths({ pose, machine }: Stance): Record<OwnLength, number> {
  return {
    wheelbase: pose.wheelbase,
    frontRadius: machine.frontRadius,
    rearRadius: machine.rearRadius,
  };
}

function kept({ sprungMass, sprungCentre }: WeighedBike): {
  readonly mass: number;
  readonly centre: Bike['frame']['sprungCentre'];
} {
  return {
    mass: rounded(sprungMass),
    centre: { x: rounded(sprungCentre.x), y: rounded(sprungCentre.y) },
  };
}
