/** Finding a setup: the targets, the adjusters in the van, the search in its thread, and the plans it finds. */
import { ADJUSTERS } from '../../core/adjusters/all-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import type { Plan, PlansFound } from '../../core/plan/plan.ts';
import type { Complaint } from '../../core/plan/complaint.ts';
import { prepare } from '../../core/plan/prepare.ts';
import { searchable, usualRange, type SteppedKey } from '../../core/plan/prepare-adjusters.ts';
import type { Choice, NoProblem, Problem, Target, TyreKey, Wanted } from '../../core/plan/problem.ts';
import { usualMinutes } from '../../core/plan/usual-minutes.ts';
import { tyresForRim } from '../../core/parts/common-tyres.ts';
import type { Tyre } from '../../core/parts/tyre.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { QUANTITIES, shownUnit } from '../../core/units/all-quantities.ts';
import { setAdjusters } from '../../document/edits.ts';
import type { BikeDocument, BikeWithSetup } from '../../document/document.ts';
import type { FromPlanner, PlanProgress } from '../../workers/plan-messages.ts';
import { startPlanning, type StartedSearch } from '../../workers/start-planning.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** A target in the list, with what tells it from the others. */
export interface ListedTarget extends Target {
  readonly id: number;
  readonly weight: number;
}

/** An adjuster in the list, with its range as it is asked and as the bike has it. */
export interface ListedChoice {
  readonly key: SteppedKey;
  readonly available: boolean;
  readonly start: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly minutes: number;
  readonly own: { readonly least: number; readonly most: number };
}

/** A tyre in the list, with the one on the wheel and those that may go on instead. */
export interface ListedTyres {
  readonly key: TyreKey;
  readonly available: boolean;
  readonly fitted: Tyre;
  readonly tyres: readonly Tyre[];
  readonly minutes: number;
}

/** What was found, and for what. */
export interface Answer {
  readonly problem: Problem;
  readonly found: PlansFound | NoProblem;
}

/** The adjusters that are in the van at first: those that people turn for height. */
const FIRST_AVAILABLE: readonly AdjusterKey[] = ['shockLength', 'forkTubes'];

const SAG = ['frontTravel', 'rearTravel'] as const;

