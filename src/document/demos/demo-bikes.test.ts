/** Tests of the demonstration bikes. */
import { expect, it } from 'vitest';
import longTravel from './demo-long-travel.json' with { type: 'json' };
import roadSport from './demo-road-sport.json' with { type: 'json' };
import trackDay from './demo-track-day.json' with { type: 'json' };
import roadster from './demo-twin-shock-roadster.json' with { type: 'json' };
import { DEMO_BIKES } from './demo-bikes.ts';
import { openJson } from '../open-json.ts';

it.each([
  [0, roadSport],
  [1, trackDay],
  [2, roadster],
  [3, longTravel],
])('demonstration bike %i opens without a repair and says that it is invented', (i, file) => {
  const opened = openJson(file);
  expect(opened).toMatchObject({ ok: true, value: { repairs: [] } });
  expect(DEMO_BIKES[i]).toEqual(opened.ok && opened.value.document);
  expect(DEMO_BIKES[i].bike.invented).toBe(true);
  expect(DEMO_BIKES[i].baseline).toEqual({ bike: DEMO_BIKES[i].bike, setup: DEMO_BIKES[i].setup });
});

it('the first one is the same after a way through JSON, as the build of the page takes it', () => {
  expect(JSON.parse(JSON.stringify(DEMO_BIKES[0]))).toStrictEqual(DEMO_BIKES[0]);
});
