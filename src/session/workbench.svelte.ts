/** The workbench: the state of the page, put together once; a tab's own state comes with its tab. */
import { untrack } from 'svelte';
import type { PointKey } from '../core/sketch/points.ts';
import { bikeExtent } from '../scene/extent.ts';
import { constructionAt } from '../scene/construction/construction-hit.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { Construction } from '../core/readings/reading.ts';
import { toGround } from '../scene/shapes/view.ts';
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import { adjusterOf } from '../core/adjusters/all-adjusters.ts';
import { rideStateOf, type RideStateKey } from '../core/riding/states/all-ride-states.ts';
import type { BikeDocument } from '../document/document.ts';
import type { History } from '../document/history.ts';
import { Advice } from './advice.svelte.ts';
import { Announcer } from './announcer.svelte.ts';
import { BikeSession } from './bike-session.svelte.ts';
import { Drawing } from './drawing.svelte.ts';
import { Handles, type HandleKind } from './handles.svelte.ts';
import { Measuring } from './measuring.svelte.ts';
import { Mode, type SideViewMode } from './mode.svelte.ts';
import { Moving } from './moving.svelte.ts';
import { Preferences } from './preferences.svelte.ts';
import { CornerSequence } from './corner-sequence.svelte.ts';
import { Standing } from './standing.svelte.ts';
import { SideView } from './side-view.svelte.ts';

/** How near a tap must be to a line to choose it, px. */
const LINE_REACH_PX = 10;

export class Workbench {
  readonly session: BikeSession;
  readonly standing: Standing;
  readonly advice: Advice;
  readonly preferences = new Preferences();
  readonly mode = new Mode();
  readonly sideView = new SideView();
  readonly drawing: Drawing;
  readonly handles: Handles;
  readonly moving: Moving;
  readonly measuring: Measuring;
  readonly announcer: Announcer;
  readonly cornerSequence: CornerSequence;
  readonly #ofTabs: object[] = [];

  /** The point that is chosen in Edit; null when the bike no longer has it, after an undo or with other links. */
  readonly armedPoint: PointKey | null = $derived.by(() => {
    const { chosenPoint } = this.mode;
    return this.handles.free.some(({ id }) => id === `point-${chosenPoint}`) ? chosenPoint : null;
  });

  constructor(document: BikeDocument) {
    this.session = new BikeSession(document);
    this.standing = new Standing(this.session, this.preferences);
    this.advice = new Advice(this.session, this.standing, this.preferences);
    this.drawing = new Drawing(this.session, this.standing.now, this.preferences, this.sideView);
    this.handles = new Handles(this.standing, this.mode, this.preferences, this.sideView);
    this.drawing.taken = () => this.handles.boxes;
    this.moving = new Moving(
      this.session,
      this.standing,
      this.sideView,
      this.drawing,
      this.handles,
      this.preferences,
      this.advice,
    );
    this.measuring = new Measuring(this.drawing, this.handles, this.sideView);
    this.announcer = new Announcer(this.standing, this.preferences);
    this.announcer.remember();
    this.session.listen({
      moved: () => this.announcer.moved(performance.now()),
      done: (act) => this.announcer.settled(performance.now(), act),
      opened: () => this.announcer.began(performance.now(), `${this.session.document.bike.name} opened`),
    });
    this.cornerSequence = new CornerSequence(this.standing, this.moving, this.announcer);
  }

  /**
   * What a tab keeps while it is out of sight, by its class. The first tab that asks has it made, so that its code is
   * fetched with the tab; it lasts as long as the page, whichever tab is closed.
   */
  stateOf<State extends object>(Kind: new (bench: Workbench) => State): State {
    const made = this.#ofTabs.find((each): each is State => each instanceof Kind);
    if (made !== undefined) return made;
    const [fresh] = untrack(() => {
      const states: State[] = [];
      // What a component derives ends with it; below a root the state outlives the tab.
      $effect.root(() => {
        states.push(new Kind(this));
      });
      return states;
    });
    this.#ofTabs.push(fresh);
    return fresh;
  }

