/** The bike on its wheels: live, as baseline and as before the last change, with every reading and the reasons. */
import type { NoStand } from '../core/springs/no-stand.ts';
import { why, type Why } from '../core/effects/why.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { AbsentReason, Reading } from '../core/readings/reading.ts';
import type { RideState } from '../core/springs/ride-state.ts';
import { standBike, type StandingBike } from '../core/springs/stand-bike.ts';
import { QUANTITIES } from '../core/units/quantity.ts';
import type { Dialled } from '../document/document.ts';
import type { BikeSession } from './bike-session.svelte.ts';

/** A standing bike with what it was made of. */
export interface Stood extends Dialled {
  readonly stance: StandingBike;
}

/** One reading now and on the baseline, in metric numbers. */
export interface ReadingRow {
  readonly reading: Reading;
  readonly value: number | AbsentReason;
  readonly baseline: number | AbsentReason;
}

function stood({ bike, setup }: Dialled, state: RideState): Stood | NoStand {
  const found = standBike(bike, setup, state);
  return found.ok ? { bike, setup, stance: found } : found;
}

function isStood(found: Stood | NoStand | null): found is Stood {
  return found !== null && 'stance' in found;
}

/** A reading in its metric number. */
function metric(reading: Reading, stance: StandingBike): number | AbsentReason {
  const value = reading.read(stance);
  return typeof value === 'number' ? QUANTITIES[reading.quantity].fromCore(value) : value;
}

export class Standing {
  readonly #session: BikeSession;
  state = $state<RideState>('toppedOut');
  readonly #found: Stood | NoStand = $derived.by(() => stood(this.#session.document, this.state));
  /** Why the present bike has no pose; null when it stands. */
  readonly problem: NoStand | null = $derived(isStood(this.#found) ? null : this.#found);
  readonly #baseline: Stood | NoStand = $derived.by(() => stood(this.#session.document.baseline, this.state));
  readonly baseline: Stood | null = $derived(isStood(this.#baseline) ? this.#baseline : null);
  readonly #lastStanding: Stood | null = $derived.by(() => {
    const { lastStanding } = this.#session;
    const found = lastStanding === null ? null : stood(lastStanding, this.state);
    return isStood(found) ? found : null;
  });
  /** The bike to show: the present one; while it has no pose the last one that stood; then the baseline. */
  readonly live: Stood | null = $derived(
    isStood(this.#found) ? this.#found : (this.#lastStanding ?? this.baseline),
  );
  readonly #before: Stood | null = $derived.by(() => {
    const { before } = this.#session;
    const found = before === null ? null : stood(before, this.state);
    return isStood(found) ? found : null;
  });

  readonly rows: readonly ReadingRow[] = $derived.by(() => {
    const { live, baseline } = this;
    if (live === null) return [];
    return READINGS.map((reading) => {
      const value = metric(reading, live.stance);
      return { reading, value, baseline: baseline === null ? value : metric(reading, baseline.stance) };
    });
  });

  /** What the last change did; null when there was none, or either side does not stand. */
  readonly sinceLast: Why | null = $derived(
    this.#before !== null && this.problem === null && this.live !== null
      ? why(this.#before.stance, this.live.stance)
      : null,
  );
  /** What all changes since the baseline did together. */
  readonly sinceBaseline: Why | null = $derived(
    this.baseline !== null && this.problem === null && this.live !== null
      ? why(this.baseline.stance, this.live.stance)
      : null,
  );

  constructor(session: BikeSession) {
    this.#session = session;
    session.rememberStanding((document) => isStood(stood(document, this.state)));
  }
}
