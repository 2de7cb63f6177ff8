/** The weigh-in in words: the next figure to read, what is wrong with those read, and what they give. */
import { noStandWords } from '../trouble/no-stand-words.ts';
import type { WeighedBike } from '../../core/weighing/weighed-bike.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import type {
  OwnLength,
  UnlikeLength,
  WeighedEnd,
  WeighedKey,
} from '../../core/weighing/weigh-in-figures.ts';
import { shownChange, directionWord } from '../change/shown-change.ts';

/** How far a weigh-in has come. */
export interface WeighInProgress {
  /** The first figure that is still to be read; null when all are there. */
  readonly missing: WeighedKey | null;
  readonly raised: WeighedEnd;
  /** Whose scale is read with the axle raised. */
  readonly read: WeighedEnd;
  /** Null while no bike stands to be weighed. */
  readonly outcome: WeighedBike | NoStand | null;
}

/** Uncertainties of what is found, kg and mm. */
export interface WeighInErrors {
  readonly mass: number;
  readonly x: number;
  readonly y: number;
}

export const LENGTH_WORDS: Readonly<Record<OwnLength, string>> = {
  wheelbase: 'Wheelbase',
  frontRadius: 'Front tyre radius',
  rearRadius: 'Rear tyre radius',
};

export const ENDS: readonly { readonly key: WeighedEnd; readonly label: string }[] = [
  { key: 'front', label: 'Front' },
  { key: 'rear', label: 'Rear' },
];

/** The words of the figure that is still to be read. */
function missingWords(key: WeighedKey, raised: WeighedEnd, read: WeighedEnd): string {
  switch (key) {
    case 'front':
    case 'rear':
      return `Next: what the ${key} scale shows with the bike level.`;
    case 'lift':
      return `Next: how far the ${raised} axle was raised.`;
    case 'raisedReading':
      return `Next: what the ${read} scale shows with the ${raised} axle raised.`;
  }
}

/** A number with its uncertainty, both in the user's unit, such as "202.4 ± 0.7 kg". */
export function withError(value: number, error: number, quantity: QuantityKey, style: NumberStyle): string {
  const { digits } = writeNumber(value, quantity, style);
  return `${digits} ± ${writeNumber(error, quantity, style).text}`;
}

export interface FoundRow {
  readonly name: string;
  readonly text: string;
}

/** What was found, row by row. */
export function foundRows(
  { whole, frontShare, sprungMass, sprungCentre }: WeighedBike,
  errors: WeighInErrors,
  style: NumberStyle,
): FoundRow[] {
  const write = (value: number, quantity: QuantityKey): string => writeNumber(value, quantity, style).text;
  return [
    { name: 'Whole weight, as weighed', text: withError(whole.mass, errors.mass, 'mass', style) },
    {
      name: 'Centre of gravity ahead of rear contact patch',
      text: withError(whole.x, errors.x, 'length', style),
    },
    { name: 'Centre of gravity height', text: withError(whole.y, errors.y, 'length', style) },
    {
      name: 'On the front and rear wheel',
      text: `${write(frontShare, 'percent')}, ${write(100 - frontShare, 'percent')}`,
    },
    { name: 'Sprung weight, without fuel', text: write(sprungMass, 'mass') },
    {
      name: 'Its centre ahead of and above the pivot',
      text: `${write(sprungCentre.x, 'length')}, ${write(sprungCentre.y, 'length')}`,
    },
  ];
}

/** Why nothing can be used yet, and what to do; null when it can. */
export function hindrance(
  { missing, outcome, raised, read }: WeighInProgress,
  drive: DriveNoun,
  style: NumberStyle,
): string | null {
  if (missing !== null) return missingWords(missing, raised, read);
  if (outcome !== null && !outcome.ok) {
    const advice = noStandWords(outcome, drive, style);
    return outcome.reason === 'inputNotANumber' ? 'One of the figures is no number. Type it again.' : advice;
  }
  return null;
}

/** A length that the bike on the page does not have. */
export function unlikeWords({ key, measured, own }: UnlikeLength, style: NumberStyle): string {
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  const name = LENGTH_WORDS[key].toLowerCase();
  const change = shownChange(measured - own, 'length', style);
  const found = directionWord(change, {
    more: `${change.amount} more than the bike’s ${write(own)}`,
    less: `${change.amount} less than the bike’s ${write(own)}`,
    same: `not quite the bike’s ${write(own)}`,
  });
  return `The measured ${name} is ${found}. Correct the bike first, or its wheel loads will not be the scales’.`;
}
