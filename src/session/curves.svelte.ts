/** The curves being looked at: which reading, against what, for which bikes, and the hand that moves along them. */
import type { DialKey, NumberDialKey } from '../core/chassis/setup.ts';
import { antiSquat } from '../core/readings/anti-squat.ts';
import { driveWords } from '../core/drive/drive-words.ts';
import { READINGS, readingsOf } from '../core/readings/all-readings.ts';
import type { Reading } from '../core/readings/reading.ts';
import { sweptTo } from '../core/effects/sweep.ts';
import { RIDE_STATE_WORDS, type RideState } from '../core/springs/ride-state.ts';
import { CURVE_AXES, type CurveAxis } from '../curves/curve-axes.ts';
import { curveSet, type CurveSet, type CurveSource } from '../curves/curve-set.ts';
import type { Band } from '../curves/curve-words.ts';
import type { BikeDocument, Dialled } from '../document/document.ts';
import { setDial, type Edited } from '../document/edits.ts';
import type { Announcer } from './announcer.svelte.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Standing, Stood } from './standing.svelte.ts';

/** More curves than these cannot be told apart. */
const MOST_KEPT = 4;
/** Digits kept of a place along an axis of travel, mm. */
const PLACE_DIGITS = 6;

/** A setup kept for comparison, for as long as the page is open. */
interface Kept extends Dialled {
  readonly name: string;
}

export class Curves {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #announcer: Announcer;
  reading = $state.raw<Reading>(antiSquat);
  axis = $state.raw<CurveAxis>(CURVE_AXES[0]);
  kept = $state.raw<readonly Kept[]>([]);
  /** A further ride state in which the present bike is drawn; over a dial it settles there. */
  alsoIn = $state<RideState | null>(null);
  /** Whether the zones of the gas lie behind anti-squat. */
  zones = $state(true);
  #keptCount = 0;
  /** The target bands, by the reading's key; they belong to this sitting, as the question being looked into does. */
  bands = $state.raw<Readonly<Record<string, Band>>>({});
  readonly band: Band | null = $derived.by(() => this.bands[this.reading.key] ?? null);

  readonly axes: readonly CurveAxis[] = $derived.by(() =>
    CURVE_AXES.filter((axis) => axis.applies(this.#session.document.bike)),
  );

  readonly set: CurveSet | null = $derived.by(() => {
    const { live, baseline } = this.#standing;
    if (live === null) return null;
    const { state } = live.asked;
    const now: CurveSource = { name: 'Now', of: 'now', state, ...partsOf(live) };
    const sources: [CurveSource, ...CurveSource[]] = [now];
    if (baseline !== null) sources.push({ name: 'Baseline', of: 'baseline', state, ...partsOf(baseline) });
    for (const { name, bike, setup } of this.kept) {
      const stood = this.#standing.stand({ bike, setup });
      if ('stance' in stood) sources.push({ name, of: 'kept', state, ...partsOf(stood) });
    }
    if (this.alsoIn !== null && this.alsoIn !== state)
      sources.push({ ...now, name: RIDE_STATE_WORDS[this.alsoIn], of: 'kept', state: this.alsoIn });
    const { kind } = this.#session.document.bike.drive;
    const reading = readingsOf(kind).find(({ key }) => key === this.reading.key) ?? this.reading;
    return curveSet(reading, { ...this.axis, label: driveWords(this.axis.label, kind) }, sources);
  });

  constructor(session: BikeSession, standing: Standing, announcer: Announcer) {
    this.#session = session;
    this.#standing = standing;
    this.#announcer = announcer;
  }

  /** Takes a reading by its key; one that there is not changes nothing. */
  chooseReading(key: string): void {
    this.reading = READINGS.find((reading) => reading.key === key) ?? this.reading;
  }

  /** Takes an axis by its key; one that this bike has not changes nothing. */
  chooseAxis(key: string): void {
    this.axis = this.axes.find((axis) => axis.key === key) ?? this.axis;
  }

  /** Anti-squat through the rear travel with its zones. */
  showZones(): void {
    this.chooseReading('antiSquat');
    this.chooseAxis('rearTravel');
    this.zones = true;
  }

  get canKeep(): boolean {
    return this.kept.length < MOST_KEPT;
  }

  /** Keeps the present setup, so that its curve stays beside later ones. */
  keep(): void {
    const { bike, setup } = this.#session.history.present;
    if (!this.canKeep) return;
    this.#keptCount += 1;
    this.kept = [...this.kept, { name: `Kept ${this.#keptCount}`, bike, setup }];
  }

  drop(name: string): void {
    this.kept = this.kept.filter((each) => each.name !== name);
  }

  setBand(band: Band | null): void {
    const { [this.reading.key]: _, ...rest } = this.bands;
    this.bands = band === null ? rest : { ...rest, [this.reading.key]: band };
  }

  /** Shows the bike at a place of the axis, without an undo entry. Over travel it is read as dialled. */
  moveTo(x: number): void {
    const edit = this.#editTo(x);
    if (edit === null) return;
    if (this.#overTravel && this.#standing.state !== 'asDialled') this.#standing.choose('asDialled');
    this.#session.preview(edit);
    this.#announcer.moved(performance.now());
  }

  /** Leaves the bike at a place of the axis, as one undo entry. */
  leaveAt(x: number): void {
    const edit = this.#editTo(x);
    if (edit === null) return;
    if (this.#overTravel && this.#standing.state !== 'asDialled') this.#standing.choose('asDialled');
    this.#session.commit(edit, driveWords(this.axis.label, this.#session.document.bike.drive.kind));
    this.#announcer.settled(performance.now());
  }

  cancel(): void {
    this.#session.cancel();
  }

  get #overTravel(): boolean {
    return this.axis.axis(this.#session.document.bike).kind === 'travel';
  }

  /** What sets the dials to a place of the axis. The end that is not varied keeps the travel at which it stands. */
  #editTo(x: number): ((from: BikeDocument) => Edited) | null {
    const { live } = this.#standing;
    if (live === null) return null;
    const axis = this.axis.axis(live.bike);
    const to = sweptTo(axis, x, live.setup, live.stance.travel);
    const dials: readonly (readonly [NumberDialKey, number])[] =
      axis.kind === 'dial'
        ? [[axis.dial, x]]
        : [
            ['frontTravelUsed', to.travel.front],
            ['rearTravelUsed', to.travel.rear],
          ];
    return (from) =>
      dials.reduce<Edited>((edited, [key, value]) => setNext(edited, key, value), { ok: true, value: from });
  }
}

function setNext(edited: Edited, key: DialKey, value: number): Edited {
  return edited.ok ? setDial(edited.value, key, Number(value.toFixed(PLACE_DIGITS))) : edited;
}

function partsOf({ bike, setup, stance }: Stood): Pick<CurveSource, 'bike' | 'setup' | 'stance'> {
  return { bike, setup, stance };
}
