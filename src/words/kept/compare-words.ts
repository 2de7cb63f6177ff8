/** Setups side by side in words: each adjuster that differs, what each bike reads, and what cannot be compared. */
import { isAdjusterChanged } from '../../core/adjusters/changed-adjusters.ts';
import { namedAdjusters, type NamedAdjuster } from '../../core/adjusters/named-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import type { MeasuredPart } from '../../core/effects/compare-setups.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { listAll } from '../list-all.ts';
import { writeReading, writeReadingChange } from './paper-words.ts';
import { settingWords } from '../change/setup-difference.ts';
import { dayWords } from './sheet-words.ts';

/** Digits added at most, so that two settings that differ do not read the same. */
const MOST_EXTRA_DIGITS = 4;

/** A setting in one column of the table. */
export interface SettingCell {
  readonly text: string;
  /** Whether it differs from the first column's. */
  readonly differs: boolean;
}

/** An adjuster that differs, in the order of the columns; null where the bike of a column has other measured figures. */
export interface SettingRow {
  readonly key: AdjusterKey;
  readonly label: string;
  readonly cells: readonly (SettingCell | null)[];
}

/** A row for each of the adjusters given; `setups` begins with the one that the others are held against. */
export function settingRows(
  keys: readonly AdjusterKey[],
  setups: readonly [Setup, ...(Setup | null)[]],
  kind: DriveKind,
  style: NumberStyle,
): SettingRow[] {
  const [first] = setups;
  return namedAdjusters(kind)
    .filter(({ key }) => keys.includes(key))
    .map((adjuster) => {
      const { key, label } = adjuster;
      const texts = settingTexts(adjuster, setups, kind, style);
      const cells = setups.map((setup, i): SettingCell | null =>
        setup === null ? null : { text: texts[i], differs: isAdjusterChanged(key, setup, first) },
      );
      return { key, label, cells };
    });
}

/** Where an adjuster stands in each setup, with as many digits as it takes for different settings to read apart. */
function settingTexts(
  adjuster: NamedAdjuster,
  setups: readonly (Setup | null)[],
  kind: DriveKind,
  style: NumberStyle,
): string[] {
  const isPlaced = (setup: Setup): boolean =>
    'placedBy' in adjuster && adjuster.placedBy !== undefined && setup[adjuster.placedBy] !== null;
  const readAlike = (texts: readonly string[]): boolean =>
    setups.some((one, i) =>
      setups.some(
        (other, k) =>
          one !== null &&
          other !== null &&
          texts[i] === texts[k] &&
          isAdjusterChanged(adjuster.key, other, one),
      ),
    );
  for (let extraDigits = 0; ; extraDigits++) {
    const texts = setups.map((setup) => {
      if (setup === null) return '';
      if (isPlaced(setup)) return `where the ${driveNoun(kind).loop} puts it`;
      return settingWords(adjuster, setup, style, extraDigits);
    });
    if (!readAlike(texts) || extraDigits === MOST_EXTRA_DIGITS) return texts;
  }
}

/** "27 other adjusters are the same." */
export function sameAdjustersWords(same: number): string {
  if (same === 1) return 'One other adjuster is the same.';
  return `${same} other adjusters are the same.`;
}

/** What a bike reads in one column of the table. */
export interface ReadingCell {
  readonly text: string;
  /** Signed and with its word against the first column; "same" for equal figures, empty in that column and without a figure. */
  readonly change: string;
}

/** A reading in the order of the columns. */
export interface ReadingRow {
  readonly key: string;
  readonly label: string;
  readonly cells: readonly ReadingCell[];
}

/** The readings that are not written alike in all columns, and how many are. */
export interface ReadingsCompared {
  readonly rows: readonly ReadingRow[];
  readonly same: number;
}

/**
 * What each bike reads, null for one that does not stand, with the change against the bike at `from`: of the figures as
 * they are written, so that a person who subtracts them finds it.
 */
export function compareReadings(
  readings: readonly Reading[],
  bikes: readonly (StandingBike | null)[],
  from: number,
  style: NumberStyle,
): ReadingsCompared {
  const rows = readings.map((reading): ReadingRow => ({
    key: reading.key,
    label: reading.label,
    cells: bikes.map((on, i) => ({
      text: writeReading(reading, on, style),
      change: i === from ? '' : writeReadingChange(reading, bikes[from], on, style),
    })),
  }));
  const standing = bikes.flatMap((on, i) => (on === null ? [] : [i]));
  const isSame = ({ cells }: ReadingRow): boolean =>
    standing.every((i) => cells[i].text === cells[standing[0]].text);
  const differing = rows.filter((row) => !isSame(row));
  return { rows: differing, same: rows.length - differing.length };
}

/** "9 readings are the same in all." */
export function sameReadingsWords(same: number): string {
  return same === 1 ? 'One reading is the same in all.' : `${same} readings are the same in all.`;
}

/** The setups of a comparison with their letters, such as "A Baseline and B Now". */
export function comparedNames(
  compared: readonly { readonly letter: string; readonly name: string }[],
): string {
  return listAll(compared.map(({ letter, name }) => `${letter} ${name}`));
}

/** What is said of a damaged sheet of another bike; `why` is a sentence. */
export function leftOutWords(bikeName: string, day: string, why: string): string {
  return `${bikeName}: its sheet of ${dayWords(day)} is left out. ${why}`;
}

const PART_WORDS: Readonly<Record<MeasuredPart, string>> = {
  frame: 'frame',
  fork: 'fork',
  swingarm: 'swingarm and rear links',
  shock: 'shock',
  rearBrake: 'rear brake',
  housing: 'shaft housing',
  frontWheel: 'front wheel',
  rearWheel: 'rear wheel',
  drive: 'drive',
};

/** Why a setup's adjusters are not held against the first one's. `parts` are those measured otherwise. */
export function notComparedWords(name: string, first: string, parts: readonly MeasuredPart[]): string {
  const measured = listAll(parts.map((part) => PART_WORDS[part]));
  return `${name} and ${first} have different measured figures: ${measured}. The same adjuster setting means something else on each, so their adjusters are not compared, only their readings.`;
}
