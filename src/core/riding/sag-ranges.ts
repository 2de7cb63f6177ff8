/** Sags that are common in the trade, by what the bike is used for. */

export type SagUse = 'road' | 'track' | 'offRoad';

export const SAG_USES: readonly { readonly key: SagUse; readonly label: string; readonly where: string }[] = [
  { key: 'road', label: 'Road', where: 'on the road' },
  { key: 'track', label: 'Track', where: 'on the track' },
  { key: 'offRoad', label: 'Off-road', where: 'off the road' },
];

/** mm of travel from hanging: fork along the legs, rear wheel square to the ground. */
export interface SagRange {
  readonly least: number;
  readonly most: number;
}

interface EndRanges {
  /** By the bike's own weight. */
  readonly free: SagRange;
  readonly rider: SagRange;
}

export interface SagRanges {
  readonly front: EndRanges;
  readonly rear: EndRanges;
}

/** What riders and tuners set; a starting place, never a limit. Off-road figures go with about 300 mm of travel. */
export const SAG_RANGES: Readonly<Record<SagUse, SagRanges>> = {
  road: {
    front: {
      free: { least: 15, most: 30 }, // common practice, no source
      rider: { least: 30, most: 45 }, // common practice, no source
    },
    rear: {
      free: { least: 5, most: 15 }, // common practice, no source
      rider: { least: 25, most: 40 }, // common practice, no source
    },
  },
  track: {
    front: {
      free: { least: 15, most: 25 }, // common practice, no source
      rider: { least: 25, most: 40 }, // common practice, no source
    },
    rear: {
      free: { least: 5, most: 12 }, // common practice, no source
      rider: { least: 20, most: 35 }, // common practice, no source
    },
  },
  offRoad: {
    front: {
      free: { least: 30, most: 50 }, // common practice, no source
      rider: { least: 60, most: 85 }, // common practice, no source
    },
    rear: {
      free: { least: 25, most: 45 }, // common practice, no source
      rider: { least: 90, most: 110 }, // common practice, no source
    },
  },
};
