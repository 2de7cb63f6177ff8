/** Tests of the mechanism behind a change, in sentences. */
import { describe, expect, it } from 'vitest';
import { filled } from '../../../tests/support/filled.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { RIDE_STATES, type RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { mechanismStory } from './why-mechanism.ts';
import { why } from '../../core/effects/why.ts';
import { roadSport } from '../../../tests/support/road-sport.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };

function told(changes: Partial<Setup>, style = metric): string[] {
  const before = standBike(plainBike, plainSetup, 'toppedOut');
  const after = standBike(plainBike, { ...plainSetup, ...changes }, 'toppedOut');
  if (!before.ok || !after.ok) throw new Error('the plain bike does not stand');
  return mechanismStory(why(before, after), style).all.map((sentence) => sentence.text);
}

describe('the mechanism in sentences', () => {
  it('says nothing when nothing changed', () => {
    expect(told({})).toEqual([]);
  });

  it('tells of a raised rear in the order of cause and effect', () => {
    const sentences = told({ shockLength: 5 });
    expect(sentences[0]).toMatch(/^The swingarm pivot rose .*, the seat .* and the centre of gravity .*\.$/);
    expect(sentences[1]).toMatch(/^The frame pitched \d\.\d\d° nose down\.$/);
    expect(sentences[2]).toMatch(
      /^Rake −.*°, from .*° to .*°: the steering gets slightly quicker, all from the frame’s pitch\.$/,
    );
    expect(sentences[3]).toMatch(/^Trail .*: the steering turns slightly quicker, all from rake\.$/);
    expect(sentences.find((text) => text.startsWith('Wheelbase'))).toMatch(
      /: shorter \(.* from rear wheel to pivot and .* from pivot to front wheel\)\.$/,
    );
    expect(sentences.some((text) => /^Swingarm angle .* steeper/.test(text))).toBe(true);
  });

  it('first tells five at most, those that a rider notices most, in the order of cause and effect', () => {
    const before = standBike(plainBike, plainSetup, 'toppedOut');
    const after = standBike(plainBike, { ...plainSetup, shockLength: 8, forkTubes: 25 }, 'toppedOut');
    if (!before.ok || !after.ok) throw new Error('the plain bike does not stand');
    const { first, all } = mechanismStory(why(before, after), metric);
    expect(first.length).toBe(5);
    expect(all.length).toBeGreaterThan(5);
    expect(all.filter((sentence) => first.includes(sentence))).toEqual(first);
    expect(first[0].text).toMatch(
      /^The swingarm pivot rose [^;]*; the front end, straight above the axle, sank .*\.$/,
    );
  });

  it('splits a change with several causes, with a sign on each', () => {
    const trail = told({ frontTyre: { diameter: 580 } }).find((text) => text.startsWith('Trail'));
    expect(trail).toMatch(/ \([+−][\d.]+\smm from the front tyre and [+−][\d.]+\smm from rake\)\.$/u);
  });

  it('writes parts that add up to the difference, and a difference that is that of the numbers written', () => {
    const number = (text: string) => Number(text.replace('−', '-'));
    let split = 0;
    for (const size of [570, 575, 583, 588, 611]) {
      const trail = told({ frontTyre: { diameter: size } }).find((text) => text.startsWith('Trail')) ?? '';
      const [whole, from, to, ...parts] = [...trail.matchAll(/[+−]?\d+\.\d/g)].map(([text]) => number(text));
      expect(to - from).toBeCloseTo(whole, 6);
      if (parts.length === 0) continue;
      expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(whole, 6);
      split++;
    }
    expect(split).toBe(5);
  });

  it('names the torque arm where one holds a shaft’s housing', () => {
    const housing = { ...plainBike.housing, heldBy: 'torqueArm', armAnchor: { x: -15, y: -80 } } as const;
    const shaft: Bike = {
      ...plainBike,
      drive: { ...plainBike.drive, kind: 'shaft' },
      housing: { ...housing, boltRadius: 95, armLength: 545 },
    };
    const before = standBike(shaft, plainSetup, 'toppedOut');
    const after = standBike(shaft, { ...plainSetup, shockLength: 8 }, 'toppedOut');
    if (!before.ok || !after.ok) throw new Error('the shaft does not stand');
    const text = mechanismStory(why(before, after), metric).all.map((each) => each.text);
    expect(text.join(' ')).toMatch(/Anti-squat, torque arm’s part .* the torque arm (holds|pulls)/);
    expect(text.join(' ')).not.toMatch(/chain/);
  });

  it('warns when the steering does not centre itself', () => {
    expect(told({ clampOffset: 150 }).join(' ')).toMatch(
      /the steering does not centre itself, do not ride like this/,
    );
  });

  it('leaves out readings that moved by less than is shown', () => {
    const sentences = told({ rearTeeth: plainSetup.rearTeeth + 4 });
    const names = sentences.map((text) => text.match(/^Anti-squat(?:, \w+’s part)?/)?.[0] ?? text);
    expect(names).toEqual(['Anti-squat', 'Anti-squat, chain’s part']);
  });

  it('writes in the reader’s own units and decimal sign', () => {
    const trail = told({ shockLength: 5 }, { system: 'inch', decimal: ',' }).find((text) =>
      text.startsWith('Trail'),
    );
    expect(trail).toMatch(/\d,\d\d\sin/u);
  });
});

