/** Road speed from engine speed through the gears. */
import { fail, succeed, type Result } from '../numeric/result.ts';

/** What lies between crankshaft and road. Ratios are driven teeth over driving teeth, in turns per turn. */
export interface Gearing {
  readonly primaryRatio: number;
  readonly gearboxRatio: number;
  /** Rear teeth over front teeth. */
  readonly finalDriveRatio: number;
  /** Rolling circumference of the rear tyre, mm. */
  readonly circumference: number;
}

const MM_PER_KM = 1e6;
const MINUTES_PER_HOUR = 60;

/**
 * Speed in km/h at 1000 turns of the crankshaft a minute, without slip: 1000·circumference / (all ratios). Refused
 * when one of the numbers is not above zero.
 * Example: gearing.primaryRatio 2, gearing.gearboxRatio 1.2, gearing.finalDriveRatio 3, gearing.circumference 2000 mm
 * → 16.667 km/h.
 */
export function speedPerThousand(gearing: Gearing): Result<number, 'gearingImpossible'> {
  const { primaryRatio, gearboxRatio, finalDriveRatio, circumference } = gearing;
  const whole = primaryRatio * gearboxRatio * finalDriveRatio;
  const least = Math.min(primaryRatio, gearboxRatio, finalDriveRatio, circumference);
  if (!(least > 0) || !Number.isFinite(whole * circumference)) return fail('gearingImpossible');
  return succeed((1000 * MINUTES_PER_HOUR * circumference) / (whole * MM_PER_KM));
}

/**
 * Change of engine speed at the same road speed in the same gear, per cent, positive when the engine turns faster.
 * Ratios as in Gearing; circumferences only matter when the tyre changes.
 * Example: before.finalDriveRatio 3, before.circumference 2000 mm, after.finalDriveRatio 3.066667, after.circumference
 * 2000 mm → 2.2222 %.
 */
export function engineSpeedChange(
  before: Pick<Gearing, 'finalDriveRatio' | 'circumference'>,
  after: Pick<Gearing, 'finalDriveRatio' | 'circumference'>,
): number {
  return (
    100 *
    ((after.finalDriveRatio * before.circumference) / (before.finalDriveRatio * after.circumference) - 1)
  );
}
