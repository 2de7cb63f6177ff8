/** The bike on its wheels: live, as baseline and as before the last change, with every reading. */
import type { NoStand } from '../core/riding/no-stand.ts';
import type { Warned } from '../words/trouble/warning-words.ts';
import { readingsOf } from '../words/worded-readings.ts';
import type { Absent } from '../core/readings/absent.ts';
import { metricReading } from '../core/readings/metric-reading.ts';
import type { Reading } from '../core/readings/reading.ts';
import type { Bike } from '../core/parts/bike.ts';
import type { AdjusterKey, Setup } from '../core/adjusters/setup.ts';
import { adjusterToTurn } from '../core/riding/adjuster-to-turn.ts';
import { machine } from '../core/standing/machine.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { LoadCase } from '../core/riding/states/load-case.ts';
import {
  loadCase,
  rideStateOf,
  RIDE_STATES,
  type RideStateKey,
} from '../core/riding/states/all-ride-states.ts';
import { cornerSequenceCase } from '../core/riding/states/corner-sequence.ts';
import { standRide, type StandingBike } from '../core/riding/stand-bike.ts';
import type { Travel } from '../core/standing/stance.ts';
import type { BikeWithSetup } from '../document/document.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';

/** What a bike is read in until a state is chosen: topped out, a stiffer spring would change nothing. */
const FIRST_STATE: RideStateKey = 'riderUp';

/** Where a bike's trail is judged. */
const RESTED: RideStateKey = 'riderUp';

/** In which way a bike is read: in a state, or at a part of the corner sequence from braking to the exit, 0 to 1. */
interface Asked {
  readonly state: RideStateKey;
  readonly cornerPart: number | null;
}

/** A standing bike with what it was made of. */
export interface Stood extends BikeWithSetup {
  readonly asked: Asked;
  readonly stance: StandingBike;
}

/** The bikes that a drawing shows: the one in full, the baseline as its shadow, and why the first is not the present one. */
export interface DrawnBikes {
  readonly live: Stood | null;
  readonly baseline: Stood | null;
  readonly problem: NoStand | null;
}

/** A reading's number in the state in which the trade quotes it, while the bike is shown in another. */
export interface Quoted {
  readonly state: RideStateKey;
  readonly value: number | Absent;
}

/** A reading and its change with the ± of each, in words. */
export interface WithPlusMinus {
  readonly value: string;
  /** The ± of the reading alone, such as “± 4 mm”; null where it is not fixed. */
  readonly error: string | null;
  readonly change: string;
}

/** Standard deviations of a reading, by its key, in a ride state at places along a curve; null where it is not fixed. */
export type BandAlong = (
  reading: string,
  ride: RideStateKey,
  places: readonly { readonly setup: Setup; readonly travel: Travel | null }[],
) => Promise<readonly (number | null)[] | null>;

/** One reading ready to be shown: what it is, its number now and on the baseline. */
export interface ReadingRow {
  readonly reading: Reading;
  /** The metric number (mm, degrees, %, g), or why there is none. */
  readonly value: number | Absent;
  readonly baseline: number | Absent;
  /** Null where the bike is shown in that state, or cannot stand in it, or the trade quotes it in none. */
  readonly quoted: Quoted | null;
  /** What it is held against while accelerating; null in other ride states, and where it is held against nothing. */
  readonly neutral: number | null;
  /** Null where nobody measured the bike, or where its ± is not wanted. */
  readonly plusMinus: WithPlusMinus | null;
}

function caseOf({ state, cornerPart }: Asked, setup: Setup): LoadCase {
  return cornerPart === null ? loadCase(state, setup) : cornerSequenceCase(cornerPart, setup);
}

function stood({ bike, setup }: BikeWithSetup, asked: Asked, near?: Travel): Stood | NoStand {
  const made = machine(bike, setup);
  const found = made.ok ? standRide(made, caseOf(asked, setup), near) : made;
  return found.ok ? { bike, setup, asked, stance: found } : found;
}

function neutralOf({ heldAgainst, quantity }: Reading, { stance, asked }: Stood): number | null {
  if (heldAgainst === undefined || asked.state !== 'accelerating' || asked.cornerPart !== null) return null;
  const value = heldAgainst.read(stance);
  return typeof value === 'number' ? QUANTITIES[quantity].fromCore(value) : null;
}

function isStood(found: Stood | NoStand | null): found is Stood {
  return found !== null && 'stance' in found;
}

export class Standing {
  readonly #session: BikeSession;
  readonly #preferences: Pick<Preferences, 'data' | 'change'>;
  /** The bike as it was opened; plain data. */
  #asOpened = $state.raw<BikeWithSetup | null>(null);
  /** Whether parts are being placed: springs would move the bike under the hand, so it hangs meanwhile. */
  #isHung = $state(false);
  /** Whether a state was chosen since the bike was opened: from then on that one is shown, whether the bike stands in it or not. */
  #isChosen = $state(false);
  #cornerPart = $state<number | null>(null);
  /** The present bike as it was last stood, so that the picture need not stand it again; plain data, nothing derives from it. */
  #stoodNow: (BikeWithSetup & { readonly asked: Asked; readonly found: Stood | NoStand }) | null = null;
  /** Where each state came to rest last: looked at first, which is quick and stays on the same rest during a drag. */
  #near: Partial<Record<RideStateKey, Travel>> = {};
  #cornerNear: Travel | undefined;
  #opened = -1;
  /** The bike as it last stood, in whatever state: what is shown while the present one cannot. */
  #lastStood = $state.raw<Stood | null>(null);