export class Planning {
  readonly #session: BikeSession;
  #nextId = 0;
  #typed = $state.raw<readonly ListedTarget[] | null>(null);
  #asked = $state.raw<Readonly<Partial<Record<AdjusterKey, Partial<Choice>>>>>({});
  #source = $state.raw<{
    readonly name: string;
    readonly left: number;
    readonly targets: readonly ListedTarget[];
  } | null>(null);
  #running: StartedSearch | null = null;

  progress = $state.raw<PlanProgress | null>(null);
  /** What the running search was asked; null while none runs. */
  searched = $state.raw<Problem | null>(null);
  answer = $state.raw<Answer | null>(null);
  /** Why the last search broke off; null where it ended as it should. */
  failure = $state.raw<string | null>(null);

  /** As committed: a drag counts once it is let go. */
  readonly document: BikeDocument = $derived.by(() => this.#session.history.present);
  #first = $state.raw<readonly ListedTarget[]>([]);

  readonly targets: readonly ListedTarget[] = $derived.by(() => this.#typed ?? this.#first);

  readonly choices: readonly ListedChoice[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return ADJUSTERS.flatMap((adjuster): ListedChoice[] => {
      const own = searchable(adjuster, bike, setup);
      if ('ok' in own) return [];
      const { key, start, least, most, step } = own;
      const usual = usualRange(own);
      const asked = this.#asked[key] ?? {};
      return [
        {
          key,
          start,
          step,
          available: asked.available ?? FIRST_AVAILABLE.includes(key),
          least: asked.least ?? usual.least,
          most: asked.most ?? usual.most,
          minutes: asked.minutes ?? usualMinutes(adjuster),
          own: { least, most },
        },
      ];
    });
  });

  readonly tyres: readonly ListedTyres[] = $derived.by(() => {
    const { setup } = this.document;
    return ADJUSTERS.flatMap((adjuster): ListedTyres[] => {
      if (adjuster.holds !== 'tyre') return [];
      const { key } = adjuster;
      const { available = false, tyres, minutes } = this.#asked[key] ?? {};
      return [
        {
          key,
          available,
          fitted: setup[key],
          tyres: tyres ?? tyresForRim(key, setup[key]),
          minutes: minutes ?? usualMinutes(adjuster),
        },
      ];
    });
  });

  readonly problem: Problem = $derived.by(() => {
    const { bike, setup } = this.document;
    const choices: readonly Choice[] = [
      ...this.choices.map(({ key, available, least, most, minutes }) => ({
        adjuster: key,
        available,
        least,
        most,
        minutes,
      })),
      ...this.tyres.map(({ key, available, tyres, minutes }) => ({
        adjuster: key,
        available,
        tyres,
        minutes,
      })),
    ];
    const targets = this.targets.map(({ reading, state, want, weight }): Target => ({
      reading,
      state,
      want,
      weight,
    }));
    return { bike, setup, targets, choices };
  });

  /** How many combinations there are, or why there is nothing to search. */
  readonly ready: { readonly ok: true; readonly total: number } | NoProblem = $derived.by(() =>
    prepare(this.problem),
  );

  /** Bike, setup or what was asked has changed since the answer. */
  readonly isOutdated: boolean = $derived.by(() => {
    if (this.answer === null) return false;
    const { bike, setup } = this.answer.problem;
    if (bike !== this.document.bike || setup !== this.document.setup) return true;
    return askedOf(this.answer.problem) !== askedOf(this.problem);
  });

  constructor({ session }: Pick<Workbench, 'session'>) {
    this.#session = session;
    this.#begin();
    session.listen({ opened: () => this.#begin() });
  }

  /** What was asked of one bike says nothing of another. */
  #begin(): void {
    this.#running?.stop();
    this.#running = null;
    this.progress = null;
    this.searched = null;
    this.answer = null;
    this.failure = null;
    this.#typed = null;
    this.#asked = {};
    const arm = this.#target('swingarmAngle', 'toppedOut', this.#session.history.present);
    this.#first = [arm, { ...this.#target('trail', 'riderUp', null), want: { kind: 'keep' } }];
  }

  /** A target of the bike's own number, in the digits that are shown. */
  #target(reading: string, state: RideStateKey, of: BikeWithSetup | null): ListedTarget {
    const value = of === null ? null : readingOf(of, reading, state);
    this.#nextId += 1;
    const id = this.#nextId;
    return { id, reading, state, weight: 1, want: { kind: 'value', value: asShown(value ?? 0, reading) } };
  }

  /** What a target reads on the bike as set; null where there is no number. */
  present({ reading, state }: Target): number | null {
    return readingOf(this.document, reading, state);
  }

  addTarget(): void {
    const of = this.document;
    const used = (key: string): boolean => this.targets.some(({ reading }) => reading === key);
    const reading = ['antiSquat', 'seatHeight', 'wheelbase', 'rake'].find((key) => !used(key)) ?? 'trail';
    this.#typed = [...this.targets, this.#target(reading, 'riderUp', of)];
  }

  /**
   * Makes targets of a complaint: the reading in which a remedy shows goes the way that helps, by a change that a rider
   * notices, and the trail stays. What was typed is kept beside it.
   */
  aimAgainst({ reading, state, better }: Pick<Complaint, 'reading' | 'state' | 'better'>): void {
    const { noticed } = QUANTITIES[quantityOf(reading)];
    const now = readingOf(this.document, reading, state);
    const fresh = this.#target(reading, state, null);
    const value = asShown((now ?? 0) + (better === 'more' ? noticed : -noticed), reading);
    const kind = better === 'more' ? 'atLeast' : 'atMost';
    const others = this.targets.filter(
      (each) =>
        (this.#typed !== null || each.reading === 'trail') &&
        !(each.reading === reading && each.state === state),
    );
    this.#typed = [{ ...fresh, want: { kind, value } }, ...others];
  }

  /** Keeps the travel used at both ends with the rider on board. */
  keepSag(): void {
    const kept = SAG.map((reading) => ({
      ...this.#target(reading, 'riderUp', null),
      want: { kind: 'keep' } as const,
    }));
    this.#typed = [...this.targets.filter(({ reading }) => !SAG.some((each) => each === reading)), ...kept];
  }

  removeTarget(id: number): void {
    this.#typed = this.targets.filter((target) => target.id !== id);
  }

  /** Another reading or ride state begins with the number that the bike has there. */
  aimAt(id: number, reading: string, state: RideStateKey): void {
    this.#change(id, (target) => {
      const fresh = this.#target(reading, state, this.document);
      const { want: had } = target;
      const isAsNow = had.kind === 'keep' || (had.kind !== 'window' && had.value === undefined);
      const want = isAsNow ? had : fresh.want;
      return { ...fresh, id, weight: target.weight, want };
    });
  }

  want(id: number, want: Wanted): void {
    this.#change(id, (target) => ({ ...target, want }));
  }

  weigh(id: number, weight: number): void {
    this.#change(id, (target) => ({ ...target, weight }));
  }

  /** From one way to say what a reading should be to another, with the numbers that fit it. */
  changeKind(id: number, kind: Wanted['kind']): void {
    this.#change(id, (target) => {
      const { want, reading } = target;
      const middle =
        want.kind === 'window'
          ? (want.least + want.most) / 2
          : (('value' in want ? want.value : undefined) ?? asShown(this.present(target) ?? 0, reading));
      const half = QUANTITIES[quantityOf(reading)].noticed / 2;
      if (kind === 'keep') return { ...target, want: { kind } };
      if (kind !== 'window') return { ...target, want: { kind, value: middle } };
      const [least, most] = [asShown(middle - half, reading), asShown(middle + half, reading)];
      return { ...target, want: { kind, least, most } };
    });
  }

  /** Every target becomes what another setup reads there: make this bike feel like that one. One without a number stays. */
  takeFrom(of: BikeWithSetup, name: string): void {
    let left = 0;
    const targets = this.targets.map((target): ListedTarget => {
      const { reading, state } = target;
      const value = readingOf(of, reading, state);
      if (value !== null) return { ...target, want: { kind: 'value', value: asShown(value, reading) } };
      left += 1;
      return target;
    });
    this.#typed = targets;
    this.#source = { name, left, targets };
  }

  /** The setup that the targets were taken from and how many stayed as they were; null once one is changed by hand. */
  get source(): { readonly name: string; readonly left: number } | null {
    return this.#source?.targets === this.targets ? this.#source : null;
  }

  choose(key: AdjusterKey, change: Partial<Choice>): void {
    this.#asked = { ...this.#asked, [key]: { ...this.#asked[key], ...change } };
  }

  #change(id: number, change: (target: ListedTarget) => ListedTarget): void {
    this.#typed = this.targets.map((target) => (target.id === id ? change(target) : target));
  }

  /** Starts the search; what an earlier one found goes. */
  search(): void {
    if (this.progress !== null || !this.ready.ok) return;
    const { problem } = this;
    this.answer = null;
    this.failure = null;
    this.searched = problem;
    this.progress = { tried: 0, triedBeyond: 0, total: this.ready.total, best: null };
    this.#running = startPlanning(problem, this.ready.total, (message) => this.#hear(problem, message));
  }

  #hear(problem: Problem, message: FromPlanner): void {
    // A search that was left behind with its bike.
    if (problem !== this.searched) return;
    if (message.kind === 'progress') this.progress = message.progress;
    // A share of the search is for the thread that joins all.
    if (message.kind === 'progress' || message.kind === 'part') return;
    this.#running = null;
    this.progress = null;
    this.searched = null;
    if (message.kind === 'failed') this.failure = message.message;
    else this.answer = { problem, found: message.found };
  }

  /** Ends the search; what it found so far is the answer. */
  stop(): void {
    this.#running?.stop();
  }

  /** Sets the adjusters as a plan has them, as one entry of the history. */
  tryPlan({ steps }: Plan, name: string): void {
    const turned = steps.flatMap(({ turns }) => turns.map(({ adjuster, to }) => [adjuster, to] as const));
    const asked: Partial<Setup> = Object.fromEntries(turned);
    this.#session.commit((from) => setAdjusters(from, asked), name);
  }
}

/** The targets and adjusters that were asked for, as one text to compare by. */
function askedOf({ targets, choices }: Problem): string {
  return JSON.stringify([targets, choices]);
}

function quantityOf(reading: string) {
  return READINGS.find(({ key }) => key === reading)?.quantity ?? 'count';
}

function readingOf({ bike, setup }: BikeWithSetup, key: string, state: RideStateKey): number | null {
  const reading = READINGS.find((each) => each.key === key);
  const on = standBike(bike, setup, state);
  if (reading === undefined || !on.ok) return null;
  const value = metricReading(reading, on);
  return typeof value === 'number' ? value : null;
}

/** A number with no more digits than are shown of it. */
function asShown(value: number, reading: string): number {
  return Number(value.toFixed(shownUnit(quantityOf(reading), 'metric').digits));
}
