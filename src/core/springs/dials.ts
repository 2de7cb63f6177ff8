/** The dials: what a mechanic can adjust, all of them in one list. */
import type { Bike } from '../chassis/bike.ts';
import type { DialKey } from '../chassis/setup.ts';
import type { DriveKind } from '../drive/drive-kind.ts';
import { driveWords } from '../drive/drive-words.ts';
import { CHASSIS_DIALS } from './chassis-dials.ts';
import type { Dial, NumberDial } from './dial.ts';
import { RIDING_DIALS } from './riding-dials.ts';
import { SPRING_DIALS } from './spring-dials.ts';

/** Ranges are those of common practice in a workshop; what geometry allows is found by the model itself. */
export const DIALS: readonly Dial[] = [...CHASSIS_DIALS, ...SPRING_DIALS, ...RIDING_DIALS];

/** The dial of a key. Every key of a setup has one; the suite checks that. */
export function dialOf(key: DialKey): Dial {
  const dial = DIALS.find((d) => d.key === key);
  if (dial === undefined) throw new Error(`No dial is named ${key}`);
  return dial;
}

/** A dial in the words of a bike's drive. */
export function wordedDial(dial: Dial, kind: DriveKind): Dial {
  if (kind !== 'belt') return dial;
  const said = (words: string): string => driveWords(words, kind);
  const named = { label: said(dial.label), help: said(dial.help) };
  return dial.kind === 'number'
    ? { ...dial, ...named, more: said(dial.more), less: said(dial.less) }
    : { ...dial, ...named };
}

/** Decimals kept of a dialled value: takes rounding noise away, far below any adjuster's step. */
const DIAL_DECIMALS = 6;

/** The value `steps` steps on from `value`, held within the dial's range. */
export function steppedDial(dial: NumberDial, bike: Bike, value: number, steps: number): number {
  const { least, most, step } = dial.range(bike);
  const moved = Number((value + steps * step).toFixed(DIAL_DECIMALS));
  return Math.min(most, Math.max(least, moved));
}
