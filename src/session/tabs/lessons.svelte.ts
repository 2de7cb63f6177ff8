/** A lesson as it runs: on a copy of the bike, so that leaving it leaves the page's bike untouched, its history too. */
import {
  trialFigure,
  type NoTrial,
  type Tried,
  type UnknownName,
  type Way,
} from '../../core/effects/trial.ts';
import { pressedAtWall, wallLift } from '../../core/effects/wall-lift.ts';
import type { AgainstWall } from '../../core/riding/equilibrium/against-wall.ts';
import type { TrialFigure } from '../../core/effects/trial-figure.ts';
import { axleHeld, turned, type AsSet, type NoTurn } from '../../core/effects/turn.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { beginHistory } from '../../document/history.ts';
import type { Lesson, LessonCheck, LessonStep } from '../../lessons/lesson.ts';
import { tryStep } from '../../lessons/try-step.ts';
import type { Saying } from '../../sayings/saying.ts';
import { wallLayer } from '../../scene/construction/wall-drawing.ts';
import type { Scene } from '../../scene/shapes/shape.ts';
import { bikeExtent } from '../../scene/extent.ts';
import type { Prediction } from '../../words/why/trial-words.ts';
import { readingsOf } from '../../words/worded-readings.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Drawing } from '../drawing.svelte.ts';
import { mixPlain } from './mix-plain.ts';
import type { PreferenceData } from '../preferences.svelte.ts';
import { setupBetween } from './setup-between.ts';
import { SideView } from '../side-view.svelte.ts';
import type { Stood } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** How long the way from before to after takes, ms. */
const WAY_MS = 4000;
/** Size of words on the drawing, as a part of its width; never below the least, px. */
const TEXT_PART = 0.0182;
const LEAST_TEXT_PX = 13;

/** One step as it runs on this bike. */
export interface RunStep {
  readonly step: LessonStep | LessonCheck;
  readonly figure: TrialFigure | null;
  readonly tried: Tried | NoTrial;
}

/** A reading that stands beside the figure once it is looked at; null before where the step turns nothing. */
export interface ShownRow {
  readonly reading: Reading;
  readonly before: number | null;
  readonly after: number;
}

export class Lessons {
  readonly #bench: Workbench;
  /** The lesson that runs; null while none does. */
  running = $state.raw<Lesson | null>(null);
  /** The bike that the lesson was begun on. */
  #begunOn = $state.raw<AsSet | null>(null);
  /** Which step is on: −1 for the goal, behind the last step the question, behind that the end. */
  at = $state(-1);
  predictions = $state.raw<readonly (Prediction | null)[]>([]);
  looked = $state.raw<readonly boolean[]>([]);
  /** How far the bike has come from before to after, 0 to 1. */
  part = $state(0);
  /** Whether the screen is blank, so that the room listens. */
  blank = $state(false);
  readonly sideView = new SideView();
  readonly drawing: Drawing;
  readonly #copy: BikeSession;

  /** The bike made ready for the lesson, or why it cannot be. */
  readonly prepared: { readonly ok: true; readonly asSet: AsSet } | NoTurn | NoStand | UnknownName | null =
    $derived.by(() => {
      const { running } = this;
      const from = this.#begunOn;
      if (running === null || from === null) return null;
      if (running.unreadPrepare !== undefined) return running.unreadPrepare.no;
      const made = turned(from, running.prepare, 'riderUp');
      return made.ok ? { ok: true, asSet: { bike: from.bike, setup: made.setup } } : made;
    });

  /** The steps and behind them the question, tried on this bike. */
  readonly steps: readonly RunStep[] = $derived.by(() => {
    const { running, prepared } = this;
    if (running === null || prepared === null) return [];
    return [...running.steps, running.check].map((step): RunStep => ({
      step,
      figure: step.unread === undefined ? trialFigure(step.figure) : null,
      tried: prepared.ok ? tryStep(prepared.asSet, step) : prepared,
    }));
  });

