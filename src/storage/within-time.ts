/** Waiting for an answer, up to a given time. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';

/** The answer, or `late` when it has not come within the time; an answer that fails in time fails here too. */
export async function withinTime<T>(answer: Promise<T>, longestMs: number): Promise<Result<T, 'late'>> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<Result<T, 'late'>>((resolve) => {
    timer = setTimeout(() => resolve(fail('late')), longestMs);
  });
  try {
    return await Promise.race([answer.then(succeed), late]);
  } finally {
    clearTimeout(timer);
  }
}
