/** Tests of the choice of sprockets: ranges, filters, order, comparison, and the fitting of a pair. */
import { describe, expect, it } from 'vitest';
import { readIn } from '../../../tests/support/read-in.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { RIDE_STATES } from '../../core/riding/states/all-ride-states.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import type { BikeDocument } from '../../document/document.ts';
import { setAdjuster } from '../../document/edits.ts';
import { filled } from '../../../tests/support/filled.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { pairKey, Sprockets } from './sprockets.svelte.ts';
import { Standing } from '../standing.svelte.ts';

const [first] = DEMO_BIKES;
const { frontTeeth, rearTeeth } = first.setup;

function started(document: BikeDocument = first) {
  const session = new BikeSession(document);
  const standing = new Standing(session, readIn('toppedOut'));
  return { session, standing, sprockets: new Sprockets({ session, standing }) };
}

function rowOf(sprockets: Sprockets, key: string) {
  const row = sprockets.rows.find(({ pair }) => pairKey(pair) === key);
  if (row === undefined) throw new Error(`no row ${key}`);
  return row;
}

/** What the page's Readings say, metric. */
function reading(standing: Standing, key: string): number {
  const row = standing.rows.find((each) => each.reading.key === key);
  if (typeof row?.value !== 'number') throw new Error(`no number for ${key}`);
  return row.value;
}

describe('the pairs', () => {
  it('are at first those about the pair on the bike, which is marked as present and baseline', () => {
    const { sprockets } = started();
    expect(sprockets.all).toHaveLength(5 * 9);
    const marked = sprockets.rows.filter((row) => row.isPresent || row.isBaseline);
    expect(marked.map(({ pair }) => pairKey(pair))).toEqual([`${frontTeeth}/${rearTeeth}`]);
    expect(marked[0].changes).toBe(false);
  });

  it('stay the same while one of them is tried, and keep bike and baseline among them when teeth are typed', () => {
    const { session, sprockets } = started();
    sprockets.fitPair(rowOf(sprockets, `${frontTeeth + 1}/${rearTeeth + 2}`).pair);
    expect(sprockets.all).toHaveLength(5 * 9);
    const marks = sprockets.rows.filter((row) => row.isPresent !== row.isBaseline);
    expect(marks).toHaveLength(2);
    expect(session.lastLabel).toBe(`Sprockets ${frontTeeth + 1}/${rearTeeth + 2}`);
    session.commit((from) => setAdjuster(from, 'rearTeeth', rearTeeth + 6), 'Rear sprocket');
    expect(sprockets.rear).toEqual({ least: rearTeeth - 4, most: rearTeeth + 10 });
  });

  it('are taken as typed, and a range that runs backward or to too many pairs is refused in words', () => {
    const { sprockets } = started();
    sprockets.setRange('front', { least: 13, most: 14 });
    sprockets.setRange('rear', { least: 40, most: 41 });
    expect(sprockets.rows.map(({ pair }) => pairKey(pair))).toEqual(['13/40', '13/41', '14/40', '14/41']);
    expect(sprockets.rangeRefusal('front', { least: 15, most: 14 })).toContain('from 15 down to 14');
    expect(sprockets.rangeRefusal('rear', { least: 6, most: 120 })).toBeNull();
    sprockets.setRange('rear', { least: 21, most: 120 });
    expect(sprockets.rangeRefusal('front', { least: 10, most: 19 })).toBeNull();
    expect(sprockets.rangeRefusal('front', { least: 10, most: 20 })).toContain('1100 pairs');
    expect(sprockets.all).toHaveLength(200);
    const [shown, hidden] = [sprockets.rows.length, sprockets.hidden];
    expect(shown + hidden).toBe(sprockets.passing);
    sprockets.showMore();
    expect(sprockets.rows.length).toBeGreaterThan(shown);
    sprockets.rangesAbout();
    expect(sprockets.all).toHaveLength(45);
  });

  it('are found for a bike whose axle is out of its slot too, and put it back', () => {
    const axlePosition = first.bike.swingarm.slot + 5;
    const { standing, sprockets } = started({ ...first, setup: { ...first.setup, axlePosition } });
    expect(standing.problem).not.toBeNull();
    expect(sprockets.present).toBeNull();
    expect(sprockets.passing).toBe(45);
    const own = rowOf(sprockets, `${frontTeeth}/${rearTeeth}`);
    expect(own.changes).toBe(true);
    sprockets.fitPair(own.pair);
    expect(standing.problem).toBeNull();
  });

  it('wait for a draft to be committed', () => {
    const { session, sprockets } = started();
    const before = sprockets.all;
    session.preview((from) => setAdjuster(from, 'shockLength', 4));
    expect(sprockets.waits).toBe(true);
    expect(sprockets.all).toBe(before);
    session.commitDraft('Shock length');
    expect(sprockets.waits).toBe(false);
    expect(sprockets.all).not.toBe(before);
  });
});