describe('the mechanism on springs, links and other drives', () => {
  const driven = (kind: Bike['drive']['kind']): Bike => ({
    ...linkedBike,
    drive: { ...linkedBike.drive, kind },
  });

  function ridden(
    bike: Bike,
    changes: Partial<Setup>,
    state: RideStateKey,
    later: RideStateKey = state,
  ): string[] {
    const before = standBike(bike, sprungSetup, state);
    const after = standBike(bike, { ...sprungSetup, ...changes }, later);
    if (!before.ok || !after.ok) throw new Error('the linked bike does not stand');
    return mechanismStory(why(before, after), metric).all.map(({ text }) => text);
  }

  it('names softer springs, preload and load where they let an end ride deeper', () => {
    const [softer] = ridden(linkedBike, { forkSpringRate: 8 }, 'riderUp');
    expect(softer).toMatch(/^The fork uses [\d.]+\smm more of its travel, with softer springing/u);
    const less = ridden(linkedBike, { shockPreload: 4 }, 'riderUp').find((text) =>
      text.startsWith('The rear'),
    );
    expect(less).toMatch(/^The rear uses [\d.]+\smm more of its travel, with less preload/u);
    const heavier = ridden(linkedBike, { passengerMass: 70 }, 'riderUp');
    expect(heavier.find((text) => text.startsWith('The rear uses'))).toMatch(/with more load on it\.$/);
    const deep = ridden(linkedBike, { rearTravelUsed: 50 }, 'travelByHand');
    expect(deep[0]).toMatch(/^The rear uses 10\.0\smm more of its travel\.$/u);
  });

  it('names the leverage where a longer or a shorter shock alone moves the rear in its travel', () => {
    const { bike, setup } = roadSport;
    const rear = (shockLength: number): string | undefined => {
      const before = standBike(bike, setup, 'riderUp');
      const after = standBike(bike, { ...setup, shockLength }, 'riderUp');
      if (!before.ok || !after.ok) throw new Error('the demonstration bike does not stand');
      return mechanismStory(why(before, after), metric)
        .all.map(({ text }) => text)
        .find((text) => text.startsWith('The rear uses'));
    };
    expect(rear(10)).toMatch(/ more of its travel, with more leverage of the wheel on the shock\.$/);
    expect(rear(-10)).toMatch(/ less of its travel, with less leverage of the wheel on the shock\.$/);
  });

  it('says nothing of springs topped out, where they carry nothing', () => {
    expect(ridden(linkedBike, { forkSpringRate: 8, shockPreload: 4 }, 'toppedOut')).toEqual([]);
  });

  it('begins with the eccentric where it moved the pivot', () => {
    const [first] = ridden(linkedBike, { pivotUp: 4, pivotForward: -2 }, 'toppedOut');
    expect(first.replace(/\s/gu, ' ')).toBe(
      'The eccentric moved the pivot 2.0 mm back and 4.0 mm up in the frame.',
    );
  });

  it('calls a belt a belt, and speaks of no chain with a shaft or a hub motor', () => {
    const belt = ridden(driven('belt'), { shockLength: 5 }, 'riderUp').join(' ');
    expect(belt).toMatch(/Anti-squat, belt’s part/);
    expect(belt).not.toMatch(/chain/);
    for (const kind of ['shaft', 'hub'] as const) {
      const told = ridden(driven(kind), { shockLength: 5 }, 'riderUp').join(' ');
      expect(told).toMatch(/Anti-squat, swingarm’s part/);
      expect(told).not.toMatch(/chain|belt/);
    }
  });

  /** Those of the sentences that are whole, each once. */
  const whole = (sentences: readonly string[]): string[] =>
    [...new Set(sentences)].filter((text) => /^[A-Z](?!.*(NaN|undefined|Infinity|null)).*\.$/u.test(text));
  const states = RIDE_STATES.flatMap((from) => RIDE_STATES.map((to) => [from.key, to.key] as const));

  it.each(states)('is whole from %s to %s, whatever was changed and whatever drives', (from, to) => {
    for (const kind of ['chain', 'belt', 'shaft', 'hub'] as const) {
      const unchanged = ridden(driven(kind), {}, from, to);
      if (from === to) expect(unchanged).toEqual([]);
      else expect(filled(unchanged)).toEqual(whole(unchanged));
      for (const changes of [
        { pivotUp: 3, shockSpringRate: 90 },
        { forkTubes: 12, riderForward: 60 },
      ]) {
        const sentences = ridden(driven(kind), changes, from, to);
        expect(filled(sentences)).toEqual(whole(sentences));
      }
    }
  });
});
