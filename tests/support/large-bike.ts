/** A bike with more measured on it than any link holds. */
import { FIRST_DEMO } from '../../src/document/demos/first-demo.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import type { KeptRow } from '../../src/document/measure.ts';

/** Figures of seven digits that look like no pattern to what packs them: a row of remainders. */
function* figures(): Generator<string, never> {
  const [factor, modulus] = [48271, 2147483647];
  for (let at = 1; ; at = (at * factor) % modulus) yield String((at % 10000000) / 10000);
}

export function largeBike(rows = 200): BikeDocument {
  const drawn = figures();
  const row = (): KeptRow => ({
    kind: 'height',
    parts: ['pivot'],
    state: 'onWheels',
    otherState: null,
    figure: drawn.next().value,
    unit: '',
    sd: null,
    outOfPlane: 0,
    fromOther: false,
    off: false,
    note: `Tape ${drawn.next().value}`,
  });
  const measure = { gaugeZeroed: false, setup: FIRST_DEMO.setup, rows: Array.from({ length: rows }, row) };
  return { ...FIRST_DEMO, bike: { ...FIRST_DEMO.bike, name: 'Measured by hand' }, measure };
}