  /** Changes what a hand on the side view does. In Edit the bike hangs, so that a part stays where it is put. */
  changeMode(mode: SideViewMode): void {
    if (mode === 'edit') this.cornerSequence.stop();
    this.mode.change(mode);
    this.drawing.linksOnTop = mode === 'edit';
    this.standing.hang(mode === 'edit');
  }

  /** Shows the figures of the point that a hand has taken. */
  showHandle(id: string): void {
    const handle = this.handles.all.find((each) => each.id === id);
    if (handle?.target.kind === 'point') this.mode.shownPoint = handle.target.key;
  }

  /** Shows the whole bike in the window. */
  showWhole(): void {
    const { live } = this.standing;
    if (live !== null) this.sideView.showWhole(bikeExtent(live.stance));
  }

  resize(widthPx: number, heightPx: number): void {
    const { live } = this.standing;
    // Fitted while a hand holds a part, the bike would leave the hand.
    const fits = live !== null && this.moving.held === null;
    this.sideView.resize(widthPx, heightPx, fits ? bikeExtent(live.stance) : null);
  }

  /** A tap on a handle, or Enter on it: one end of a dimension, or the point that is chosen. */
  tapHandle({ id, target }: HandleKind): void {
    if (target.kind !== 'point') return;
    this.mode.shownPoint = target.key;
    if (this.mode.current === 'measure') this.measuring.tapPoint(id);
    else if (this.mode.current === 'edit') this.mode.choosePoint(target.key);
  }

  /** Reads the bike in another ride state; a corner sequence ends. */
  ride(state: RideStateKey): void {
    this.cornerSequence.stop();
    this.moving.restore();
    this.standing.choose(state);
    this.announcer.settled(performance.now(), rideStateOf(state).label);
  }

  /** One step back. A hand that holds something has to let go first. */
  undo(): void {
    if (this.moving.held !== null) return;
    this.session.undo();
  }

  /** One step forward again, under the same condition. */
  redo(): void {
    if (this.moving.held !== null) return;
    this.session.redo();
  }

  /** Goes to an adjuster, wherever on the page it is; its group opens. */
  showAdjuster(key: AdjusterKey): void {
    this.changeMode('adjusters');
    this.measuring.clear();
    this.preferences.openAdjusters([adjusterOf(key).group], true);
    this.mode.wantedAdjuster = { key };
  }

  /** Lights the construction of a reading; the same reading again puts it out. */
  chooseReading(key: string): void {
    this.selectReading(this.mode.chosenReading === key ? null : key);
  }

  /** Lights the construction of a reading, or puts all out. */
  selectReading(key: string | null): void {
    this.mode.chosenReading = key;
    this.drawing.highlighted = READINGS.find((reading) => reading.key === key)?.construction ?? null;
  }

  /** Lights the construction whose line is tapped, and chooses its first shown reading; elsewhere puts all out. */
  chooseLineAt(xPx: number, yPx: number): void {
    const { live } = this.standing;
    if (live === null) return;
    const place = toGround(this.sideView.view, { x: xPx, y: yPx });
    const reach = LINE_REACH_PX / this.sideView.view.scale;
    const found = constructionAt(live.stance, place, reach, this.drawing.highlighted);
    this.drawing.highlighted = found;
    this.mode.chosenReading = found === null ? null : this.#readingOf(found);
  }

  #readingOf(construction: Construction): string | null {
    const { shown } = this.preferences.data;
    const readings = READINGS.filter((reading) => reading.construction === construction);
    return (readings.find((reading) => shown.includes(reading.key)) ?? readings[0])?.key ?? null;
  }

  /** Another bike takes the page with its history and is fitted into the window. */
  open(history: History): void {
    this.cornerSequence.end(performance.now());
    this.moving.restore();
    this.measuring.clear();
    this.changeMode('adjusters');
    this.mode.chosenReading = null;
    this.drawing.highlighted = null;
    this.session.open(history);
    this.showWhole();
  }
}