  /** The bike that the lesson runs on. */
  readonly bike: Bike = $derived.by(() => (this.#begunOn ?? this.#bench.session.document).bike);
  readonly now: RunStep | null = $derived(this.steps[this.at] ?? null);
  readonly isLooked: boolean = $derived(this.looked[this.at] ?? false);
  readonly prediction: Prediction | null = $derived(this.predictions[this.at] ?? null);
  /** Whether the question at the end is on, and whether all is over. */
  readonly isQuestion: boolean = $derived(this.running !== null && this.at === this.running.steps.length);
  readonly isOver: boolean = $derived(this.steps.length > 0 && this.at >= this.steps.length);

  /** Where the lesson is, in words. */
  readonly place: string = $derived.by(() => {
    if (this.at < 0) return 'Goal';
    if (this.isOver) return 'End';
    return this.isQuestion ? 'Question' : `Step ${this.at + 1} of ${this.running?.steps.length ?? 0}`;
  });
  /** Whether going forward shows figures before it goes on. */
  readonly shows: boolean = $derived(this.now?.tried.ok === true && !this.isLooked);

  /** The bike pressed against the wall as far as the way has come; null in any other step, and before somebody looks. */
  readonly wall: AgainstWall | null = $derived.by(() => {
    const { now } = this;
    if (now === null || !now.tried.ok || now.figure !== wallLift || !this.isLooked || this.part <= 0)
      return null;
    const found = pressedAtWall(now.tried.before.on, this.part);
    return found.ok ? found : null;
  });

  /** The bike as the room sees it: as it was until somebody looks, then on its way to how it is. */
  readonly live: Stood | null = $derived.by(() => {
    const { now, prepared } = this;
    if (now === null || !now.tried.ok) {
      if (prepared?.ok !== true) return null;
      const { bike, setup } = prepared.asSet;
      const found = standBike(bike, setup, 'riderUp');
      return found.ok ? { bike, setup, stance: found, asked: { state: 'riderUp', cornerPart: null } } : null;
    }
    const { before, after } = now.tried;
    const asked = { state: now.step.state, cornerPart: null };
    const ends = [before, after].map(({ asSet, on }): Stood => ({ ...asSet, stance: on, asked }));
    if (!this.isLooked || this.part <= 0) return ends[0];
    const { wall } = this;
    if (wall !== null)
      return { ...ends[0], stance: { ...before.on, ...wall.pressed.stance, equilibrium: wall.pressed } };
    if (this.part >= 1) return ends[1];
    const bike = mixPlain(ends[0].bike, ends[1].bike, this.part);
    const setup = setupBetween(ends[0].setup, ends[1].setup, this.part);
    const found = standBike(bike, setup, now.step.state);
    return found.ok ? { bike, setup, stance: found, asked } : ends[this.part < 0.5 ? 0 : 1];
  });

  /** The drawing, with the arrows of the wall test where it is that. */
  readonly scene: Scene = $derived.by(() => {
    const { wall } = this;
    const { style } = this.#bench.preferences;
    return wall === null
      ? this.drawing.scene
      : [...this.drawing.scene, wallLayer(wall, style, this.#textPx())];
  });

  /** What stands beside the figure; nothing before it is looked at. */
  readonly rows: readonly ShownRow[] = $derived.by(() => {
    const { now, running } = this;
    if (now === null || running === null || !this.isLooked || !now.tried.ok) return [];
    const { before, after } = now.tried;
    const { step } = now;
    const isTurned = step.turns.length > 0;
    return readingsOf(before.asSet.bike.drive.kind)
      .filter(({ key }) => running.shows.includes(key) && key !== step.figure)
      .flatMap((reading): ShownRow[] => {
        const [from, to] = [before, after].map(({ on }) => metricReading(reading, on));
        return typeof from === 'number' && typeof to === 'number'
          ? [{ reading, before: isTurned ? from : null, after: to }]
          : [];
      });
  });

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#copy = new BikeSession(bench.session.document);
    const live = (): Stood | null => this.live;
    const before = (): Stood | null => {
      const { now } = this;
      if (now === null || !now.tried.ok || !this.isLooked) return null;
      const { asSet, on } = now.tried.before;
      return { ...asSet, stance: on, asked: { state: now.step.state, cornerPart: null } };
    };
    const data = (): PreferenceData => {
      // At the wall the lines of the road say nothing; it has its own.
      const looked = this.isLooked && this.wall === null;
      const kept = bench.preferences.data;
      // Words on the drawing hold figures, and zones give the answer away.
      const shown = { ...kept, shadow: this.isLooked || kept.shadow };
      return looked ? { ...shown, lines: true } : { ...shown, labels: false, zones: false, lines: false };
    };
    this.drawing = new Drawing(
      this.#copy,
      {
        get live() {
          return live();
        },
        get baseline() {
          return before();
        },
        problem: null,
      },
      {
        get data() {
          return data();
        },
        get style() {
          return bench.preferences.style;
        },
      },
      this.sideView,
      () => this.#textPx(),
    );
  }

  #textPx(): number {
    return Math.max(LEAST_TEXT_PX, TEXT_PART * this.sideView.widthPx);
  }

  /** Begins a lesson on a copy of the bike given, or of the one on the page. */
  begin(lesson: Lesson, asSet: AsSet | null = null): void {
    const { bike, setup } = asSet ?? this.#bench.session.document;
    this.#begunOn = axleHeld({ bike, setup });
    this.running = lesson;
    const places = lesson.steps.length + 1;
    this.predictions = Array.from({ length: places }, () => null);
    this.looked = Array.from({ length: places }, () => false);
    this.blank = false;
    this.go(-1);
  }

  /** Shows a trial of a saying as a lesson of one step. */
  showSaying(saying: Saying, index: number): void {
    const trial = saying.trials[index];
    const { from, turns, state, figure, name } = trial;
    const step = { turns, state, figure, act: name, ...(from !== undefined && { from }) };
    this.begin({
      key: saying.key,
      title: saying.says,
      goal: saying.because,
      minutes: 2,
      prepare: [],
      shows: ['rake', 'trail', 'swingarmAngle', 'antiSquat'],
      steps: [{ ...step, point: null, because: saying.because, otherwise: '' }],
      check: step,
      notes: [],
    });
    this.go(0);
    this.look();
  }

  /** Leaves the lesson. The bike on the page was never touched. */
  leave(): void {
    this.running = null;
    this.#begunOn = null;
  }

  /** Goes to a step; one that was looked at shows its end again. */
  go(at: number): void {
    const last = this.running === null ? -1 : this.running.steps.length + 1;
    this.at = Math.max(-1, Math.min(at, last));
    this.part = this.isLooked ? 1 : 0;
    this.#lay();
  }

  /** Forward as a clicker goes: what is hidden shows first, then the next step comes. */
  forward(): void {
    if (this.blank) this.blank = false;
    else if (this.shows) this.look();
    else this.go(this.at + 1);
  }

  back(): void {
    if (this.blank) this.blank = false;
    else this.go(this.at - 1);
  }

  /** Keeps what somebody expects, until it is looked at. */
  predict(way: Way, amount: number | null): void {
    if (this.isLooked || this.now === null) return;
    this.predictions = this.predictions.map((each, index) => (index === this.at ? { way, amount } : each));
  }

  /** Makes the change and shows what it did. */
  look(): void {
    if (this.now === null) return;
    this.looked = this.looked.map((each, index) => each || index === this.at);
    this.part = 1;
    this.#lay();
  }

  /** Takes the change back and hides its figures; the prediction stays. */
  undo(): void {
    this.looked = this.looked.map((each, index) => each && index !== this.at);
    this.part = 0;
  }

  /** Where the way from before to after has come to after so long, ms; true when it has arrived. */
  replay(passedMs: number): boolean {
    this.part = Math.min(1, passedMs / WAY_MS);
    return this.part >= 1;
  }

  resize(widthPx: number, heightPx: number): void {
    const { live } = this;
    this.sideView.resize(widthPx, heightPx, live === null ? null : bikeExtent(live.stance));
  }

  /** Lays the step's two setups into the copy: the drawing shows the one before as a shadow. */
  #lay(): void {
    const { now } = this;
    if (now === null || !now.tried.ok) return;
    const { before, after } = now.tried;
    this.#copy.open(
      beginHistory({ ...this.#bench.session.document, ...after.asSet, baseline: before.asSet }),
    );
    const { live } = this;
    if (live !== null) this.sideView.showWhole(bikeExtent(live.stance));
  }
}
