/** Tests of the readings that need a chain run, and of what they say of a shaft or hub drive. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { READINGS } from './all-readings.ts';
import { antiSquat } from './anti-squat.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { withoutRun } from './without-run.ts';
import { absent } from './absent.ts';

it('are absent with a shaft or a hub motor, and the rest have their numbers', () => {
  for (const driveKind of ['shaft', 'hub'] as const) {
    const on = stanceWith({ machine: { driveKind }, chainSlope: 0 });
    expect(withoutRun(on)).toBe(absent('noRun'));
    const without = READINGS.filter((reading) => reading.read(on) === absent('noRun')).map(({ key }) => key);
    expect(without).toEqual([
      'antiSquatChain',
      'upperRunAngle',
      'lowerRunAngle',
      'chainSliderClearance',
      'lowerRunClearance',
      'freeTravel',
      'spareLength',
      'finalDriveRatio',
      'frontSprocketHeight',
    ]);
    expect(antiSquat.read(on)).toBe(antiSquatSwingarm.read(on));
  }
});

it('are there with a chain and with a belt', () => {
  for (const driveKind of ['chain', 'belt'] as const)
    expect(withoutRun(stanceWith({ machine: { driveKind } }))).toBeNull();
});
