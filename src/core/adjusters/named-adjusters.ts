/** The adjusters in the words of a bike's drive, as they are shown. */
import type { DriveKind } from '../parts/drive-kind.ts';
import { BELT, CHAIN, driveNoun, nameDrive, type DriveNoun } from '../parts/drive-noun.ts';
import {
  ADJUSTERS,
  adjusterOf,
  type Adjuster,
  type NumberAdjuster,
  type NumberOrNoneAdjuster,
  type TyreAdjuster,
} from './all-adjusters.ts';
import type { AdjusterKey } from './setup.ts';

/** An adjuster with its texts in the words of one drive. */
export type Named<Each extends Adjuster> = Each & { readonly label: string; readonly help: string };
export type NamedAdjuster = Named<NumberAdjuster> | Named<NumberOrNoneAdjuster> | Named<TyreAdjuster>;

function nameAdjuster(adjuster: Adjuster, drive: DriveNoun): NamedAdjuster {
  return { ...adjuster, label: nameDrive(adjuster.label, drive), help: nameDrive(adjuster.help, drive) };
}

// Made once for each drive: at every step of a drag the page would draw a new object again.
const OF_CHAIN: readonly NamedAdjuster[] = ADJUSTERS.map((adjuster) => nameAdjuster(adjuster, CHAIN));
const OF_BELT: readonly NamedAdjuster[] = ADJUSTERS.map((adjuster) => nameAdjuster(adjuster, BELT));

/** All adjusters in the words of a drive; keys and numbers are the same. */
export function namedAdjusters(kind: DriveKind): readonly NamedAdjuster[] {
  return driveNoun(kind) === BELT ? OF_BELT : OF_CHAIN;
}

/** What an adjuster is called on a bike with this drive. */
export function adjusterLabel(key: AdjusterKey, kind: DriveKind): string {
  return nameDrive(adjusterOf(key).label, driveNoun(kind));
}
