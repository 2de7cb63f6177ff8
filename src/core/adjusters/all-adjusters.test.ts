/** Tests of the list of adjusters, and of the setup that follows from it. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { ADJUSTER_GROUPS } from './definition/adjuster-groups.ts';
import { adjusterOf, ADJUSTERS, type Adjuster } from './all-adjusters.ts';
import { doesApply } from './does-apply.ts';
import { fillSetup } from '../../../tests/support/fill-setup.ts';
import type { Setup } from './setup.ts';

describe('the adjusters', () => {
  it('are found by their key, and by no former key of another', () => {
    for (const adjuster of ADJUSTERS) expect(adjusterOf(adjuster.key)).toBe(adjuster);
    const names = ADJUSTERS.flatMap(({ key, formerly }) =>
      formerly === undefined ? [key] : [key, formerly],
    );
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(ADJUSTERS.length);
  });

  it('lie in the groups there are, which come in the order of the page, each with one kind of adjuster', () => {
    const inOrder = ADJUSTERS.map(({ group }) => group).filter((group, i, all) => group !== all[i - 1]);
    expect(inOrder).toEqual(ADJUSTER_GROUPS.map(({ key }) => key));
    for (const { key } of ADJUSTER_GROUPS)
      expect(new Set(ADJUSTERS.filter(({ group }) => group === key).map(({ kind }) => kind)).size).toBe(1);
    const parts = ADJUSTERS.map(({ kind }) => kind === 'part');
    expect(parts.lastIndexOf(true)).toBe(parts.indexOf(false) - 1);
  });

  it('may be saved at their default and at both ends of a range that is the same on every bike', () => {
    for (const adjuster of ADJUSTERS) {
      if (!('saved' in adjuster)) continue;
      const ends = 'range' in adjuster ? [adjuster.range.least, adjuster.range.most] : [];
      const numbers = [adjuster.default, ...ends].filter((value) => typeof value === 'number');
      for (const value of numbers) {
        expect(value, adjuster.key).toBeGreaterThanOrEqual(adjuster.saved.least);
        expect(value, adjuster.key).toBeLessThanOrEqual(adjuster.saved.most);
      }
    }
  });

  it('say beside their figure what it counts wherever it rises as the end is lowered, and nowhere else', () => {
    const counting = ADJUSTERS.filter((each) => 'figure' in each).map(({ key }) => key);
    const rising = ADJUSTERS.filter(
      ({ moves }: Adjuster) => moves?.turnedAsHeight === true && moves.more === 'down',
    );
    expect(rising.map(({ key }) => key)).toEqual(counting);
    expect(counting).not.toEqual([]);
  });
});

describe('a setup', () => {
  const { frontTeeth, rearTeeth, clampOffset, frontTyre, rearTyre } = plainSetup;
  const essential = { frontTeeth, rearTeeth, clampOffset, frontTyre, rearTyre };

  it('has a value for every adjuster: the one that is given, else the default', () => {
    const filled = fillSetup(essential);
    expect(Object.keys(filled).sort()).toEqual(ADJUSTERS.map(({ key }) => key).sort());
    for (const { key, default: value } of ADJUSTERS)
      expect(filled[key]).toEqual(value === 'essential' ? plainSetup[key] : value);
  });

  it('keeps what is given, null included', () => {
    const given: Partial<Setup> = { chainSlack: 0, chainLinks: 112 };
    expect(fillSetup({ ...essential, ...given })).toMatchObject(given);
  });
});

describe('an adjuster applies', () => {
  const keysOn = (bike: typeof plainBike, setup = plainSetup): string[] =>
    ADJUSTERS.filter((adjuster) => doesApply(adjuster, bike, setup)).map(({ key }) => key);
  const driven = (kind: typeof plainBike.drive.kind) => ({
    ...plainBike,
    drive: { ...plainBike.drive, kind },
  });

  it('to a bike that has the part: no sprockets on a shaft, no link rod without links', () => {
    expect(keysOn(plainBike)).toContain('frontTeeth');
    expect(keysOn(driven('shaft'))).not.toContain('frontTeeth');
    expect(keysOn(plainBike)).not.toContain('linkLength');
  });

  it('to a belt that was given links, so that they can be taken off', () => {
    expect(keysOn(driven('belt'))).not.toContain('chainLinks');
    expect(keysOn(driven('belt'), { ...plainSetup, chainLinks: 112 })).toContain('chainLinks');
  });
});
