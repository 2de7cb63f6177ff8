/** Finding a setup: the targets, the adjusters in the van, the search in its thread, and the plans it finds. */
import { ADJUSTERS } from '../../core/adjusters/all-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import { COMPLAINTS } from '../../core/plan/all-complaints.ts';
import type { Complaint } from '../../core/plan/complaint.ts';
import { firstSteps, type FirstStep } from '../../core/plan/first-steps.ts';
import type { Plan, PlansFound } from '../../core/plan/plan.ts';
import { prepare } from '../../core/plan/prepare.ts';
import { searchable } from '../../core/plan/prepare-adjusters.ts';
import type { Choice, NoProblem, PlanAdjusterKey, Problem, Target, Wanted } from '../../core/plan/problem.ts';
import { waysToLower, type Lowering } from '../../core/plan/lowering.ts';
import { usualMinutes } from '../../core/plan/usual-minutes.ts';
import { sortedByAim, whatMovesWhat, type StepTried } from '../../core/plan/what-moves-what.ts';
import { raiseEnds, type EndsRaised } from '../../core/plan/two-ends.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { QUANTITIES, shownUnit } from '../../core/units/all-quantities.ts';
import { setAdjusters } from '../../document/edits.ts';
import type { BikeDocument, BikeWithSetup } from '../../document/document.ts';
import type { FromPlanner, PlanProgress } from '../../workers/plan-messages.ts';
import { startPlanning } from '../../workers/start-planning.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** A target in the list, with what tells it from the others. */
export interface ListedTarget extends Target {
  readonly id: number;
  readonly weight: number;
}

/** An adjuster in the list, with its range as it is asked and as the bike has it. */
export interface ListedChoice {
  readonly key: PlanAdjusterKey;
  readonly available: boolean;
  readonly start: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly minutes: number;
  readonly own: { readonly least: number; readonly most: number };
}

/** What was found, and for what. */
export interface Answer {
  readonly problem: Problem;
  readonly found: PlansFound | NoProblem;
}

/** The adjusters that are in the van at first: those that people turn for height. */
const FIRST_AVAILABLE: readonly AdjusterKey[] = ['shockLength', 'forkTubes'];

/** How many steps either way a range reaches at first. */
const FIRST_REACH = 20;

/** How far the ends are raised side by side, mm. */
const ENDS_RISE = 5;

/** How far down at first, mm. */
const FIRST_SEAT_DOWN = 20;

const SAG = ['frontTravel', 'rearTravel'] as const;

export class Planning {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  #nextId = 0;
  #typed = $state.raw<readonly ListedTarget[] | null>(null);
  #asked = $state.raw<Readonly<Partial<Record<AdjusterKey, Partial<Choice>>>>>({});
  #running: { stop(): void } | null = null;

  progress = $state.raw<PlanProgress | null>(null);
  /** What the running search was asked; null while none runs. */
  searched = $state.raw<Problem | null>(null);
  answer = $state.raw<Answer | null>(null);
  /** The reading that the table of steps is about. */
  wished = $state('trail');
  /** The complaint by its key. */
  said = $state(COMPLAINTS[0].key);

