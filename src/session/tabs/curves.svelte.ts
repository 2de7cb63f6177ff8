/** The curves being looked at: which reading, against what, for which bikes, and the hand that moves along them. */
import type { AdjusterKey, NumberAdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { neutralAntiSquat } from '../../core/readings/neutral-anti-squat.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { readingsOf } from '../../words/worded-readings.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { rideTable } from '../../core/effects/ride-table.ts';
import { sweptTo, type Curve } from '../../core/effects/sweep.ts';
import { rideStateOf, RIDE_STATES, type RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { CURVE_AXES, nameAxis, type CurveAxis } from '../../curves/curve-axes.ts';
import { axisEnds, curveSet, evenCurve, type CurveSet, type CurveSource } from '../../curves/curve-set.ts';
import type { Band } from '../../words/kept/curve-words.ts';
import { MOST_BESIDE } from '../../curves/line-look.ts';
import type { SpreadBand } from '../../curves/spread-band.ts';
import { tableDeviations } from '../../core/springs/table-band.ts';
import type { BikeDocument, BikeWithSetup } from '../../document/document.ts';
import { setAdjuster, type Edited } from '../../document/edits.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Setups kept at most: their curves leave room for those of ride states. */
const MOST_KEPT = 4;
/** Digits kept of a place along an axis of travel, mm. */
const PLACE_DIGITS = 6;

/** Places along the axis at which a measured bike is asked for its ±, which bends far less than the curve. */
const SPREAD_PLACES = 13;
/** How long nothing has changed before it is asked, ms. */
const QUIET_MS = 300;
/** The readings whose ± a measured table of the rear travel tells by itself. */
const TABLE_FIGURES: Readonly<Record<string, 'ratio' | 'rate' | undefined>> = {
  motionRatio: 'ratio',
  rearWheelRate: 'rate',
};

/** A setup kept for comparison, for as long as the page is open. */
interface Kept extends BikeWithSetup {
  readonly name: string;
  readonly slot: number;
}

/** A further ride state in which the present bike is drawn. */
interface Further {
  readonly state: RideStateKey;
  readonly slot: number;
}

export class Curves {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #preferences: Workbench['preferences'];
  reading = $state.raw<Reading>(antiSquat);
  axis = $state.raw<CurveAxis>(CURVE_AXES[0]);
  kept = $state.raw<readonly Kept[]>([]);
  /** The ride states that are ticked, in the order in which they were; each line keeps its look until it goes. */
  further = $state.raw<readonly Further[]>([]);
  /** Whether the zones of the gas lie behind anti-squat. */
  zones = $state(true);
  #keptCount = 0;
  /** Where a hand has the bike on the curve, and in what it was read when the hand took it; null while none does. */
  #held: { readonly at: number; readonly state: RideStateKey; readonly cornerPart: number | null } | null =
    null;
  /** The target bands, by the reading's key; they belong to this sitting, as the question being looked into does. */
  bands = $state.raw<Readonly<Record<string, Band>>>({});
  readonly band: Band | null = $derived.by(() => this.bands[this.reading.key] ?? null);

  readonly axes: readonly CurveAxis[] = $derived.by(() =>
    CURVE_AXES.filter((axis) => axis.applies(this.#session.document.bike)),
  );

  /** The present bike as it is shown. */
  readonly #now: CurveSource | null = $derived.by(() => {
    const { live } = this.#standing;
    if (live === null) return null;
    const { bike, setup, stance, asked } = live;
    const read = asked.cornerPart === null ? rideStateOf(asked.state).label.toLowerCase() : 'corner sequence';
    const name = this.further.length === 0 ? 'Now' : `Now (${read})`;
    return { name, of: 'now', slot: null, bike, setup, state: asked.state, stance };
  });
  /** The same in each ride state that is ticked and is not the one it is shown in. */
  readonly #inStates: readonly CurveSource[] = $derived.by(() => {
    const now = this.#now;
    if (now === null || this.further.length === 0) return [];
    const table = rideTable(now.bike, now.setup, (state) => this.#standing.nearOf(state));
    return table.flatMap(({ state, found }): CurveSource[] => {
      const ticked = this.further.find((each) => each.state === state);
      return ticked === undefined || this.isShown(state)
        ? []
        : [{ ...now, name: rideStateOf(state).label, of: 'state', slot: ticked.slot, state, stance: found }];
    });
  });
  /** The baseline and those kept, in the present ride state. */
  readonly #besides: readonly CurveSource[] = $derived.by(() => {
    const { baseline } = this.#standing;
    const found: CurveSource[] = [];
    if (baseline !== null) {
      const { bike, setup, stance, asked } = baseline;
      found.push({ name: 'Baseline', of: 'baseline', slot: null, bike, setup, state: asked.state, stance });
    }
    for (const { name, slot, bike, setup } of this.kept) {
      const stood = this.#standing.stand({ bike, setup });
      const stance = 'stance' in stood ? stood.stance : stood;
      found.push({ name, of: 'kept', slot, bike, setup, state: this.#shownState, stance });
    }
    return found;
  });
  readonly #shownState: RideStateKey = $derived.by(
    () => this.#standing.live?.asked.state ?? this.#standing.state,
  );
  readonly #adjuster: NumberAdjusterKey | null = $derived.by(() => {
    const axis = this.axis.axis(this.#session.document);
    return axis.kind === 'adjuster' ? axis.adjuster : null;
  });
  readonly #bike = $derived.by(() => this.#now?.bike ?? null);
  // One by one, as plain numbers and one word, because those are compared by value.
  readonly #from = $derived.by(() => (this.#now === null ? 0 : axisEnds(this.axis, this.#now).from));
  readonly #to = $derived.by(() => (this.#now === null ? 0 : axisEnds(this.axis, this.#now).to));
  /** The adjusters that a sweep over an adjuster leaves as they are. */
  readonly #others: string = $derived.by(() => {
    if (this.#now === null || this.#adjuster === null) return '';
    return JSON.stringify({ ...this.#now.setup, [this.#adjuster]: 0 });
  });
  readonly #states: string = $derived.by(() =>
    this.#now === null ? '' : [this.#now, ...this.#inStates].map(({ state }) => state).join(),
  );
  /** Over an adjuster, the present bike swept in each of its states: while that adjuster itself turns nothing is swept anew. */
  readonly #overAdjuster: readonly (Curve | null)[] = $derived.by(() => {
    const bike = this.#bike;
    if (bike === null || this.#others === '') return [];
    const setup = JSON.parse(this.#others) as Setup;
    const states = RIDE_STATES.map(({ key }) => key).filter((key) => this.#states.split(',').includes(key));
    const ends = { from: this.#from, to: this.#to };
    return states.map((state) => evenCurve(this.reading, this.axis, ends, { bike, setup, state }));
  });
  readonly #besidesEven: readonly (Curve | null)[] = $derived.by(() => {
    const ends = { from: this.#from, to: this.#to };
    return this.#besides.map((source) => evenCurve(this.reading, this.axis, ends, source));
  });

  /** The computed neutral point along the axis, for the zones behind anti-squat; null where nothing is held against it. */
  readonly neutral: Curve | null = $derived.by(() => {
    if (this.reading.key !== antiSquat.key || !this.zones) return null;
    const ends = { from: this.#from, to: this.#to };
    if (this.#adjuster === null)
      return this.#now === null ? null : evenCurve(neutralAntiSquat, this.axis, ends, this.#now);
    const bike = this.#bike;
    if (bike === null || this.#others === '') return null;
    const setup = JSON.parse(this.#others) as Setup;
    return evenCurve(neutralAntiSquat, this.axis, ends, { bike, setup, state: this.#shownState });
  });

  readonly set: CurveSet | null = $derived.by(() => {
    const now = this.#now;
    if (now === null) return null;
    const ends = { from: this.#from, to: this.#to };
    const own = [now, ...this.#inStates];
    const states = RIDE_STATES.map(({ key }) => key).filter((key) => own.some(({ state }) => state === key));
    const evenOf = (source: CurveSource): Curve | null =>
      this.#adjuster === null
        ? evenCurve(this.reading, this.axis, ends, source)
        : this.#overAdjuster[states.indexOf(source.state)];
    const { kind } = this.#session.document.bike.drive;
    const reading = readingsOf(kind).find(({ key }) => key === this.reading.key) ?? this.reading;
    const axis = nameAxis(this.axis, kind);
    return curveSet(reading, axis, [now, ...this.#besides, ...this.#inStates], ends, [
      evenOf(now),
      ...this.#besidesEven,
      ...this.#inStates.map(evenOf),
    ]);
  });

  /** What a measured bike says of the present curve; null while it is worked out, and where nobody measured it. */
  #measuredSpread = $state.raw<SpreadBand | null>(null);
  /** How surely the present curve runs, by what was measured: the bike as a whole, or the table of its rear travel. */
  readonly spread: SpreadBand | null = $derived.by(() => this.#tableSpread ?? this.#measuredSpread);

  constructor({ session, standing, preferences }: Pick<Workbench, 'session' | 'standing' | 'preferences'>) {
    this.#session = session;
    this.#standing = standing;
    this.#preferences = preferences;
    $effect(() => {
      const ask = standing.bandAlong;
      const now = this.#now;
      const { key } = this.reading;
      const [x, places] = this.#spreadPlaces;
      this.#measuredSpread = null;
      if (ask === null || now === null || x.length === 0) return;
      let isStale = false;
      const timer = setTimeout(() => {
        void ask(key, now.state, places).then((u) => {
          if (!isStale && u !== null) this.#measuredSpread = { x, u };
        });
      }, QUIET_MS);
      return () => {
        isStale = true;
        clearTimeout(timer);
      };
    });
  }

  /** Where the present curve is asked for its ±, and how the bike is set there. */
  readonly #spreadPlaces = $derived.by(() => {
    const now = this.#now;
    const even = Array.from(
      { length: SPREAD_PLACES },
      (_, i) => this.#from + ((this.#to - this.#from) * i) / (SPREAD_PLACES - 1),
    );
    const whole = even.map(Math.round);
    const x = this.axis.quantity === 'teeth' ? whole.filter((at, i) => at !== whole[i - 1]) : even;
    if (now === null || !now.stance.ok) return [[], []] as const;
    const axis = this.axis.axis(now);
    const { travel } = now.stance;
    const places = x.map((at) => {
      const to = sweptTo(axis, at, now.setup, travel);
      return { setup: to.setup, travel: axis.kind === 'travel' ? to.travel : null };
    });
    return [x, places] as const;
  });

  readonly #tableSpread: SpreadBand | null = $derived.by(() => {
    const now = this.#now;
    const figure = TABLE_FIGURES[this.reading.key];
    if (!this.#preferences.data.plusMinus || figure === undefined || now === null || !now.stance.ok)
      return null;
    const axis = this.axis.axis(now);
    if (axis.kind !== 'travel' || axis.end === 'front') return null;
    const { machine, sprung = null } = now.stance;
    const [x] = this.#spreadPlaces;
    const u = tableDeviations(machine, now.bike.swingarm.travelTable, sprung, figure, x);
    return u === null ? null : { x, u };
  });

  /** Takes a reading by its key; an unknown key changes nothing. */
  chooseReading(key: string): void {
    this.reading = READINGS.find((reading) => reading.key === key) ?? this.reading;
  }

  /** Takes an axis by its key; the key of one that this bike does not have changes nothing. */
  chooseAxis(key: string): void {
    this.axis = this.axes.find((axis) => axis.key === key) ?? this.axis;
  }

  /** Anti-squat through the rear travel with its zones. */
  showZones(): void {
    this.chooseReading('antiSquat');
    this.chooseAxis('rearTravel');
    this.zones = true;
  }

  /** Whether a reader can still tell one more line apart. */
  get hasRoom(): boolean {
    return this.kept.length + this.further.length < MOST_BESIDE;
  }

  get canKeep(): boolean {
    return this.kept.length < MOST_KEPT && this.hasRoom;
  }

  /** Keeps the present setup, so that its curve stays beside later ones. */
  keep(): void {
    const { bike, setup } = this.#session.history.present;
    if (!this.canKeep) return;
    this.#keptCount += 1;
    this.kept = [...this.kept, { name: `Kept ${this.#keptCount}`, slot: this.#freeSlot(), bike, setup }];
  }

  isTicked(state: RideStateKey): boolean {
    return this.further.some((each) => each.state === state);
  }

  /** Whether the bike is shown in this state anyway, so that its line is the present one. */
  isShown(state: RideStateKey): boolean {
    return this.#standing.cornerPart === null && state === this.#shownState;
  }

  /** Draws the present bike in one more ride state, or in one less; with no look left for a line nothing changes. */
  tick(state: RideStateKey, ticked: boolean): void {
    const others = this.further.filter((each) => each.state !== state);
    if (!ticked) this.further = others;
    else if (this.hasRoom && !this.isTicked(state))
      this.further = [...others, { state, slot: this.#freeSlot() }];
  }

  #freeSlot(): number {
    const taken = [...this.kept, ...this.further].map(({ slot }) => slot);
    return Array.from({ length: MOST_BESIDE }, (_, i) => i).find((i) => !taken.includes(i)) ?? 0;
  }

  drop(name: string): void {
    this.kept = this.kept.filter((each) => each.name !== name);
  }

  setBand(band: Band | null): void {
    const { [this.reading.key]: _, ...rest } = this.bands;
    this.bands = band === null ? rest : { ...rest, [this.reading.key]: band };
  }

  /** Shows the bike at a place of the axis, without an undo entry. Over travel it is read travel set by hand. */
  moveTo(x: number): void {
    const edit = this.#editTo(x);
    if (edit === null) return;
    const { state, cornerPart } = this.#held ?? this.#standing;
    this.#held = { at: x, state, cornerPart };
    this.#readTravelByHand();
    this.#session.preview(edit);
  }

  /** Leaves the bike at a place of the axis, as one undo entry. */
  leaveAt(x: number): void {
    this.#held = null;
    const edit = this.#editTo(x);
    if (edit === null) return;
    this.#readTravelByHand();
    this.#session.commit(edit, nameAxis(this.axis, this.#session.document.bike.drive.kind).label);
  }

  /** The hand lets go, and the bike stays where it is. */
  release(): void {
    if (this.#held !== null) this.leaveAt(this.#held.at);
  }

  /** The bike goes back to where it was when a hand took hold of the curve; true when one held it. */
  cancel(): boolean {
    const from = this.#held;
    this.#held = null;
    if (from === null) return false;
    this.#session.cancel();
    if (from.state !== this.#standing.state) this.#standing.choose(from.state);
    if (from.cornerPart !== null) this.#standing.scrub(from.cornerPart);
    return true;
  }

  #readTravelByHand(): void {
    if (this.#overTravel && this.#standing.state !== 'travelByHand') this.#standing.choose('travelByHand');
  }

  get #overTravel(): boolean {
    return this.axis.axis(this.#session.document).kind === 'travel';
  }

  /** What sets the adjusters to a place of the axis. The end that is not varied keeps the travel at which it stands. */
  #editTo(x: number): ((from: BikeDocument) => Edited) | null {
    const { live } = this.#standing;
    if (live === null) return null;
    const axis = this.axis.axis(live);
    const to = sweptTo(axis, x, live.setup, live.stance.travel);
    const adjusters: readonly (readonly [NumberAdjusterKey, number])[] =
      axis.kind === 'adjuster'
        ? [[axis.adjuster, x]]
        : [
            ['frontTravelUsed', to.travel.front],
            ['rearTravelUsed', to.travel.rear],
          ];
    return (from) =>
      adjusters.reduce<Edited>((edited, [key, value]) => setNext(edited, key, value), {
        ok: true,
        value: from,
      });
  }
}

function setNext(edited: Edited, key: AdjusterKey, value: number): Edited {
  return edited.ok ? setAdjuster(edited.value, key, Number(value.toFixed(PLACE_DIGITS))) : edited;
}
