/** What a drive is called: the nouns that labels, help and sentences put in where they name chain or belt. */
import type { DriveKind } from './drive-kind.ts';

/** The nouns of a drive that pulls along runs. */
export interface DriveNoun {
  /** What pulls, within a sentence and at its head. */
  readonly loop: 'chain' | 'belt';
  readonly Loop: 'Chain' | 'Belt';
  /** What its length is counted in: a chain's links, a toothed belt's teeth. */
  readonly unit: 'link' | 'tooth';
  readonly units: 'links' | 'teeth';
  /** What it lies on at the pivot; a chain's has its other name beside it at first use. */
  readonly slider: 'chain slider' | 'guide';
  readonly sliderInFull: 'chain slider [rub strip]' | 'guide';
}

export const CHAIN: DriveNoun = {
  loop: 'chain',
  Loop: 'Chain',
  unit: 'link',
  units: 'links',
  slider: 'chain slider',
  sliderInFull: 'chain slider [rub strip]',
};
export const BELT: DriveNoun = {
  loop: 'belt',
  Loop: 'Belt',
  unit: 'tooth',
  units: 'teeth',
  slider: 'guide',
  sliderInFull: 'guide',
};

/**
 * The nouns for a kind of drive. Shaft and hub take a chain's: a text that names runs is not shown for those, or says
 * that they have none.
 */
export function driveNoun(kind: DriveKind): DriveNoun {
  return kind === 'belt' ? BELT : CHAIN;
}

/** A label or help text: the same for every drive, or written with the drive's nouns. */
export type DriveText = string | ((drive: DriveNoun) => string);

/** The text for one drive. */
export function nameDrive(text: DriveText, drive: DriveNoun): string {
  return typeof text === 'string' ? text : text(drive);
}
