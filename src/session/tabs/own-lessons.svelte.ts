/** A trainer's own lessons: made from how a bike stands, edited, kept in the store of the bikes, saved to files and opened from them. */
import { makeLesson, withPoint } from '../../lessons/make-lesson.ts';
import type { FiledLesson } from '../../lessons/lesson-file.ts';
import type { Lesson, LessonStep } from '../../lessons/lesson.ts';
import { openLesson } from '../../lessons/open-lesson.ts';
import { saveLesson } from '../../lessons/save-lesson.ts';
import { bikeFileName } from '../../storage/file/bike-file-name.ts';
import { download } from '../../storage/file/download.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { asMade, clearFormerLessons, formerLessons } from '../../storage/kept-lessons.ts';
import { newId } from '../../storage/new-id.ts';
import { readTextFile } from '../../storage/file/read-text-file.ts';
import { axleHeld, turned, type AsSet } from '../../core/effects/turn.ts';
import type { Workbench } from '../workbench.svelte.ts';

const ENDING = '.sidestance-lesson.json';

/** A lesson in the list, under the id that it has in the store. */
export interface OwnLesson extends FiledLesson {
  readonly id: string;
  /** When it was made, which is its place in the list. Milliseconds since 1970, UTC. */
  readonly madeAt: number;
}

/** What came of opening, saving or removing, to be said once. */
export interface LessonMessage {
  readonly kind: 'done' | 'warning' | 'error';
  readonly text: string;
  readonly details: readonly string[];
}

export class OwnLessons {
  readonly #bench: Workbench;
  #store: BikeStore | null = null;
  /** The lessons that the store does not hold as they are here, by their ids. */
  #unsaved: readonly string[] = [];
  /** Counts the changes: what was read before one is older than the list. */
  #changes = 0;
  list = $state.raw<readonly OwnLesson[]>([]);
  /** Why a text of the store is no lesson here, a sentence each; it stays there as it is. */
  unreadable = $state.raw<readonly string[]>([]);
  /** The lesson that is being edited, by its id. */
  editedId = $state<string | null>(null);
  message = $state.raw<LessonMessage | null>(null);
  /** What was removed last, so that it can come back. */
  removed = $state.raw<OwnLesson | null>(null);

  readonly edited: OwnLesson | null = $derived(this.list.find(({ id }) => id === this.editedId) ?? null);

  constructor(bench: Workbench) {
    this.#bench = bench;
  }

  /** Reads the lessons of the store. What it does not hold yet of those that are here is stored now. */
  async show(store: BikeStore): Promise<void> {
    this.#store = store;
    await this.#takeFormer(store);
    let changes = this.#changes;
    let found = await store.lessons();
    while (changes !== this.#changes) {
      changes = this.#changes;
      found = await store.lessons();
    }
    if (!found.ok) {
      this.message = { kind: 'error', text: found.reason.sentence, details: [] };
      return;
    }
    const unreadable: string[] = [];
    const stored = found.value.flatMap(({ id, madeAt, text }): OwnLesson[] => {
      if (this.#unsaved.includes(id)) return [];
      const opened = openLesson(text);
      if (opened.ok) return [{ ...opened.value.filed, id, madeAt }];
      unreadable.push(opened.reason.sentence);
      return [];
    });
    const waiting = this.list.filter(({ id }) => this.#unsaved.includes(id));
    this.list = [...stored, ...waiting].sort(asMade);
    this.unreadable = unreadable;
    for (const each of waiting) await this.#save(each);
  }

  /** Lessons of a former build come into the store, and are cleared away once all are there. */
  async #takeFormer(store: BikeStore): Promise<void> {
    const texts = formerLessons();
    if (texts.length === 0 || store.shortLived !== null) return;
    const now = Date.now();
    const lessons = texts.map((text, i) => ({ id: newId(), madeAt: now + i, text }));
    const added = await store.add({ bikes: [], versions: [], sheets: [], lessons, pictures: [] });
    if (added.ok) clearFormerLessons();
  }

  /** A lesson behind those that are here. */
  #newest(filed: FiledLesson): OwnLesson {
    const madeAt = this.list.reduce((latest, each) => Math.max(latest, each.madeAt + 1), Date.now());
    return { ...filed, id: newId(), madeAt };
  }

  /** The bike that a lesson of the list is tried on while it is edited: its bike or the one on the page, made ready. */
  asSetOf({ asSet, lesson }: FiledLesson): AsSet {
    const { bike, setup } = axleHeld(asSet ?? this.#bench.session.document);
    const made = turned({ bike, setup }, lesson.prepare, 'riderUp');
    return { bike, setup: made.ok ? made.setup : setup };
  }

  /** Makes a lesson of how the bike on the page stands, and opens it to be edited. */
  async make(): Promise<void> {
    const { bike, setup, baseline } = this.#bench.session.document;
    const { state } = this.#bench.standing;
    const from = { now: { bike, setup }, baseline: baseline.setup, state };
    const own = this.#newest(makeLesson(from, this.#bench.preferences.style));
    this.editedId = own.id;
    await this.#put(own);
  }

  /** Puts a lesson in place of the one that is edited. A step that tries something else expects what that does on its bike. */
  async change(lesson: Lesson): Promise<void> {
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
    await this.#put({ ...edited, lesson: { ...lesson, steps } });
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
    await this.add(filed);
    const { message } = this as { message: LessonMessage | null };
    if (message !== null) {
      this.message = {
        ...message,
        details: [...message.details, ...repairs.map(({ sentence }) => sentence)],
      };
      return;
    }
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
  async add(filed: FiledLesson): Promise<void> {
    this.message = null;
    await this.#put(this.#newest(filed));
  }

  async remove(own: OwnLesson): Promise<void> {
    this.removed = own;
    this.message = null;
    this.#changes++;
    this.#unsaved = this.#unsaved.filter((id) => id !== own.id);
    this.list = this.list.filter(({ id }) => id !== own.id);
    const gone = (await this.#store?.removeLesson(own.id)) ?? null;
    if (gone?.ok === false) this.message = { kind: 'error', text: gone.reason.sentence, details: [] };
  }

  async bringBack(): Promise<void> {
    const { removed } = this;
    if (removed === null) return;
    this.removed = null;
    await this.#put(removed);
  }

  /** Puts a lesson into its place of the list, instead of the one of its id, and stores it. */
  async #put(own: OwnLesson): Promise<void> {
    this.#changes++;
    this.#unsaved = [...this.#unsaved, own.id];
    this.list = [...this.list.filter(({ id }) => id !== own.id), own].sort(asMade);
    await this.#save(own);
  }

  async #save(own: OwnLesson): Promise<void> {
    const { id, madeAt } = own;
    const saved = (await this.#store?.saveLesson({ id, madeAt, text: saveLesson(own) })) ?? null;
    if (saved?.ok === true) {
      // What was changed meanwhile is on its way.
      if (this.list.includes(own)) this.#unsaved = this.#unsaved.filter((each) => each !== id);
      return;
    }
    this.message = {
      kind: 'warning',
      text: 'This browser does not keep your lessons. Save them to files before you close the page.',
      details: saved === null ? [] : [saved.reason.sentence],
    };
  }
}
