/** What a measuring state is: how the bike was held while a row was measured. */

/** In one setting the fork is always as long and the arm at the same angle. */
export type SuspensionSetting = 'makers' | 'loaded' | 'rider' | 'half' | 'hanging';

export interface MeasureState {
  readonly key: string;
  readonly label: string;
  /** How to hold the bike. */
  readonly help: string;
  readonly fork: SuspensionSetting;
  readonly arm: SuspensionSetting;
  /** Which wheels stand on the floor; the height of the other axle is an unknown of this state. */
  readonly frontOnFloor: boolean;
  readonly rearOnFloor: boolean;
  /** Whether scales may be read: nobody is on the bike and both wheels rest on something. */
  readonly weighed: boolean;
}
