/** Moving handles: a press marks, a move drafts, a release commits once, and going back restores the mark. */
import { onGround } from '../core/chassis/pose.ts';
import { adjusterOf } from '../core/adjusters/all-adjusters.ts';
import { adjusterLabel } from '../core/adjusters/named-adjusters.ts';
import { stepAdjuster } from '../core/standing/adjuster-range.ts';
import type { NoStand } from '../core/riding/no-stand.ts';
import { MOVE_WORDS, NOTHING_TO_HOLD } from '../words/trouble/move-words.ts';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { Point } from '../core/plane/point.ts';
import { pulledAdjuster, type GripKey } from '../core/sketch/grips.ts';
import { movePoint } from '../core/sketch/move-point.ts';
import { POINTS, type PointKey } from '../core/sketch/points.ts';
import type { Stance } from '../core/standing/stance.ts';
import type { BikeDocument } from '../document/document.ts';
import { replaceSketched, setAdjuster, type EditReason } from '../document/edits.ts';
import { toGround, toScreen, type View } from '../scene/shapes/view.ts';
import { snapPlace } from '../gestures/snap.ts';
import type { Advice } from './advice.svelte.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Drawing } from './drawing.svelte.ts';
import type { Handle, Handles } from './handles.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

/** Everything as it was when a handle was taken hold of. */
interface Mark {
  readonly handle: Handle;
  readonly document: BikeDocument;
  readonly stance: Stance;
  readonly view: View;
}

/** The whole range of a grip's adjuster takes at least so much of the screen, px. */
const RANGE_PX = 150;

export class Moving {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #view: SideView;
  readonly #drawing: Drawing;
  readonly #handles: Handles;
  readonly #preferences: Preferences;
  readonly #advice: Advice;
  #mark = $state.raw<Mark | null>(null);
  /** The handle being moved; null when none is. */
  readonly held: string | null = $derived(this.#mark?.handle.id ?? null);

  constructor(
    session: BikeSession,
    standing: Standing,
    view: SideView,
    drawing: Drawing,
    handles: Handles,
    preferences: Preferences,
    advice: Advice,
  ) {
    this.#session = session;
    this.#standing = standing;
    this.#view = view;
    this.#drawing = drawing;
    this.#handles = handles;
    this.#preferences = preferences;
    this.#advice = advice;
  }

  /** Marks where everything is. A bike without a pose has nothing to hold on to. */
  grab(id: string): void {
    const handle = this.#handles.free.find((each) => each.id === id);
    const document = this.#session.history.present;
    const found = this.#standing.stand(document);
    if (handle === undefined) return;
    if (!('stance' in found)) {
      this.#session.refuse(NOTHING_TO_HOLD);
      return;
    }
    this.#mark = { handle, document, stance: found.stance, view: this.#view.view };
  }

  /** Drafts the handle moved by px on the screen from where it was grabbed. */
  drag(dxPx: number, dyPx: number, snapping: boolean): void {
    const mark = this.#mark;
    if (mark === null) return;
    const { handle, stance, view } = mark;
    if (dxPx === 0 && dyPx === 0) {
      // Back where it began is the very bike that was grabbed, without what rounding makes of it.
      this.#session.preview(succeed);
      this.#drawing.guides = [];
      this.#view.view = view;
      return;
    }
    const at = toScreen(view, handle.place);
    const place = toGround(view, { x: at.x + dxPx, y: at.y + dyPx });
    if (handle.target.kind === 'grip') {
      const { key } = handle.target;
      const pull = { x: place.x - handle.place.x, y: place.y - handle.place.y };
      this.#session.preview((from) =>
        setAdjuster(
          from,
          key,
          pulledAdjuster(
            from.bike,
            from.setup,
            stance,
            key,
            pull,
            (asked) => this.#standing.standWith(from.bike, asked),
            RANGE_PX / view.scale,
          ),
        ),
      );
      return;
    }
    const { key } = handle.target;
    const others = this.#handles.all
      .filter((each) => each.target.kind === 'point' && each.id !== handle.id)
      .map((each) => each.place);
    const allowed = snapping && this.#preferences.data.snapping;
    const { place: target, guides } = snapPlace(place, others, view.scale, allowed);
    this.#drawing.guides = guides;
    this.#session.preview((from) => placedEdit(from, stance, key, target));
    this.#holdFrame(mark, key);
  }

  /** Commits the move as one undo entry. */
  drop(): void {
    const mark = this.#mark;
    if (mark === null) return;
    this.#release(mark);
    const { problem } = this.#standing.now;
    if (problem !== null && mark.handle.target.kind === 'point') {
      // A part left where the bike cannot stand could not be taken hold of again.
      this.#session.cancel();
      this.#session.refuse(this.#refusedPlace(problem));
      return;
    }
    this.#session.commitDraft(this.#labelOf(mark.handle));
  }

  /** Puts everything back as it was when the handle was grabbed. */
  restore(): void {
    const mark = this.#mark;
    if (mark === null) return;
    this.#release(mark);
    this.#session.cancel();
  }