describe('fitting a pair', () => {
  for (const { key: state } of RIDE_STATES)
    it(`gives the readings that its row showed, ${state}, and is one undo`, () => {
      for (const document of filled(DEMO_BIKES)) {
        const { session, standing, sprockets } = started(document);
        standing.choose(state);
        const row = sprockets.rows.find((each) => each.changes);
        if (row === undefined) throw new Error('no pair to fit');
        sprockets.fitPair(row.pair);
        expect(standing.problem).toBeNull();
        expect(session.document.setup).toMatchObject({
          frontTeeth: row.pair.frontTeeth,
          rearTeeth: row.pair.rearTeeth,
          axlePosition: row.pair.axlePosition,
        });
        for (const [key, told] of [
          ['wheelbase', row.pair.wheelbase],
          ['swingarmAngle', row.pair.swingarmAngle],
          ['antiSquat', row.pair.antiSquat],
          ['chainSliderClearance', row.pair.pivotGap],
          ['finalDriveRatio', row.pair.ratio],
        ] as const) {
          const { quantity } = READINGS.find((each) => each.key === key) ?? {};
          if (quantity === undefined || typeof told !== 'number') throw new Error(`no number for ${key}`);
          expect(reading(standing, key)).toBeCloseTo(QUANTITIES[quantity].fromCore(told), 6);
        }
        session.undo();
        expect(session.document).toBe(document);
      }
    });

  it('puts the pair’s chain on a bike whose axle follows its chain', () => {
    const { pair: own } = rowOf(started().sprockets, `${frontTeeth}/${rearTeeth}`);
    const onChain = { ...first, setup: { ...first.setup, chainLinks: own.links } };
    const { session, standing, sprockets } = started(onChain);
    expect(rowOf(sprockets, `${frontTeeth}/${rearTeeth}`).changes).toBe(false);
    const row = sprockets.rows.find(({ pair }) => pair.links !== own.links);
    if (row === undefined) throw new Error('every pair takes the chain on the bike');
    sprockets.fitPair(row.pair);
    expect(session.document.setup.chainLinks).toBe(row.pair.links);
    expect(reading(standing, 'wheelbase')).toBeCloseTo(row.pair.wheelbase ?? NaN, 6);
  });
});

describe('the filters', () => {
  it('keep the same ratio within a tolerance of the pair compared with', () => {
    const { sprockets } = started();
    sprockets.setFilters({ sameRatio: 0 });
    const ratios = sprockets.rows.map(({ pair }) => pair.ratio);
    expect(ratios).toContain(rearTeeth / frontTeeth);
    expect(new Set(ratios.map((ratio) => ratio.toFixed(9))).size).toBe(1);
    sprockets.setFilters({ sameRatio: 3 });
    expect(sprockets.rows.length).toBeGreaterThan(ratios.length);
  });

  it('name the one that takes the last pairs away, and lifting it brings as many back as it said', () => {
    const { sprockets } = started();
    expect(sprockets.lift).toBeNull();
    sprockets.setFilters({ leastGap: 190, sameRatio: 5 });
    expect(sprockets.passing).toBe(0);
    const { lift } = sprockets;
    if (lift === null) throw new Error('nothing to lift');
    expect(lift.lifted).toEqual(['leastGap']);
    sprockets.liftFilters(lift);
    expect(sprockets.passing).toBe(lift.passing);
    expect(lift.passing).toBeGreaterThan(0);
  });

  it('lift all at once where no single one helps', () => {
    const { sprockets } = started();
    sprockets.setFilters({ leastGap: 190, chains: [60] });
    const { lift } = sprockets;
    expect(lift?.lifted).toEqual(['fits', 'leastGap', 'chains']);
    if (lift !== null) sprockets.liftFilters(lift);
    expect(sprockets.passing).toBe(45);
  });

  it('take the chains in hand, and tell why a pair has none of them', () => {
    const { sprockets } = started();
    sprockets.setFilters({ chains: [110], fits: false });
    const chains = () => sprockets.rows.map(({ pair }) => pair.links);
    expect([...new Set(chains())]).toEqual([110]);
    const inHand = chains().length;
    expect(sprockets.rows.some(({ pair }) => pair.misfit?.reason === 'chainTooShort')).toBe(true);
    sprockets.setFilters({ fits: true });
    expect([...new Set(sprockets.rows.map(({ pair }) => pair.misfit))]).toEqual([null]);
    expect(chains().length).toBeLessThan(inHand);
  });

  it('join odd chains only where a half link is allowed', () => {
    const { sprockets } = started();
    const odd = () => sprockets.all.filter(({ links }) => (links ?? 0) % 2 === 1).length;
    expect(odd()).toBe(0);
    sprockets.halfLinkAsked = true;
    expect(odd()).toBeGreaterThan(0);
  });
});

describe('the order', () => {
  it('is that of a column, and the other way round when the column is chosen again', () => {
    const { sprockets } = started();
    sprockets.sortBy('antiSquat');
    const rising = sprockets.rows.map(({ pair }) => pair.antiSquat as number);
    expect(new Set(rising).size).toBeGreaterThan(10);
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
    sprockets.sortBy('antiSquat');
    expect(sprockets.rows.map(({ pair }) => pair.antiSquat)).toEqual(rising.reverse());
  });
});

describe('the pair compared with', () => {
  it('is the baseline’s or the present one, each with its axle where it stands', () => {
    const { sprockets } = started();
    const row = rowOf(sprockets, `${frontTeeth + 1}/${rearTeeth}`);
    sprockets.fitPair(row.pair);
    expect(sprockets.reference?.axlePosition).toBe(first.setup.axlePosition);
    sprockets.against = 'present';
    expect(sprockets.reference?.axlePosition).toBe(row.pair.axlePosition);
    expect(sprockets.reference?.antiSquat).toBeCloseTo(row.pair.antiSquat as number, 6);
  });
});
