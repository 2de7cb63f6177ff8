/** Asks about a measured bike in a thread beside the page, or on the page where the browser starts no thread. */
import type {
  AnswerTo,
  FromMeasurer,
  MeasureAnswer,
  MeasuredBy,
  MeasureQuestion,
  ToMeasurer,
} from './measure-messages.ts';

/** What becomes of a question whose thread failed. */
type OnPage = typeof import('./run-measuring.ts');

export class MeasuringThread {
  #worker: Worker | null = null;
  #hasFailed = typeof Worker === 'undefined';
  #number = 0;
  /** By its number, what waits for an answer. */
  readonly #waiting = new Map<
    number,
    { readonly by: ToMeasurer; readonly take: (answer: MeasureAnswer) => void }
  >();

  /** The answer, computed beside the page; null where the sheet leads to no bike. */
  async ask<What extends MeasureQuestion['what']>(
    by: MeasuredBy,
    question: Extract<MeasureQuestion, { readonly what: What }>,
  ): Promise<AnswerTo<What>> {
    const answer = await this.#answer(by, question);
    return answer.found as AnswerTo<What>;
  }

  #answer(by: MeasuredBy, question: MeasureQuestion): Promise<MeasureAnswer> {
    const number = ++this.#number;
    const { start, sheet } = by;
    const message: ToMeasurer = { kind: 'measure', number, start, sheet, question };
    if (this.#hasFailed) return answerOnPage(message);
    return new Promise((take) => {
      this.#waiting.set(number, { by: message, take });
      this.#thread().postMessage(message);
    });
  }

  #thread(): Worker {
    if (this.#worker !== null) return this.#worker;
    const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FromMeasurer>) => {
      this.#waiting.get(data.number)?.take(data.answer);
      this.#waiting.delete(data.number);
    });
    worker.addEventListener('error', () => {
      this.#hasFailed = true;
      worker.terminate();
      for (const { by, take } of this.#waiting.values()) void answerOnPage(by).then(take);
      this.#waiting.clear();
    });
    this.#worker = worker;
    return worker;
  }
}

async function answerOnPage({ question, ...by }: ToMeasurer): Promise<MeasureAnswer> {
  const { runMeasuring }: OnPage = await import('./run-measuring.ts');
  return runMeasuring(by, question);
}
