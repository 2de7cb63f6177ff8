/** An adjuster in the words of a bike's drive. */
import type { DriveKind } from '../core/parts/drive-kind.ts';
import type { Adjuster } from '../core/standing/adjuster.ts';
import { driveWords } from './drive-words.ts';

export function wordedAdjuster(adjuster: Adjuster, kind: DriveKind): Adjuster {
  if (kind !== 'belt') return adjuster;
  const said = (words: string): string => driveWords(words, kind);
  const named = { label: said(adjuster.label), help: said(adjuster.help) };
  return adjuster.kind === 'number'
    ? { ...adjuster, ...named, more: said(adjuster.more), less: said(adjuster.less) }
    : { ...adjuster, ...named };
}
