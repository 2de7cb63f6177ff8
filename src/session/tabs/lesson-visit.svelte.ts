/** A lesson that came in a link: only shown beside the user's own until it is kept. */
import type { FiledLesson } from '../../lessons/lesson-file.ts';
import { openShortLesson } from '../../lessons/short-lesson.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { isLessonLink, unpackLessonLink } from '../../storage/link/lesson-link.ts';
import type { Workbench } from '../workbench.svelte.ts';
import { OwnLessons } from './own-lessons.svelte.ts';

export class LessonVisit {
  readonly #bench: Workbench;
  /** Counts the links that were opened: an answer that comes after a newer one is dropped. */
  #wish = 0;

  shown = $state.raw<FiledLesson | null>(null);
  /** Why the link was not opened; null where it was. */
  refusal = $state<string | null>(null);
  /** What of it does not fit here. */
  repairs = $state.raw<readonly string[]>([]);

  constructor(bench: Workbench) {
    this.#bench = bench;
  }

  /** Opens the lesson behind the page's address, if there is one. A link that cannot be opened leaves all as it is. */
  async open(fragment: string): Promise<void> {
    const wish = ++this.#wish;
    if (!isLessonLink(fragment)) return;
    const text = await unpackLessonLink(fragment);
    if (wish !== this.#wish) return;
    const opened = text.ok ? openShortLesson(text.value) : text;
    if (!opened.ok) {
      this.refusal = typeof opened.reason === 'string' ? opened.reason : opened.reason.sentence;
      return;
    }
    this.refusal = null;
    this.shown = opened.value.filed;
    this.repairs = opened.value.repairs.map(({ sentence }) => sentence);
  }

  /** Puts the lesson among the user's own in `store`, and says what came of it. */
  async keep(store: BikeStore | null): Promise<string> {
    const { shown } = this;
    if (shown === null) return '';
    this.shown = null;
    const own = this.#bench.stateOf(OwnLessons);
    if (store !== null) await own.show(store);
    await own.add(shown);
    return own.message?.kind === 'warning'
      ? own.message.text
      : 'The lesson is among your own now: Lessons, Your own.';
  }

  leave(): void {
    this.refusal = null;
    this.shown = null;
  }
}