  /** What hands hold does not count yet. */
  readonly document: BikeDocument = $derived.by(() => this.#session.history.present);
  #first = $state.raw<readonly ListedTarget[]>([]);

  readonly targets: readonly ListedTarget[] = $derived.by(() => this.#typed ?? this.#first);

  readonly choices: readonly ListedChoice[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return ADJUSTERS.flatMap((adjuster): ListedChoice[] => {
      const own = searchable(adjuster, bike, setup);
      if ('ok' in own) return [];
      const { key, start, least, most, step } = own;
      const asked = this.#asked[key] ?? {};
      return [
        {
          key,
          start,
          step,
          available: asked.available ?? FIRST_AVAILABLE.includes(key),
          least: asked.least ?? Math.max(least, start - FIRST_REACH * step),
          most: asked.most ?? Math.min(most, start + FIRST_REACH * step),
          minutes: asked.minutes ?? usualMinutes(adjuster),
          own: { least, most },
        },
      ];
    });
  });

  readonly problem: Problem = $derived.by(() => {
    const { bike, setup } = this.document;
    const choices = this.choices.map(({ key, available, least, most, minutes }): Choice => ({
      adjuster: key,
      available,
      least,
      most,
      minutes,
    }));
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

  readonly state: RideStateKey = $derived.by(() => this.#standing.state);

  /** One step of every adjuster in the ride state shown, sorted by what moves the wished reading and leaves the rest. */
  readonly steps: readonly StepTried[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return sortedByAim(whatMovesWhat(bike, setup, this.state), this.wished);
  });

  /** Either end raised, and both, in the ride state shown. */
  readonly ends: readonly EndsRaised[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return raiseEnds(bike, setup, this.state, ENDS_RISE);
  });

  /** What the rider says, and what a mechanic tries first for it on this bike. */
  readonly complaint: Complaint = $derived.by(
    () => COMPLAINTS.find(({ key }) => key === this.said) ?? COMPLAINTS[0],
  );
  readonly firstSteps: readonly FirstStep[] = $derived.by(() =>
    firstSteps(this.document.bike, this.document.setup, this.complaint),
  );

  /** How far the seat is to come down, mm, and the ways to it. */
  seatDown = $state(FIRST_SEAT_DOWN);
  readonly waysToLower: readonly Lowering[] = $derived.by(() =>
    waysToLower(this.document.bike, this.document.setup, this.seatDown),
  );

  constructor({ session, standing }: Pick<Workbench, 'session' | 'standing'>) {
    this.#session = session;
    this.#standing = standing;
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
      const want = target.want.kind === 'keep' ? target.want : fresh.want;
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
        want.kind === 'value'
          ? want.value
          : want.kind === 'window'
            ? (want.least + want.most) / 2
            : asShown(this.present(target) ?? 0, reading);
      const half = QUANTITIES[quantityOf(reading)].noticed / 2;
      if (kind === 'keep') return { ...target, want: { kind } };
      if (kind === 'value') return { ...target, want: { kind, value: middle } };
      const [least, most] = [asShown(middle - half, reading), asShown(middle + half, reading)];
      return { ...target, want: { kind, least, most } };
    });
  }

  /** Every target becomes what the baseline reads there: make this bike feel like that one. */
  takeFromBaseline(): void {
    this.#typed = this.targets.map((target): ListedTarget => {
      const { reading, state } = target;
      const value = readingOf(this.document.baseline, reading, state);
      return value === null ? target : { ...target, want: { kind: 'value', value: asShown(value, reading) } };
    });
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
    this.searched = problem;
    this.progress = { tried: 0, total: this.ready.total, best: null };
    this.#running = startPlanning(problem, (message) => this.#hear(problem, message));
  }

  #hear(problem: Problem, message: FromPlanner): void {
    // A search that was left behind with its bike.
    if (problem !== this.searched) return;
    if (message.kind === 'progress') {
      this.progress = message.progress;
      return;
    }
    this.#running = null;
    this.progress = null;
    this.searched = null;
    this.answer = { problem, found: message.found };
  }

  /** Ends the search; what it found so far is the answer. */
  stop(): void {
    this.#running?.stop();
  }

  /** Sets the adjusters as a plan has them, as one entry of the history. */
  tryPlan({ steps }: Plan, name: string): void {
    const turned = steps.flatMap(({ turns }) => turns.map(({ adjuster, to }) => [adjuster, to] as const));
    this.#turn(Object.fromEntries(turned), name);
  }

  /** Turns one adjuster by its step. */
  tryStep({ adjuster, to }: Pick<StepTried, 'adjuster' | 'to'>, name: string): void {
    this.#turn({ [adjuster]: to }, name);
  }

  /** Turns what a way to lower the seat turns, as one undo. */
  tryLowering({ turned }: Lowering, name: string): void {
    this.#turn(Object.fromEntries(turned.map(({ adjuster, to }) => [adjuster, to])), name);
  }

  #turn(turned: Partial<Setup>, name: string): void {
    this.#session.commit((from) => setAdjusters(from, turned), name);
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
