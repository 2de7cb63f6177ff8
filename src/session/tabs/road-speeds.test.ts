/** Tests of road speeds through the gears. */
import { describe, expect, it } from 'vitest';
import { roadSpeeds } from './road-speeds.ts';

const drive = { primaryRatio: 2, gearRatios: [2.5, 1] };

describe('road speeds', () => {
  it('come for each gear, with both pairs', () => {
    const { engineChange, gears } = roadSpeeds(drive, 2000, { ratio: 46 / 15 }, { ratio: 3 });
    // 1000 turns a minute, two metres a turn: 120 km/h before any ratio.
    expect(gears.map(({ before }) => before)).toEqual([8, 20]);
    expect(gears[1].speed).toBeCloseTo(20 / (46 / 45), 12);
    expect(gears.map(({ gear }) => gear)).toEqual([1, 2]);
    expect(engineChange).toBeCloseTo(2.2222, 4);
  });

  it('need primary and gearbox ratios; the change of engine speed needs neither', () => {
    for (const part of [{ primaryRatio: null }, { gearRatios: [] }]) {
      const found = roadSpeeds({ ...drive, ...part }, 2000, { ratio: 3 }, { ratio: 2.5 });
      expect(found.gears).toEqual([]);
      expect(found.engineChange).toBeCloseTo(20, 12);
    }
  });
});
