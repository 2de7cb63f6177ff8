/** Everything on the side view that a hand or a key can take hold of, with its place and its words. */
import { untrack } from 'svelte';
import { GRIPS, gripPlace, type GripKey } from '../core/sketch/grips.ts';
import { pointPlace, pointsOf, type PointKey } from '../core/sketch/points.ts';
import { adjusterLabel, namedAdjusters } from '../core/adjusters/named-adjusters.ts';
import { doesApply } from '../core/adjusters/does-apply.ts';
import type { Point } from '../core/plane/point.ts';
import { writeNumber } from '../core/units/number-style.ts';
import type { Box } from '../scene/shapes/label-placing.ts';
import { toScreen } from '../scene/shapes/view.ts';
import type { Mode } from './mode.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';
import type { SideView } from './side-view.svelte.ts';

export type HandleTarget =
  { readonly kind: 'point'; readonly key: PointKey } | { readonly kind: 'grip'; readonly key: GripKey };

/** What a handle is, which a drag does not change. */
export interface HandleKind {
  readonly id: string;
  readonly target: HandleTarget;
  readonly name: string;
  readonly help: string;
  /** Points are locked unless the bike is being edited; grips work whenever adjusters do. */
  readonly locked: boolean;
}

export interface Handle extends HandleKind {
  readonly place: Point;
  readonly screen: Point;
}

/** Half the size of a handle as it is seen, px. */
const GRIP_HALF_PX = 13;
const POINT_HALF_PX = 9;

export class Handles {
  readonly #standing: Standing;
  readonly #mode: Mode;
  readonly #preferences: Preferences;
  readonly #view: SideView;

  readonly #points: readonly Handle[] = $derived.by(() => {
    const { live } = this.#standing.now;
    if (live === null) return [];
    const locked = this.#mode.current !== 'edit';
    return pointsOf(live.bike).flatMap(({ key, label, help }) => {
      const place = pointPlace(live.stance, live.bike, key);
      if (place === null) return [];
      return [this.#handle({ kind: 'point', key }, label, help, place, locked)];
    });
  });

  readonly #grips: readonly Handle[] = $derived.by(() => {
    const { live } = this.#standing.now;
    if (live === null) return [];
    const locked = this.#mode.current !== 'adjusters';
    const adjusters = namedAdjusters(live.bike.drive.kind).filter((each) =>
      doesApply(each, live.bike, live.setup),
    );
    return GRIPS.flatMap(({ key, label }) => {
      const adjuster = adjusters.find((each) => each.key === key);
      if (adjuster === undefined) return [];
      const place = gripPlace(live.stance, key);
      return [this.#handle({ kind: 'grip', key }, label, adjuster.help, place, locked)];
    });
  });

  readonly all: readonly Handle[] = $derived([...this.#grips, ...this.#points]);
  readonly #at: Readonly<Record<string, Handle | undefined>> = $derived(
    Object.fromEntries(this.all.map((handle) => [handle.id, handle])),
  );
  /** What there is to take hold of, in words that change with the bike and the mode only. */
  readonly #kindsInWords = $derived(
    this.all.map(({ id, locked, help }) => `${id} ${locked} ${help}`).join('\n'),
  );
  /** All handles without their places: the same ones for as long as a drag lasts, so that none is made anew. */
  readonly kinds: readonly HandleKind[] = $derived.by(() =>
    this.#kindsInWords === '' ? [] : untrack(() => this.all),
  );
  /** Those that can be taken hold of now. */
  readonly free: readonly Handle[] = $derived(this.all.filter((handle) => !handle.locked));

  /** The handles that are seen, as boxes that words keep clear of; px of the screen. */
  readonly boxes: readonly Box[] = $derived(
    this.all
      .filter((handle) => this.isSeen(handle))
      .map(({ screen, target }) => {
        const half = target.kind === 'grip' ? GRIP_HALF_PX : POINT_HALF_PX;
        return {
          left: screen.x - half,
          top: screen.y - half,
          right: screen.x + half,
          bottom: screen.y + half,
        };
      }),
  );

  constructor(standing: Standing, mode: Mode, preferences: Preferences, view: SideView) {
    this.#standing = standing;
    this.#mode = mode;
    this.#preferences = preferences;
    this.#view = view;
  }

  /** The handle of an id, where it is now; undefined when the bike no longer has it. */
  at(id: string): Handle | undefined {
    return this.#at[id];
  }

  /** Whether a handle is drawn: those that can be taken hold of, and points to measure between. */
  isSeen({ locked, target }: HandleKind): boolean {
    return !locked || (this.#mode.current === 'measure' && target.kind === 'point');
  }

  /** Where a handle is, or what its adjuster says, in words at their pace; empty while no bike stands. */
  wordsOf({ target }: HandleKind): string {
    const { live } = this.#standing;
    if (live === null) return '';
    if (target.kind === 'grip') {
      const { key } = target;
      return `${adjusterLabel(key, live.bike.drive.kind)} ${this.#length(live.setup[key])}`;
    }
    const place = pointPlace(live.stance, live.bike, target.key);
    return place === null
      ? ''
      : `${this.#length(place.x)} ahead of the rear contact patch, ${this.#length(place.y)} high`;
  }

  #length(value: number): string {
    return writeNumber(value, 'length', this.#preferences.style).text;
  }

  #handle(target: HandleTarget, name: string, help: string, place: Point, locked: boolean): Handle {
    const screen = toScreen(this.#view.view, place);
    return { id: `${target.kind}-${target.key}`, target, name, help, place, screen, locked };
  }
}
