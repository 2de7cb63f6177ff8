/** The figures that a weigh-in needs from a person, by name. */

export type WeighedEnd = 'front' | 'rear';
/** What only the user can read off. */
export type WeighedKey = 'front' | 'rear' | 'lift' | 'raisedReading';
/** Lengths that the bike has already, until they are measured. */
export type OwnLength = 'wheelbase' | 'frontRadius' | 'rearRadius';

/** A measured length that differs from the one of the bike on the page, mm. */
export interface UnlikeLength {
  readonly key: OwnLength;
  readonly measured: number;
  readonly own: number;
}
