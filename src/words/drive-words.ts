/** The words of a chain drive, turned to those of the drive that a bike has. */
import type { DriveKind } from '../core/parts/drive-kind.ts';

/** Of a toothed belt: what a chain's links are to it are its teeth. A roller chain named as such stays one. */
const OF_BELT: readonly (readonly [RegExp, string])[] = [
  [/\bchain link\b/g, 'belt tooth'],
  [/(\d|in hand,)([ \u00a0])links?\b/g, '$1$2teeth'],
  [/(?<!roller )\bchain/g, 'belt'],
  [/\bChain/g, 'Belt'],
];

/**
 * A sentence or a name that was written for a chain, as it is said of this drive. Texts are written for a chain and go
 * through here where they are shown. Of a shaft or hub they stay as they are: what speaks of runs is not shown of those.
 */
export function driveWords(text: string, kind: DriveKind): string {
  return kind === 'belt' ? OF_BELT.reduce((words, [from, to]) => words.replace(from, to), text) : text;
}
