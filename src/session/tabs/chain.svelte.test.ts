/** Tests of the chain on the page: its length, wear and slack, and what setting it does to the bike. */
import { describe, expect, it } from 'vitest';
import { readIn } from '../../../tests/support/read-in.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { distance } from '../../core/plane/point.ts';
import { FROZEN_ROAD_SPORT } from '../../../tests/support/frozen-road-sport.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import type { BikeDocument } from '../../document/document.ts';
import { setAdjuster } from '../../document/edits.ts';
import { openDocument } from '../../document/open-document.ts';
import { saveDocument } from '../../document/save-document.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Chain } from './chain.svelte.ts';
import { Standing } from '../standing.svelte.ts';

const first = FROZEN_ROAD_SPORT;

function chainOn(document: BikeDocument): { chain: Chain; session: BikeSession; standing: Standing } {
  const session = new BikeSession(document);
  const standing = new Standing(session, readIn('toppedOut'));
  return { chain: new Chain({ session, standing }), session, standing };
}

/** The demonstration bike with its front sprocket small and its guide high, so that the chain lies on it. */
const low = newDocument(
  { ...first.bike, frame: { ...first.bike.frame, guideRadius: 38, countershaft: { x: 78, y: -6 } } },
  { ...first.setup, frontTeeth: 13 },
);

function askedOf(chain: Chain) {
  if (chain.asked === null || !chain.asked.ok) throw new Error('nothing asked');
  return chain.asked;
}

describe('the chain that the axle needs', () => {
  it('taut is the one round the sprockets of the standing bike', () => {
    const { chain, standing } = chainOn(first);
    chain.setSlackTo(0);
    const { live } = standing;
    if (live === null || chain.loop === null) throw new Error('no bike');
    const { countershaft, rearAxle } = live.stance;
    const apart = distance(countershaft, rearAxle);
    expect(askedOf(chain).exactLinks).toBeCloseTo(linksAround(chain.loop, apart), 9);
  });

  it('set, leaves the axle asking for just that chain, in one entry of the history', () => {
    const { chain, session } = chainOn(first);
    const choice = askedOf(chain).choices.find((each) => each.ok);
    if (!choice?.ok) throw new Error('no chain fits');
    chain.setAxle(choice.axlePosition, `Axle for ${choice.links} links`);
    expect(session.history.past).toHaveLength(1);
    expect(session.undoLabel).toBe(`Axle for ${choice.links} links`);
    expect(askedOf(chain).exactLinks).toBeCloseTo(choice.links, 6);
    session.undo();
    expect(session.document).toBe(first);
  });

  it('may be odd with a half link only', () => {
    const { chain } = chainOn(first);
    expect(askedOf(chain).choices.map(({ links }) => links % 2)).toEqual([0, 0]);
    chain.allowHalfLink(true);
    expect(askedOf(chain).choices.some(({ links }) => links % 2 === 1)).toBe(true);
  });

  it('said to be on the bike takes the axle along, and out of the slot the bike is refused with the chains that fit', () => {
    const { chain, session, standing } = chainOn(first);
    const choice = chain.near.find((each) => each.ok);
    if (!choice?.ok) throw new Error('no chain fits');
    chain.takeChain(choice.links);
    expect(session.history.past).toHaveLength(1);
    expect(chain.axlePosition).toBeCloseTo(choice.axlePosition, 6);
    expect(askedOf(chain).exactLinks).toBeCloseTo(choice.links, 6);
    expect(chain.near.map(({ links }) => links)).toEqual([choice.links - 2, choice.links, choice.links + 2]);
    chain.takeChain(100);
    expect(standing.problem).toMatchObject({ reason: 'chainTooShort' });
    expect(
      standing.problem !== null && 'nearest' in standing.problem && standing.problem.nearest.length,
    ).toBeGreaterThan(0);
    expect(chain.on).toBeNull();
    session.undo();
    chain.takeChain(null);
    expect(chain.linksOn).toBeNull();
    expect(chain.axlePosition).toBeCloseTo(choice.axlePosition, 5);
  });

  it('with a slack that no run has is refused, and taken back with less', () => {
    const { chain } = chainOn(first);
    chain.setSlackTo(900);
    expect(chain.asked).toEqual({ ok: false, reason: 'slackImpossible' });
    chain.setSlackTo(30);
    expect(askedOf(chain).exactLinks).toBeGreaterThan(100);
  });
});

