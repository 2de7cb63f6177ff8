/** Sprocket pitch circles against the published table. */
import { describe, expect, it } from 'vitest';
import table from '../../fixtures/reference/sprocket-diameters.json';
import { pitchRadius } from '../../src/core/drive/sprocket.ts';

/** Half the last printed digit, with room for the rounding of the sum. */
const PRINTED = 0.0050001;

// Source: beside each row of fixtures/reference/sprocket-diameters.json.
describe('pitch diameters', () => {
  it('holds 50 sprockets, 11 to 60 teeth', () => expect(table.diameters).toHaveLength(50));

  // 12.7 mm is the pitch of 4xx chains, 15.875 mm of 5xx (ISO 606 / ANSI B29.1 sizes).
  it.each([25.4, 12.7, 15.875])(
    'agree to the printed digit for every sprocket at a pitch of %s mm',
    (pitch) => {
      const scale = pitch / table.pitch;
      table.diameters.forEach((diameter, i) => {
        const ours = 2 * pitchRadius(table.firstTeeth + i, pitch);
        expect(Math.abs(ours - diameter * scale), `${table.firstTeeth + i} teeth`).toBeLessThan(
          PRINTED * scale,
        );
      });
    },
  );

  it('agree with a textbook’s worked example to its last digit', () => {
    for (const { teeth, diameter } of table.worked.sprockets)
      expect(2 * pitchRadius(teeth, table.worked.pitch)).toBeCloseTo(diameter, 6);
  });
});
