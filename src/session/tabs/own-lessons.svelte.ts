/** A trainer's own lessons: made from how a bike stands, edited, kept in this browser, saved to files and opened from them. */
import { makeLesson, withPoint } from '../../lessons/make-lesson.ts';
import type { FiledLesson } from '../../lessons/lesson-file.ts';
import type { Lesson, LessonStep } from '../../lessons/lesson.ts';
import { openLesson } from '../../lessons/open-lesson.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import { bikeFileName } from '../../storage/bike-file-name.ts';
import { download } from '../../storage/download.ts';
import { keepLessons, keptLessons } from '../../storage/kept-lessons.ts';
import { readTextFile } from '../../storage/read-text-file.ts';
import type { AsSet } from '../../core/effects/turn.ts';
import type { Workbench } from '../workbench.svelte.ts';

const ENDING = '.sidestance-lesson.json';

/** A lesson in the list, under a number that stays with it. */
export interface OwnLesson extends FiledLesson {
  readonly id: number;
}

/** What came of opening, saving or removing, to be said once. */
export interface LessonMessage {
  readonly kind: 'done' | 'warning' | 'error';
  readonly text: string;
  readonly details: readonly string[];
}

export class OwnLessons {
  readonly #bench: Workbench;
  #nextId = 0;
  list = $state.raw<readonly OwnLesson[]>([]);
  /** The lesson that is being edited, by its id. */
  editedId = $state<number | null>(null);
  message = $state.raw<LessonMessage | null>(null);
  /** What was removed last and where it stood, so that it can come back. */
  removed = $state.raw<{ readonly own: OwnLesson; readonly index: number } | null>(null);

  readonly edited: OwnLesson | null = $derived(this.list.find(({ id }) => id === this.editedId) ?? null);

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.list = keptLessons().flatMap((text): OwnLesson[] => {
      const found = openLesson(text);
      return found.ok ? [this.#numbered(found.value.filed)] : [];
    });
  }

  #numbered(filed: FiledLesson): OwnLesson {
    return { ...filed, id: this.#nextId++ };
  }

  /** The bike that a lesson of the list is tried on while it is edited: its bike, or the one on the page. */
  asSetOf({ asSet }: FiledLesson): AsSet {
    const { bike, setup } = this.#bench.session.document;
    return asSet ?? { bike, setup };
  }

  /** Makes a lesson of how the bike on the page stands, and opens it to be edited. */
  make(): void {
    const { bike, setup, baseline } = this.#bench.session.document;
    const { state } = this.#bench.standing;
    const from = { now: { bike, setup }, baseline: baseline.setup, state };
    const own = this.#numbered(makeLesson(from, this.#bench.preferences.style));
    this.#take([...this.list, own]);
    this.editedId = own.id;
  }

  /** Puts a lesson in place of the one that is edited. A step that tries something else expects what that does on its bike. */
  change(lesson: Lesson): void {
    const { edited } = this;
    if (edited === null) return;
    const asSet = this.asSetOf(edited);
    const tries = ({ turns, state, figure }: LessonStep): readonly unknown[] => [turns, state, figure];
    const steps = lesson.steps.map((step) => {
      const isTried = edited.lesson.steps.some((each) =>
        tries(each).every((part, index) => part === tries(step)[index]),
      );
      return isTried ? step : withPoint(step, asSet);
    });
    this.#take(
      this.list.map((each) => (each.id === edited.id ? { ...each, lesson: { ...lesson, steps } } : each)),
    );
  }

  /** Gives a lesson to the browser's downloads. */
  save(own: OwnLesson): void {
    const name = bikeFileName(own.lesson.title, ENDING);
    download(name, new Blob([saveLesson(own)], { type: 'application/json' }));
    this.message = { kind: 'done', text: `Saved as ${name}.`, details: [] };
  }

  /** Opens a file beside the lessons that are here, or says why not. */
  async open(file: File): Promise<void> {
    const text = await readTextFile(file);
    const found = text.ok ? openLesson(text.value) : text;
    if (!found.ok) {
      this.message = {
        kind: 'error',
        text: `${file.name} was not opened. ${found.reason.sentence}`,
        details: [],
      };
      return;
    }
    const { filed, repairs } = found.value;
    this.add(filed);
    this.message =
      repairs.length === 0
        ? { kind: 'done', text: `“${filed.lesson.title}” was opened.`, details: [] }
        : {
            kind: 'warning',
            text: `“${filed.lesson.title}” was opened, but not all of it fits here. The file itself stays as it is.`,
            details: repairs.map(({ sentence }) => sentence),
          };
  }

  /** Puts a lesson behind those that are here. */
  add(filed: FiledLesson): void {
    this.#take([...this.list, this.#numbered(filed)]);
  }

  remove(own: OwnLesson): void {
    this.removed = { own, index: this.list.indexOf(own) };
    this.message = null;
    this.#take(this.list.filter((each) => each !== own));
  }

  bringBack(): void {
    const { removed } = this;
    if (removed === null) return;
    this.removed = null;
    this.#take([...this.list.slice(0, removed.index), removed.own, ...this.list.slice(removed.index)]);
  }

  #take(list: readonly OwnLesson[]): void {
    this.list = list;
    if (!keepLessons(list.map((each) => saveLesson(each))))
      this.message = {
        kind: 'warning',
        text: 'This browser does not keep your lessons. Save them to files before you close the page.',
        details: [],
      };
  }
}
