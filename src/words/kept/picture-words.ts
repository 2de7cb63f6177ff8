/** The line under a saved picture: whose bike it is, what is shown, of which day and in which units. */
import type { UnitSystem } from '../../core/units/quantity.ts';
import { dayWords } from './sheet-words.ts';

export interface PictureAbout {
  readonly bikeName: string;
  /** Such as `Side view, rider on board`. */
  readonly what: string;
  /** As `2026-11-27`. */
  readonly day: string;
  readonly system: UnitSystem;
  readonly invented: boolean;
}

export function pictureLine({ bikeName, what, day, system, invented }: PictureAbout): string {
  const units = system === 'metric' ? 'mm' : 'inches';
  return [
    `${bikeName}. ${what}. ${dayWords(day)}.`,
    `Lengths in ${units}, angles in degrees.`,
    ...(invented ? ['Invented figures.'] : []),
  ].join(' ');
}