  readonly #wanted: RideStateKey = $derived.by(
    () => RIDE_STATES.find(({ key }) => key === this.#preferences.data.rideState)?.key ?? FIRST_STATE,
  );
  /** The ride state that is chosen; while the corner sequence goes on, the one to come back to. */
  readonly state: RideStateKey = $derived.by(() => {
    const state = this.#isWantedShown() ? this.#wanted : 'toppedOut';
    return this.#isHung && rideStateOf(state).springsCarry ? 'toppedOut' : state;
  });

  // Read one by one, so that what did not change is not stood again while something else is dragged.
  readonly #bike = $derived.by(() => this.#session.newest.bike);
  readonly #setup = $derived.by(() => this.#session.newest.setup);
  readonly #baselineOf = $derived.by(() => this.#session.newest.baseline);

  readonly #found: Stood | NoStand = $derived.by(() => this.stand({ bike: this.#bike, setup: this.#setup }));
  readonly #problem: NoStand | null = $derived(isStood(this.#found) ? null : this.#found);
  readonly #toppedOut: Stood | NoStand = $derived.by(() =>
    stood({ bike: this.#bike, setup: this.#setup }, { state: 'toppedOut', cornerPart: null }),
  );
  /** The bike to show: the present one; while it has no pose the last that stood; then it as it hangs. */
  readonly #own: Stood | null = $derived.by(() => {
    if (isStood(this.#found)) return this.#found;
    return this.#lastStood ?? (isStood(this.#toppedOut) ? this.#toppedOut : null);
  });
  // The baseline is read in the way in which the bike that is shown is read, or the two could not be compared.
  readonly #shownState = $derived.by(() => this.#own?.asked.state ?? this.state);
  readonly #shownCornerPart = $derived.by(() =>
    this.#own === null ? this.#cornerPart : this.#own.asked.cornerPart,
  );
  readonly #baseline: Stood | NoStand = $derived.by(() =>
    stood(this.#baselineOf, { state: this.#shownState, cornerPart: this.#shownCornerPart }),
  );
  readonly baseline: Stood | null = $derived(isStood(this.#baseline) ? this.#baseline : null);
  readonly #live: Stood | null = $derived(this.#own ?? this.baseline);
  /** The bikes as a hand has them this moment: what is drawn. */
  readonly now: DrawnBikes;
  /** The bike to show, at the pace of figures and words; the baseline when the present one never stood. */
  readonly live: Stood | null = $derived.by(() => this.#session.pace.of(() => this.#live));
  /** Why the present bike has no pose, at the same pace; null when it stands. */
  readonly problem: NoStand | null = $derived.by(() => this.#session.pace.of(() => this.#problem));
  /** The bike before the last change; null when there was none, or it did not stand. */
  readonly before: Stood | null = $derived.by(() => {
    const { before } = this.#session;
    const found = before === null ? null : this.stand(before);
    return isStood(found) ? found : null;
  });
  /** Where on the corner sequence from braking to the exit the bike is read, 0 to 1; null while it is read in its state. */
  readonly cornerPart: number | null = $derived(this.#cornerPart);
  /** The bike, setup and ride state to stand now. */
  readonly ride: LoadCase = $derived.by(() => caseOf(this.#asked(), this.#session.document.setup));

  /** Whether going one step back may help: the bike stood before the last change, or its parts cannot meet at all. */
  readonly undoHelps: boolean = $derived.by(
    () => this.#session.canUndo && (this.before !== null || !isStood(this.#toppedOut)),
  );
  /** The adjuster whose value stands in the way; null when nothing does, or no adjuster's value. */
  readonly adjusterInTheWay: AdjusterKey | null = $derived.by(() =>
    this.problem === null ? null : adjusterToTurn(this.problem, this.ride, this.#session.document.setup),
  );

  /** The bike of which a rider may have to be warned, as it stands and as its trail is judged; null while it does not stand. */
  readonly warned: Warned | null = $derived.by(() => {
    const { live, problem } = this;
    if (live === null || problem !== null) return null;
    const { bike, setup, stance, asked } = live;
    if (asked.cornerPart === null && asked.state === RESTED) return { bike, setup, stance, rested: stance };
    const found = stood(live, { state: RESTED, cornerPart: null }, this.#near[RESTED]);
    return { bike, setup, stance, rested: isStood(found) ? found.stance : stance };
  });

  /** Adds the ± to a reading; set once the part of the page that works it out has come. */
  plusMinus = $state.raw<((reading: Reading, value: number | Absent) => WithPlusMinus | null) | null>(null);

  /** Asks how surely a curve of the measured bike runs, by its standard deviation at places; set likewise. */
  bandAlong = $state.raw<BandAlong | null>(null);

  /**
   * Asks how sure all readings of the bike on the page are in all ride states, with its adjusters set so: standard
   * deviations by state and key. Null while it is not a measured bike; set likewise.
   */
  spreadsByState = $state.raw<
    ((setup: Setup) => Promise<Readonly<Record<string, Readonly<Record<string, number>>>> | null>) | null
  >(null);

  readonly rows: readonly ReadingRow[] = $derived.by(() => {
    const { live, baseline } = this;
    if (live === null) return [];
    return readingsOf(live.bike.drive.kind).map((reading) => {
      const value = metricReading(reading, live.stance);
      return {
        reading,
        value,
        baseline: baseline === null ? value : metricReading(reading, baseline.stance),
        quoted: this.#quoted(reading, live),
        neutral: neutralOf(reading, live),
        plusMinus: this.plusMinus?.(reading, value) ?? null,
      };
    });
  });

  constructor(session: BikeSession, preferences: Pick<Preferences, 'data' | 'change'>) {
    this.#session = session;
    this.#preferences = preferences;
    const live = (): Stood | null => this.#live;
    const baseline = (): Stood | null => this.baseline;
    const problem = (): NoStand | null => this.#problem;
    this.now = {
      get live() {
        return live();
      },
      get baseline() {
        return baseline();
      },
      get problem() {
        return problem();
      },
    };
    const { bike, setup } = session.document;
    this.#asOpened = { bike, setup };
    session.listen({ shown: (document) => this.#settle(document) });
  }

  /** Hangs the bike while parts are placed, or lets it back into the state it was read in; a state chosen meanwhile stays. */
  hang(hung: boolean): void {
    if (this.#isHung === hung) return;
    this.#isHung = hung;
    this.#settle(this.#session.newest);
  }

  /** Reads the bike in a ride state; the corner sequence, if it goes on, ends. */
  choose(state: RideStateKey): void {
    this.#isChosen = true;
    this.#isHung = false;
    this.#preferences.change({ rideState: state });
    this.#cornerPart = null;
    this.#settle(this.#session.newest);
  }

  /** Reads the bike at a part of the corner sequence, 0 to 1; null goes back to the state chosen. */
  scrub(part: number | null): void {
    this.#cornerPart = part === null ? null : Math.min(1, Math.max(0, part));
    this.#settle(this.#session.newest);
  }

  /** A bike as it stands in the present ride state, or why it does not. */
  stand(asSet: BikeWithSetup): Stood | NoStand {
    const now = this.#stoodNow;
    const asked = this.#asked();
    const { state, cornerPart } = asked;
    if (
      now?.bike === asSet.bike &&
      now.setup === asSet.setup &&
      now.asked.state === state &&
      now.asked.cornerPart === cornerPart
    )
      return now.found;
    return stood(asSet, asked, cornerPart === null ? this.#near[state] : this.#cornerNear);
  }

  /** A bike with a setup as it stands in the present ride state; null where it does not. */
  standWith(bike: Bike, setup: Setup): StandingBike | null {
    const found = this.stand({ bike, setup });
    return isStood(found) ? found.stance : null;
  }

  /** Where a state of this bike came to rest last; undefined when it never did. */
  nearOf(state: RideStateKey): Travel | undefined {
    return this.#near[state];
  }

  /** Stands a bike that is shown from now on, and remembers where it came to rest. */
  #settle(document: BikeWithSetup): void {
    if (this.#opened !== this.#session.opened) {
      this.#opened = this.#session.opened;
      this.#stoodNow = null;
      this.#near = {};
      this.#cornerNear = undefined;
      this.#lastStood = null;
      this.#isChosen = false;
      this.#asOpened = { bike: document.bike, setup: document.setup };
    }
    const { bike, setup } = document;
    const asked = this.#asked();
    const found = this.stand(document);
    this.#stoodNow = { bike, setup, asked, found };
    if (!isStood(found)) return;
    this.#lastStood = found;
    if (asked.cornerPart === null) this.#near[asked.state] = found.stance.travel;
    else this.#cornerNear = found.stance.travel;
  }

  /** A bike that cannot stand in the state chosen for another bike is opened hanging. */
  #isWantedShown(): boolean {
    if (this.#isChosen || this.#asOpened === null) return true;
    return isStood(stood(this.#asOpened, { state: this.#wanted, cornerPart: null }));
  }

  #quoted(reading: Reading, { bike, setup, asked }: Stood): Quoted | null {
    const state = reading.quotedIn;
    if (state === undefined || (asked.cornerPart === null && asked.state === state)) return null;
    const found = stood({ bike, setup }, { state, cornerPart: null });
    return isStood(found) ? { state, value: metricReading(reading, found.stance) } : null;
  }

  #asked(): Asked {
    return { state: this.state, cornerPart: this.#cornerPart };
  }
}
