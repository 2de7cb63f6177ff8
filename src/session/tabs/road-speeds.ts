/** Road speeds of a bike's gears with two pairs of sprockets, from what is known of its engine and rear tyre. */
import { engineSpeedChange, speedPerThousand } from '../../core/drive/road-speed.ts';
import type { Drive } from '../../core/parts/bike.ts';
import type { SprocketPair } from '../../core/effects/sprocket-pairs.ts';

export interface GearSpeed {
  /** Counted from 1. */
  readonly gear: number;
  readonly ratio: number;
  /** km/h at 1000 turns of the crankshaft a minute, with each pair. */
  readonly speed: number;
  readonly before: number;
}

export interface RoadSpeeds {
  readonly gears: readonly GearSpeed[];
  /** Change of engine speed at the same road speed and gear, per cent. */
  readonly engineChange: number;
}

/**
 * The speeds with `pair` beside those with `reference`, on a rear tyre of the stated rolling circumference, mm. No
 * gears without a primary ratio or without gearbox ratios; the change of engine speed needs neither.
 */
export function roadSpeeds(
  { gearRatios, primaryRatio }: Pick<Drive, 'gearRatios' | 'primaryRatio'>,
  circumference: number,
  pair: Pick<SprocketPair, 'ratio'>,
  reference: Pick<SprocketPair, 'ratio'>,
): RoadSpeeds {
  const speedWith = (finalDriveRatio: number, gearboxRatio: number): number | null => {
    if (primaryRatio === null) return null;
    const speed = speedPerThousand({ primaryRatio, gearboxRatio, finalDriveRatio, circumference });
    return speed.ok ? speed.value : null;
  };
  const gears = gearRatios.flatMap((ratio, index): GearSpeed[] => {
    const speed = speedWith(pair.ratio, ratio);
    const before = speedWith(reference.ratio, ratio);
    return speed === null || before === null ? [] : [{ gear: index + 1, ratio, speed, before }];
  });
  const engineChange = engineSpeedChange(
    { finalDriveRatio: reference.ratio, circumference },
    { finalDriveRatio: pair.ratio, circumference },
  );
  return { gears, engineChange };
}
