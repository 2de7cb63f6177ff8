/** Tests of what the weigh-in says as it goes on. */
import { expect, it } from 'vitest';
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Weighing } from './weighing.svelte.ts';
import { foundRows, hindrance, unlikeWords, withError } from '../../words/measure/weigh-in-words.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;
const INCH = { system: 'inch', decimal: ',' } as const;
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

function weighing(figures: Partial<Weighing['figures']>): Weighing {
  const made = new Weighing({ session: new BikeSession(DEMO_BIKES[0]) });
  Object.assign(made.figures, figures);
  return made;
}

it('names the scale and the axle of the next figure', () => {
  const begun = weighing({ front: 95 });
  expect(hindrance(begun, CHAIN, METRIC)).toBe('Next: what the rear scale shows with the bike level.');
  begun.figures.rear = 105;
  begun.raise('front');
  expect(hindrance(begun, CHAIN, METRIC)).toBe('Next: how far the front axle was raised.');
  begun.figures.lift = 200;
  expect(hindrance(begun, CHAIN, METRIC)).toBe('Next: what the rear scale shows with the front axle raised.');
});

it('tells what cannot be with what to check, in the user’s units', () => {
  const beyond = weighing({ front: 95, rear: 105, lift: 200, raisedReading: 250 });
  expect(spaced(hindrance(beyond, CHAIN, METRIC) ?? '')).toBe(
    'The raised weighing shows 250.0 kg, more than the whole bike’s 200.0 kg. Check the scales.',
  );
  expect(spaced(hindrance(beyond, CHAIN, INCH) ?? '')).toContain('551,2 lb');
  expect(hindrance(weighing({ front: NaN, rear: 1, lift: 1, raisedReading: 1 }), CHAIN, METRIC)).toBe(
    'One of the figures is no number. Type it again.',
  );
});

it('writes a number with its uncertainty and one unit', () => {
  expect(spaced(withError(202.44, 0.71, 'mass', METRIC))).toBe('202.4 ± 0.7 kg');
  expect(spaced(withError(254, 25.4, 'length', INCH))).toBe('10,00 ± 1,00 in');
});

it('tells mass, centre, shares and what the springs carry', () => {
  const done = weighing({ front: 95, rear: 105, lift: 250, raisedReading: 103 });
  const { outcome, errors } = done;
  if (outcome === null || !outcome.ok || errors === null) throw new Error('no outcome');
  expect(hindrance(done, CHAIN, METRIC)).toBeNull();
  const rows = foundRows(outcome, errors, METRIC).map(({ text }) => spaced(text));
  expect(rows).toHaveLength(6);
  expect(rows[0]).toBe('200.0 ± 0.7 kg');
  expect(rows[3]).toBe('47.5 %, 52.5 %');
});

it('says which length the bike does not have, and which way', () => {
  const words = spaced(unlikeWords({ key: 'frontRadius', measured: 290, own: 300 }, METRIC));
  expect(words).toContain('The measured front tyre radius is 10.0 mm less than the bike’s 300.0 mm.');
});
