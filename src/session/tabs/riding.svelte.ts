/** The bike in all its ride states at once: the table, what the rider's hands do to it, and the ghosts on the side view. */
import * as ghostDrawing from '../../scene/ghost-drawing.ts';
import { rideFigures, rideTable, type RideFigures, type RideRow } from '../../core/effects/ride-table.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { riderEffects, type RiderEffects } from '../../core/riding/rider-effects.ts';
import {
  loadCase,
  rideStateOf,
  RIDE_STATES,
  type RideStateKey,
} from '../../core/riding/states/all-ride-states.ts';
import type { SprungMachine } from '../../core/springs/sprung-machine.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { adjusterToTurn } from '../../core/riding/adjuster-to-turn.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { AdjusterKey } from '../../core/adjusters/setup.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** One row of the table: figures, or why the bike does not settle in this state. */
export interface RidingRow {
  readonly name: string;
  /** Null for the place of the corner sequence, which is no state. */
  readonly state: RideStateKey | null;
  readonly figures: RideFigures | null;
  readonly problem: NoStand | null;
  /** The adjuster whose value is in the way there; null when none is. */
  readonly adjusterInTheWay: AdjusterKey | null;
  /** The baseline's figures in the same state; null when it does not settle. */
  readonly baseline: RideFigures | null;
  /** Whether the bike is read in it now. */
  readonly present: boolean;
}

/** An outline to draw quietly beside the present bike. */
export interface GhostBike {
  readonly name: string;
  readonly bike: Bike;
  readonly stance: StandingBike;
}

export class Riding {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  /** The states whose outlines are shown beside the present bike. */
  ghosts = $state.raw<readonly RideStateKey[]>([]);

  readonly #bike = $derived.by(() => this.#session.document.bike);
  readonly #setup = $derived.by(() => this.#session.document.setup);
  readonly #baselineOf = $derived.by(() => this.#session.document.baseline);

  readonly #table: readonly RideRow[] = $derived.by(() =>
    rideTable(this.#bike, this.#setup, (state) => this.#standing.nearOf(state)),
  );
  readonly #baselineTable: readonly RideRow[] = $derived.by(() =>
    rideTable(this.#baselineOf.bike, this.#baselineOf.setup),
  );

  /** All states; during the corner sequence the place that it has reached comes first. */
  readonly rows: readonly RidingRow[] = $derived.by(() => {
    const { state: chosen, cornerPart } = this.#standing;
    const rows = RIDE_STATES.map(({ key: state, label }) =>
      this.#row(
        label,
        state,
        foundIn(this.#table, state),
        standingIn(this.#baselineTable, state),
        cornerPart === null && state === chosen,
      ),
    );
    if (cornerPart === null) return rows;
    const { live, problem, baseline } = this.#standing;
    const found = problem ?? live?.stance ?? null;
    return [this.#row('Corner sequence', null, found, baseline?.stance ?? null, true), ...rows];
  });

  /** The present bike on its springs, or why it has none. */
  readonly #sprung: SprungMachine | NoStand | null = $derived.by(() => {
    for (const { found } of this.#table) if (found.ok && found.sprung !== undefined) return found.sprung;
    const refused = foundIn(this.#table, 'riderUp');
    return refused === null || refused.ok ? null : refused;
  });
  /** Sag, squat, dive and limits of the present bike; null when it is on no springs. */
  readonly effects: { readonly sprung: SprungMachine; readonly found: RiderEffects } | null = $derived.by(
    () => {
      const sprung = this.#sprung;
      return sprung?.ok === true ? { sprung, found: riderEffects(sprung, this.#setup) } : null;
    },
  );
  /** The same of the baseline. */
  readonly baselineEffects: RiderEffects | null = $derived.by(() => {
    for (const { found } of this.#baselineTable)
      if (found.ok && found.sprung !== undefined) return riderEffects(found.sprung, this.#baselineOf.setup);
    return null;
  });
  /** Why the present bike is on no springs; null when it is. */
  readonly noSprings: NoStand | null = $derived.by(() => {
    const sprung = this.#sprung;
    return sprung === null || sprung.ok ? null : sprung;
  });

  /** The states to outline without the one drawn in full, as one word, so that a comparison shows whether they changed. */
  readonly #outlined: string = $derived.by(() => {
    const { state: chosen, cornerPart } = this.#standing;
    return RIDE_STATES.map(({ key }) => key)
      .filter((state) => this.ghosts.includes(state) && !(cornerPart === null && state === chosen))
      .join();
  });
  /** The outlines wanted, in the order of the states, of those in which the bike stands. */
  readonly ghostBikes: readonly GhostBike[] = $derived.by(() => {
    if (this.#outlined === '') return [];
    const outlined = this.#outlined.split(',');
    return this.#table.flatMap(({ state, found }) =>
      found.ok && outlined.includes(state)
        ? [{ name: rideStateOf(state).label, bike: this.#bike, stance: found }]
        : [],
    );
  });

  constructor({ session, standing, drawing }: Pick<Workbench, 'session' | 'standing' | 'drawing'>) {
    this.#session = session;
    this.#standing = standing;
    drawing.drawGhosts = ghostDrawing;
    drawing.ghosts = () => this.ghostBikes;
  }

  /** Shows a state's outline beside the present bike, or takes it away. */
  showGhost(state: RideStateKey, shown: boolean): void {
    const others = this.ghosts.filter((each) => each !== state);
    this.ghosts = shown ? [...others, state] : others;
  }

  #row(
    name: string,
    state: RideStateKey | null,
    found: StandingBike | NoStand | null,
    baseline: StandingBike | null,
    present: boolean,
  ): RidingRow {
    const problem = found === null || found.ok ? null : found;
    const ride = state === null ? this.#standing.ride : loadCase(state, this.#setup);
    return {
      name,
      state,
      figures: found?.ok === true ? rideFigures(found) : null,
      problem,
      adjusterInTheWay: problem === null ? null : adjusterToTurn(problem, ride, this.#setup),
      baseline: baseline === null ? null : rideFigures(baseline),
      present,
    };
  }
}

function foundIn(table: readonly RideRow[], state: RideStateKey): StandingBike | NoStand | null {
  return table.find((row) => row.state === state)?.found ?? null;
}

function standingIn(table: readonly RideRow[], state: RideStateKey): StandingBike | null {
  const found = foundIn(table, state);
  return found?.ok === true ? found : null;
}
