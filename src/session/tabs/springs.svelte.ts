/** Spring help: the sags wanted at both ends, the springs that give them, and the best of the rates at hand. */
import { onForkRate, onShockRate } from '../../core/adjusters/definition/fitting.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { machine } from '../../core/standing/machine.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { sag, type Sag } from '../../core/riding/ride-changes.ts';
import {
  pickRate,
  springsForSag,
  type EndAdvice,
  type RateChoices,
  type SagWish,
  type SpringAdvice,
} from '../../core/riding/springs-for-sag.ts';
import type { SpringLaw } from '../../core/springs/spring-law.ts';
import { sprungMachine } from '../../core/springs/sprung-machine.ts';
import type { Travel } from '../../core/standing/stance.ts';
import { setAdjuster, setOtherLeg, setSupport, type Edited } from '../../document/edits.ts';
import type { BikeDocument, BikeWithSetup } from '../../document/document.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Preferences } from '../preferences.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

export type SpringEnd = 'front' | 'rear';

/** Parts of the travel that are wanted at first, before anyone has said so: common practice on the road, no source. */
const FIRST_WISH: Readonly<Record<SpringEnd, { readonly free: number; readonly rider: number }>> = {
  front: { free: 0.2, rider: 0.3 },
  rear: { free: 0.08, rider: 0.25 },
};
const ADJUSTERS = {
  front: { rate: 'forkSpringRate', preload: 'forkPreload', pressure: 'forkAirPressure' },
  rear: { rate: 'shockSpringRate', preload: 'shockPreload', pressure: 'shockAirPressure' },
} as const;
const TENTH = 10;

