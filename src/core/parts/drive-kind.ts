/** Kinds of final drive, by where the driving torque is held. */

/**
 * `chain` and `belt` pull at a distance from the pivot. With `shaft` and `hub` the
 * swingarm itself holds the torque, unless a torque arm holds the shaft's housing.
 */
export type DriveKind = 'chain' | 'belt' | 'shaft' | 'hub';

/** Whether the drive pulls along a run between countershaft and wheel, so that sprockets and runs count. */
export function hasRuns(kind: DriveKind): boolean {
  return kind === 'chain' || kind === 'belt';
}