  /** Moves a handle by mm at once: a point along and up, a grip by steps of its adjuster. One undo entry. */
  nudge(handle: Handle, mm: Point): void {
    if (handle.locked) return;
    if (handle.target.kind === 'grip') {
      const { key } = handle.target;
      const steps = stepsOfNudge(key, mm);
      this.#session.commit(
        (from) => setAdjuster(from, key, stepAdjuster(adjusterOf(key), from, from.setup[key], steps)),
        this.#labelOf(handle),
      );
      return;
    }
    this.place(handle.target.key, { x: handle.place.x + mm.x, y: handle.place.y + mm.y });
  }

  /** Puts a point at a place of the ground frame, mm. One undo entry. */
  place(key: PointKey, target: Point): void {
    const found = this.#standing.stand(this.#session.history.present);
    if (!('stance' in found)) {
      this.#session.refuse(NOTHING_TO_HOLD);
      return;
    }
    this.#session.commit((from) => this.#standingEdit(from, found.stance, key, target), pointLabel(key));
  }

  /** Why a point cannot be put at a place of the ground frame, mm, in a sentence; null when it can. */
  placeRefusal(key: PointKey, target: Point): string | null {
    const { present } = this.#session.history;
    const found = this.#standing.stand(present);
    if (!('stance' in found)) return NOTHING_TO_HOLD;
    const edited = this.#standingEdit(present, found.stance, key, target);
    return edited.ok ? null : edited.reason.sentence;
  }

  /** Puts a point where the side view was tapped, snapped if snapping is on. */
  placeAt(key: PointKey, xPx: number, yPx: number): void {
    const others = this.#handles.all
      .filter((each) => each.target.kind === 'point' && each.target.key !== key)
      .map((each) => each.place);
    const { view } = this.#view;
    const tapped = toGround(view, { x: xPx, y: yPx });
    this.place(key, snapPlace(tapped, others, view.scale, this.#preferences.data.snapping).place);
  }

  /** The edit, refused when the bike could not stand with the point there. */
  #standingEdit(
    from: BikeDocument,
    stance: Stance,
    key: PointKey,
    target: Point,
  ): Result<BikeDocument, EditReason> {
    const edited = placedEdit(from, stance, key, target);
    if (!edited.ok) return edited;
    const found = this.#standing.stand(edited.value);
    return 'stance' in found ? edited : fail({ path: key, sentence: this.#refusedPlace(found) });
  }

  #refusedPlace(problem: NoStand): string {
    return `Put back, because the bike could not stand like that. ${this.#advice.sentence(problem, null)}`;
  }

  #labelOf({ target }: Handle): string {
    return target.kind === 'point'
      ? pointLabel(target.key)
      : adjusterLabel(target.key, this.#session.document.bike.drive.kind);
  }

  #release(mark: Mark): void {
    this.#mark = null;
    this.#drawing.guides = [];
    this.#view.view = mark.view;
  }

  /**
   * Keeps the frame still on the screen while a point of it moves: the bike stands anew at every step, and without
   * this the point would run away from the hand. The ground tilts instead, until the point is let go.
   */
  #holdFrame({ document, stance, view }: Mark, key: PointKey): void {
    const { live, problem } = this.#standing.now;
    if (live === null || problem !== null) return;
    const { staysStill } = POINTS[key];
    if (staysStill === 'rearAxle' || staysStill === 'frontAxle') {
      // A patch lies straight below its axle: the axle stays still, and the bike pitches about it.
      const was = toScreen(view, stance[staysStill]);
      const is = toScreen(view, live.stance[staysStill]);
      this.#view.view = { ...view, xPx: view.xPx + was.x - is.x, yPx: view.yPx + was.y - is.y };
      return;
    }
    const before = document.bike.frame[staysStill];
    const after = live.bike.frame[staysStill];
    const was = toScreen(view, onGround(stance.pose, before));
    const turn = view.turn + stance.pose.pitch - live.stance.pose.pitch;
    const turned = { ...view, turn };
    const is = toScreen(turned, onGround(live.stance.pose, after));
    this.#view.view = { ...turned, xPx: turned.xPx + was.x - is.x, yPx: turned.yPx + was.y - is.y };
  }
}

/** The steps of a grip's adjuster for a nudge in mm: up and right raise that end of the bike, up and left move the axle back. */
function stepsOfNudge(key: GripKey, { x, y }: Point): number {
  const { moves } = adjusterOf(key);
  const steps = Math.max(1, Math.round(Math.hypot(x, y)));
  if (moves?.turnedAsHeight === undefined) return Math.sign(y !== 0 ? y : -x) * steps;
  return (moves.more === 'up' ? 1 : -1) * Math.sign(y !== 0 ? y : x) * steps;
}

function placedEdit(
  from: BikeDocument,
  stance: Stance,
  key: PointKey,
  target: Point,
): Result<BikeDocument, EditReason> {
  const moved = movePoint(key, { bike: from.bike, setup: from.setup, stance, target });
  return moved.ok
    ? replaceSketched(from, moved.value.bike, moved.value.setup)
    : fail({ path: key, sentence: MOVE_WORDS[moved.reason] });
}

function pointLabel(key: PointKey): string {
  return `Moved ${POINTS[key].label.toLowerCase()}`;
}