describe('wear', () => {
  it('is measured, lengthens the loop, and lets the same chain put the axle further back', () => {
    const { chain } = chainOn(first);
    const placed = (): number => chain.near.find(({ links }) => links === 112)?.axlePosition ?? NaN;
    const before = placed();
    chain.setMeasured(20, 20 * 15.875 * 1.01);
    expect(chain.stretchPercent).toBeCloseTo(1, 9);
    expect(chain.loop?.pitch).toBeCloseTo(15.875 * 1.01, 9);
    expect(placed() - before).toBeGreaterThan(4);
  });

  it('of the chain on the bike takes the axle back with the same slack, has its words, and is one undo that stays in the file', () => {
    const { chain, session } = chainOn(first);
    chain.takeChain(112);
    const before = chain.axlePosition ?? NaN;
    expect(chain.wornBack).toBeNull();
    chain.setMeasured(20, 20 * 15.875 * 1.005);
    expect(session.undoLabel).toBe('Chain measured');
    const moved = (chain.axlePosition ?? NaN) - before;
    expect(moved).toBeGreaterThan(2);
    expect(chain.wornBack).toBeCloseTo(moved, 6);
    const { now } = chain;
    expect(now !== null && now.ok && now.slack.ok && now.slack.total).toBeCloseTo(30, 5);
    expect(askedOf(chain).exactLinks).toBeCloseTo(112, 6);
    const reopened = openDocument(saveDocument(session.document));
    if (!reopened.ok) throw new Error('not opened');
    expect(chainOn(reopened.value.document).chain.stretchPercent).toBeCloseTo(0.5, 6);
    session.undo();
    expect(chain.axlePosition).toBeCloseTo(before, 9);
  });

  it('is done at the maker’s limit where that is known', () => {
    const { chain } = chainOn(first);
    chain.setMeasured(20, 20 * 15.875 * 1.02);
    expect(chain.wear).toMatchObject({ ok: true, value: { done: false } });
    chain.setLimit(1.5);
    expect(chain.wear).toMatchObject({ ok: true, value: { done: true, limit: 1.5 } });
  });

  it('of figures that cannot be right counts for nothing, and the figures stay', () => {
    const { chain } = chainOn(first);
    chain.setMeasured(50, 320);
    expect(chain.wear).toMatchObject({ ok: false, reason: 'lengthImpossible' });
    expect(chain.stretchPercent).toBe(0);
    expect(chain.measuredLength).toBe(320);
    chain.setMeasured(20, 320);
    expect(chain.stretchPercent).toBeGreaterThan(0.7);
  });
});

describe('slack', () => {
  it('without a chain named is the one set on the stand', () => {
    const { chain } = chainOn(first);
    const { now } = chain;
    if (now === null || !now.ok || !now.slack.ok) throw new Error('no slack');
    expect(now.slack.total).toBeCloseTo(30, 6);
  });

  it('set so leaves the least at the tightest place, in one entry', () => {
    const { chain, session } = chainOn(first);
    chain.setLeastSlack(12);
    chain.setSlack('Axle for slack');
    expect(session.history.past).toHaveLength(2);
    const { tightest } = chain;
    if (tightest === null || !tightest.ok || !tightest.slack.ok) throw new Error('no slack');
    // Slack is set in tenths, and never to less than it needs.
    expect(tightest.slack.total).toBeGreaterThanOrEqual(12);
    expect(tightest.slack.total).toBeLessThan(12.15);
    expect(chain.slackEnough).toBe(true);
    expect(chain.isSet).toBe(true);
  });

  it('too little at the tightest place is noticed, and the places of the curve begin hanging and end bottomed', () => {
    const { chain, standing } = chainOn(first);
    chain.setSlackTo(12);
    expect(chain.slackEnough).toBe(false);
    if (!Array.isArray(chain.slack)) throw new Error('no curve');
    expect(chain.slack[0].rearTravel).toBe(0);
    expect(chain.slack.at(-1)?.rearTravel).toBe(standing.live?.stance.machine.rear.wheelTravel);
  });

  it('of a chain on the bike changes the slack alone, and the axle follows', () => {
    const { chain, session } = chainOn(first);
    chain.takeChain(112);
    const before = chain.axlePosition ?? NaN;
    chain.setLeastSlack(20);
    chain.setSlack('Axle for slack');
    expect(session.history.past).toHaveLength(3);
    expect(chain.linksOn).toBe(112);
    expect(chain.slackSet).toBeGreaterThan(30);
    expect(chain.axlePosition).toBeLessThan(before);
    expect(chain.slackEnough).toBe(true);
    expect(chain.isSet).toBe(true);
  });

  it('that would leave the slot names a chain with which it does not', () => {
    const { chain } = chainOn(first);
    chain.takeChain(112);
    chain.setLeastSlack(200);
    expect(chain.toSet).toMatchObject({ ok: true, inSlot: false });
    const { betterLinks } = chain;
    if (betterLinks === null) throw new Error('none named');
    chain.takeChain(betterLinks);
    expect(chain.toSet).toMatchObject({ ok: true, inSlot: true });
    expect(chain.betterLinks).toBeNull();
  });
});

