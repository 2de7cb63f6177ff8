/** The saved fields of springs: what works beside a coil at either end, and the shock. */
import type { Shock, SpringEnds } from '../../core/parts/bike.ts';
import { length, rate, thread } from './bounds.ts';
import { documented, numberField, numberOrNone, part, type Part } from './field.ts';
import { supportField } from './support-fields.ts';

/** Powers beyond these are no rubber and no oil lock. */
const exponent = { least: 1, most: 10, quantity: 'ratio' } as const;

/** What works beside the coil spring of one leg or one shock; `of` names it. */
export function springEnds(of: 'fork' | 'shock'): Part<SpringEnds> {
  const used = of === 'fork' ? 'Travel used' : 'Stroke used';
  return part<SpringEnds>(`ends of the ${of} spring`, 'What works beside the coil spring.', {
    springTravel: numberOrNone(
      {
        words: `${of} spring’s own travel`,
        help: 'How far the spring can be compressed before it is coil-bound; none when not known.',
      },
      length,
    ),
    preloadThread: numberOrNone(
      {
        words: `${of} preload thread`,
        help: 'How far one turn of the preload adjuster moves it; none when it has no thread.',
      },
      thread,
    ),
    mostPreload: numberOrNone(
      {
        words: `most preload of the ${of} adjuster`,
        help: 'Preload with the adjuster turned all the way in; none when not known.',
      },
      length,
    ),
    topOutLength: numberOrNone(
      {
        words: `${of} top-out spring’s length`,
        help: 'Travel over which it works, from full extension; none without one.',
      },
      length,
    ),
    topOutRate: numberField(
      { words: `${of} top-out spring’s rate`, help: 'Counts only with a top-out spring.' },
      documented(50),
      rate,
    ),
    bumpStart: numberOrNone(
      {
        words: of === 'fork' ? 'oil lock or bump stop of the fork begins at' : 'bump stop begins at',
        help: `${used} at which it begins to work; none without one.`,
      },
      length,
    ),
    bumpRate: numberField(
      {
        words: of === 'fork' ? 'oil lock’s or bump stop’s rate' : 'bump stop’s rate',
        help: 'Force at full compression divided by its depth.',
      },
      documented(50),
      rate,
    ),
    bumpExponent: numberField(
      {
        words: of === 'fork' ? 'oil lock’s or bump stop’s stiffening' : 'bump stop’s stiffening',
        help: '1 for a straight rate; more stiffens toward the end, an oil lock 2 to 3.',
      },
      documented(2),
      exponent,
    ),
  });
}

export const shock = part<Shock>('shock', 'The rear shock, or both of them.', {
  count: numberField(
    { words: 'number of shocks', help: 'Shocks that share the load: 1, or 2 alike side by side.' },
    documented(1),
    { least: 1, most: 2, quantity: 'count', whole: true },
  ),
  ends: springEnds('shock'),
  support: supportField('shock'),
});