export class Springs {
  readonly #session: BikeSession;
  readonly #preferences: Preferences;
  /** What was typed of the wish; the rest follows from the travel. It belongs to the sitting, as the bike on the page does. */
  #typed = $state.raw<{ readonly free: Partial<Travel>; readonly rider: Partial<Travel> }>({
    free: {},
    rider: {},
  });

  // The advice depends on no rate and no preload that is on the bike, so a stand-in serves where none is known.
  readonly #sprung = $derived.by(() => {
    const { bike, setup } = this.#session.history.present;
    const stand: Setup = {
      ...setup,
      forkSpringRate: setup.forkSpringRate > 0 ? setup.forkSpringRate : 1,
      shockSpringRate: setup.shockSpringRate > 0 ? setup.shockSpringRate : 1,
    };
    const made = machine(bike, stand);
    return made.ok ? sprungMachine(made) : made;
  });

  readonly wish: SagWish | null = $derived.by(() => {
    const sprung = this.#sprung;
    if (!sprung.ok) return null;
    const first = (end: SpringEnd, kind: 'free' | 'rider'): number =>
      this.#typed[kind][end] ?? Math.round(FIRST_WISH[end][kind] * sprung.most[end] * TENTH) / TENTH;
    return {
      free: { front: first('front', 'free'), rear: first('rear', 'free') },
      rider: { front: first('front', 'rider'), rear: first('rear', 'rider') },
    };
  });

  readonly advice: SpringAdvice | NoStand | null = $derived.by(() => {
    const sprung = this.#sprung;
    if (!sprung.ok) return sprung;
    return this.wish === null ? null : springsForSag(sprung, this.wish);
  });

  /** Sag with what the advice says: of some springs the free sag follows from the rider sag. */
  readonly advised: Sag | null = $derived.by(() => {
    if (this.advice === null || !this.advice.ok) return null;
    const found = sag(this.advice.sprung);
    return found.ok ? found : null;
  });

  /** Sag of the bike as it is, and at the baseline; null while its own rates are not known. */
  readonly now: Sag | null = $derived.by(() => sagOf(this.#session.history.present));
  readonly atBaseline: Sag | null = $derived.by(() => sagOf(this.#session.history.present.baseline));

  constructor({ session, preferences }: Pick<Workbench, 'session' | 'preferences'>) {
    this.#session = session;
    this.#preferences = preferences;
  }

  wishFor(end: SpringEnd, kind: 'free' | 'rider', mm: number): void {
    this.#typed = { ...this.#typed, [kind]: { ...this.#typed[kind], [end]: mm } };
  }

  /** The force law of an end as it is; null while its springs are impossible. */
  law(end: SpringEnd): SpringLaw | null {
    if (!this.#sprung.ok) return null;
    return end === 'front' ? this.#sprung.fork : this.#sprung.shock;
  }

  ratesAtHand(end: SpringEnd): readonly number[] {
    const { ratesFront, ratesRear } = this.#preferences.data;
    return end === 'front' ? ratesFront : ratesRear;
  }

  /** Preload the adjuster of one end gives fully in, mm; null when the bike does not say. */
  mostPreload(end: SpringEnd): number | null {
    const { bike } = this.#session.history.present;
    return (end === 'front' ? bike.fork : bike.shock).ends.mostPreload;
  }

  setRates(end: SpringEnd, rates: readonly number[]): void {
    const once = rates.filter((rate, i) => rates.indexOf(rate) === i).sort((a, b) => a - b);
    this.#preferences.change(end === 'front' ? { ratesFront: once } : { ratesRear: once });
  }

  /** What the rates at hand give at one end; null without a list or without advice. */
  choices(end: SpringEnd): RateChoices | NoStand | null {
    const { advice, wish } = this;
    const rates = this.ratesAtHand(end);
    if (advice === null || !advice.ok || wish === null || rates.length === 0) return null;
    const { bike } = this.#session.history.present;
    const { preloadThread, mostPreload } = end === 'front' ? bike.fork.ends : bike.shock.ends;
    const atHand = { rates, leastPreload: 0, mostPreload: mostPreload ?? Infinity, thread: preloadThread };
    return pickRate(advice, wish, end, atHand);
  }

  /** Sets what gives the sag at one end, as one undo entry; a spring with one rate takes the place of another one. */
  fitSpring(end: SpringEnd, advice: EndAdvice): void {
    const { rate, preload, pressure } = ADJUSTERS[end];
    const part = end === 'front' ? 'fork' : 'shock';
    const edit = (from: BikeDocument): Edited => {
      if (advice.kind === 'pressure') return setAdjuster(from, pressure, advice.pressure);
      const first = setAdjuster(from, preload, advice.preload);
      if (advice.kind === 'preload' || !first.ok) return first;
      const second = setAdjuster(first.value, rate, advice.rate);
      const { support } = from.bike[part];
      if (!second.ok) return second;
      const alike =
        support === null
          ? second
          : setSupport(second.value, part, { ...support, spring: { kind: 'oneRate' } });
      return alike.ok && advice.otherRate !== undefined
        ? withOtherRate(alike.value, advice.otherRate)
        : alike;
    };
    this.#session.commit(edit, end === 'front' ? 'Fork springs' : 'Shock spring');
  }
}

/** The other fork leg like the first, but with a spring of its rate. */
function withOtherRate(from: BikeDocument, rate: number): Edited {
  const { fork } = from.bike;
  const { forkPreload, forkAirGap, forkAirPressure } = from.setup;
  return setOtherLeg(from, {
    rate,
    preload: forkPreload,
    springTravel: fork.ends.springTravel,
    spring: { kind: 'oneRate' },
    air: fork.support?.air ?? null,
    airGap: forkAirGap,
    airPressure: forkAirPressure,
  });
}

function sagOf({ bike, setup }: BikeWithSetup): Sag | null {
  const unknown =
    (onForkRate(bike) && !(setup.forkSpringRate > 0)) || (onShockRate(bike) && !(setup.shockSpringRate > 0));
  const made = machine(bike, setup);
  if (unknown || !made.ok) return null;
  const sprung = sprungMachine(made);
  if (!sprung.ok) return null;
  const found = sag(sprung);
  return found.ok ? found : null;
}