describe('a chain that was left alone', () => {
  const tightestLeft = (chain: Chain): number => {
    const { tightest } = chain;
    if (tightest === null || !tightest.ok || !tightest.slack.ok)
      throw new Error('no slack at the tightest place');
    return tightest.slack.total;
  };

  it('keeps its length, and so its slack where it is tightest, when the rear is raised; hanging it has more', () => {
    const { chain, session } = chainOn(first);
    const before = { links: chain.links, left: tightestLeft(chain) };
    session.commit((from) => setAdjuster(from, 'shockLength', 8), 'Shock length');
    expect(chain.linksBefore).not.toBeNull();
    expect(chain.links).toBeCloseTo(before.links ?? NaN, 9);
    expect(tightestLeft(chain)).toBeCloseTo(before.left, 1);
    expect(chain.slackEnough).toBe(true);
    const { slackHanging } = chain;
    if (slackHanging === null || !slackHanging.ok || !slackHanging.slack.ok) throw new Error('no slack');
    expect(slackHanging.slack.total).toBeGreaterThan(chain.slackSet + 3);
  });

  it('is set anew by whoever touches slack, teeth or axle', () => {
    for (const key of ['chainSlack', 'frontTeeth', 'axlePosition'] as const) {
      const { chain, session } = chainOn(first);
      session.commit((from) => setAdjuster(from, 'shockLength', 8), 'Shock length');
      session.commit((from) => setAdjuster(from, key, from.setup[key] + 1), key);
      expect(chain.linksBefore).toBeNull();
      expect(chain.links).toBeCloseTo(askedOf(chain).exactLinks, 9);
    }
  });
});

describe('the chain over the pivot', () => {
  it('that lies on the guide has its push in words, and the sprocket that lifts it off', () => {
    const { chain, session } = chainOn(low);
    expect(chain.clearance).toMatchObject({ ok: true, leastAt: 0 });
    expect(chain.clearance !== null && chain.clearance.ok && chain.clearance.touching.length).toBe(1);
    expect(chain.tightestOnGuide?.push?.perThousand).toBeGreaterThan(100);
    const teeth = chain.fewestClear?.frontTeeth ?? NaN;
    expect(teeth).toBeGreaterThan(13);
    chain.setTeeth('front', teeth);
    expect(chain.clearance).toMatchObject({ ok: true, touching: [] });
    chain.setTeeth('front', teeth - 1);
    expect(chain.clearance !== null && chain.clearance.ok && chain.clearance.touching.length).toBe(1);
    session.undo();
    expect(session.document.setup.frontTeeth).toBe(teeth);
  });

  it('with sprockets that reach over the pivot names those that would clear it', () => {
    const { chain } = chainOn(
      newDocument(
        { ...first.bike, frame: { ...first.bike.frame, countershaft: { x: 40, y: 7 } } },
        first.setup,
      ),
    );
    expect(chain.obstacle).toBeNull();
    chain.setTeeth('front', 20);
    const { obstacle } = chain;
    expect(obstacle).toMatchObject({ reason: 'pivotInsideFront', found: 20 });
    chain.setTeeth('front', obstacle?.nearest ?? NaN);
    expect(chain.obstacle).toBeNull();
  });

  it('is not laid on a bike that cannot stand', () => {
    const { chain } = chainOn(
      newDocument(
        { ...first.bike, frame: { ...first.bike.frame, countershaft: { x: -450, y: 0 } } },
        first.setup,
      ),
    );
    expect([chain.on, chain.asked, chain.slack, chain.clearance, chain.toSet]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('a chain that nobody has set since the baseline', () => {
  it('has one slack on the page, that of now; set as the button says, it has just that', () => {
    const { chain, session } = chainOn(first);
    session.commit((from) => setAdjuster(from, 'shockLength', 7), 'Shock length');
    const { slackHanging, toSet } = chain;
    if (slackHanging?.ok !== true || !slackHanging.slack.ok) throw new Error('no slack');
    if (toSet === null || !toSet.ok) throw new Error('nothing to set');
    expect(chain.slackNow).toBeGreaterThan(chain.slackSet + 1);
    expect(chain.slackNow).toBeCloseTo(slackHanging.slack.total, 1);
    // What fits the axle’s place is the chain that hangs so.
    expect(askedOf(chain).exactLinks).toBeCloseTo(chain.links ?? 0, 2);
    const asked = chain.slackToSet;
    chain.setSlack('Axle set');
    expect(chain.slackNow).toBe(chain.slackSet);
    expect(chain.slackNow).toBe(asked);
    expect(chain.slackNow).toBeGreaterThanOrEqual(toSet.slack.total);
    expect(chain.isSet).toBe(true);
  });

  it('keeps the slack that it has when a whole one is put on in its place', () => {
    const { chain, session } = chainOn(first);
    session.commit((from) => setAdjuster(from, 'shockLength', 7), 'Shock length');
    const { slackNow, near } = chain;
    const fits = near.find((each) => each.ok);
    if (fits === undefined) throw new Error('no chain fits');
    chain.takeChain(fits.links);
    expect(chain.slackSet).toBe(slackNow);
  });
});
