/** All readings in the words of a bike's drive; keys and numbers are the same. */
import type { DriveKind } from '../core/parts/drive-kind.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import type { Reading } from '../core/readings/reading.ts';
import { driveWords } from './drive-words.ts';

const OF_BELT: readonly Reading[] = READINGS.map((reading) => {
  const said = (words: string): string => driveWords(words, 'belt');
  const { label, more, less, help } = reading;
  const { what, sign, measured, feels } = help;
  return {
    ...reading,
    label: said(label),
    more: said(more),
    less: said(less),
    help: { what: said(what), sign: said(sign), measured: said(measured), feels: said(feels) },
  };
});

export function readingsOf(kind: DriveKind): readonly Reading[] {
  return kind === 'belt' ? OF_BELT : READINGS;
}
