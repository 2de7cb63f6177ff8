/** Tests of the explanation of a change: its headline, and sentences whose causes add up. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { BELT, CHAIN } from '../../core/parts/drive-noun.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { splitByAdjuster } from '../../core/effects/split-by-adjuster.ts';
import { why } from '../../core/effects/why.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../../core/riding/stand-bike.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { leastToldWords, firstSentences, whyStory, type WhyStory } from './why-words.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };

interface Asked {
  readonly bike?: Bike;
  readonly from?: Setup;
  readonly state?: RideStateKey;
  readonly style?: NumberStyle;
}

function stand(bike: Bike, setup: Setup, state: RideStateKey): StandingBike | null {
  const found = standBike(bike, setup, state);
  return found.ok ? found : null;
}

function story(
  changes: Partial<Setup>,
  { bike = plainBike, from = plainSetup, state = 'toppedOut', style = metric }: Asked = {},
): WhyStory {
  const to = { ...from, ...changes };
  const [before, after] = [stand(bike, from, state), stand(bike, to, state)];
  if (before === null || after === null) throw new Error('the bike does not stand');
  const splits = splitByAdjuster(
    { bike, setup: from, stance: before },
    { bike, setup: to, stance: after },
    (asSet) => stand(asSet.bike, asSet.setup, state),
  );
  const drive = bike.drive.kind === 'belt' ? BELT : CHAIN;
  return whyStory(splits, why(before, after), drive, style);
}

const plain = (text: string): string => text.replace(/\s/gu, ' ');
const textOf = (told: WhyStory, reading: string): string =>
  plain(told.sentences.find((each) => each.reading === reading)?.text ?? '');
const sprung = { bike: linkedBike, from: sprungSetup, state: 'riderUp' } as const;

describe('the explanation of a change', () => {
  it('keeps the sentence about trail where a page has room for few', () => {
    const all = (['swingarmAngle', 'rake', 'trail'] as const).map((reading) => ({ reading, text: reading }));
    const readingsOf = (most: number) => firstSentences(all, most).map(({ reading }) => reading);
    expect(readingsOf(3)).toEqual(['swingarmAngle', 'rake', 'trail']);
    expect(readingsOf(2)).toEqual(['swingarmAngle', 'trail']);
    expect(readingsOf(1)).toEqual(['trail']);
    expect(readingsOf(0)).toEqual([]);
    expect(firstSentences(all.slice(0, 2), 1)).toEqual(all.slice(0, 1));
  });

  it('says nothing when nothing changed, and of what nobody notices only its figures', () => {
    expect(story({})).toEqual({ headline: null, sentences: [], small: '' });
    const told = story({ forkTubes: plainSetup.forkTubes + 0.5 });
    expect(told).toMatchObject({ headline: null, sentences: [] });
    expect(plain(told.small)).toMatch(
      /^Too small for a gauge or a rider to notice: (?:[a-z ]+ [−+]0\.\d+(?:°| mm)(?:, |\.$))+$/,
    );
  });

  it('opens with a headline in lay words, without figures', () => {
    const { headline } = story({ shockLength: 10 });
    expect(headline).toMatch(/the steering turns quicker/i);
    expect(headline).not.toMatch(/\d|rake|trail/i);
  });

  it('says nothing of feel where no motorcycle has the figure', () => {
    const told = story({ clampOffset: plainSetup.clampOffset - 300 });
    expect(told.headline).toBe('Trail: no motorcycle has this. Check the figures.');
    expect(textOf(told, 'trail')).toMatch(/^Trail \+\d+\.\d mm, no motorcycle has this, all from /);
  });

  it('has at most five sentences, the biggest change first', () => {
    const told = story({ shockLength: 10, forkTubes: 15, rearTeeth: plainSetup.rearTeeth + 4 });
    expect(told.sentences).toHaveLength(5);
    const [first] = story({ rearTeeth: plainSetup.rearTeeth + 4 }).sentences;
    expect(first.reading).toBe('finalDriveRatio');
  });

  it('gives each adjuster its share, and the shares add up as they are written', () => {
    const rake = textOf(story({ shockLength: 5, forkTubes: 12 }), 'rake');
    expect(rake).toMatch(
      /^Rake −\d\.\d\d°, steeper axis: −[\d.]+° from the shock, −[\d.]+° from the fork\.$/,
    );
    const [change, ...shares] = [...rake.matchAll(/[+−]?\d+\.\d+/g)].map(([text]) =>
      Number(text.replace('−', '-')),
    );
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(change, 9);
  });

  it('names one adjuster as the cause of all', () => {
    const told = story({ shockLength: 10 });
    expect(told.headline).toMatch(/\. All from the shock\.$/);
    for (const { text } of told.sentences) expect(text).not.toContain('from');
    expect(textOf(told, 'rake')).toMatch(/, steeper axis\.$/);
  });

  it('tells of trail as soon as of rake, which changes with it', () => {
    expect(textOf(story({ shockLength: 10 }), 'trail')).toMatch(/^Trail −/);
  });

  it('says why less trail steers quicker, and warns where none is left', () => {
    expect(textOf(story({ clampOffset: plainSetup.clampOffset + 6 }), 'trail')).toMatch(
      /, quicker steering\. The lever that keeps it straight is shorter\.$/,
    );
    expect(textOf(story({ clampOffset: 150 }), 'trail')).toMatch(
      /the steering does not centre itself, do not ride like this/,
    );
  });

  it('warns in the headline where no trail is left, whether it falls or rises there', () => {
    const without = { ...plainSetup, clampOffset: 170 };
    for (const told of [story({ clampOffset: 150 }), story({ clampOffset: 160 }, { from: without })])
      expect(told.headline).toBe('The steering does not centre itself. Do not ride like this.');
    const back = story({ clampOffset: plainSetup.clampOffset }, { from: without });
    expect(textOf(back, 'trail')).toMatch(/, the steering centres itself now\.$/);
    expect(back.headline).toMatch(/ All from the triple clamps\.$/);
  });

  it('includes the gearing, by sprocket', () => {
    const told = story({ frontTeeth: plainSetup.frontTeeth - 1, rearTeeth: plainSetup.rearTeeth + 2 });
    expect(textOf(told, 'finalDriveRatio')).toMatch(
      /, shorter: \+\d\.\d+ from the front sprocket, \+\d\.\d+ from the rear sprocket\.$/,
    );
    expect(told.headline).toMatch(/the gearing is shorter/i);
  });

  it('writes a change of a percentage in points', () => {
    expect(textOf(story({ rearTeeth: plainSetup.rearTeeth + 4 }), 'antiSquat')).toMatch(
      /^Anti-squat [+−][\d.]+ points, holds the rear up slightly (more|less) on the gas\.$/,
    );
  });

  it('says why a travel changed: by which adjuster, and by springs or load', () => {
    expect(textOf(story({ forkSpringRate: 8 }, sprung), 'frontTravel')).toMatch(
      /^Fork travel used \+[\d.]+ mm, further from topped out, with softer springing.*\.$/,
    );
    expect(textOf(story({ passengerMass: 70 }, sprung), 'rearTravel')).toMatch(
      /, further from topped out, with more load on it\.$/,
    );
  });

  it('says in the reader’s units what it leaves out', () => {
    expect(plain(leastToldWords(metric))).toMatch(
      /^At most 5 changes are shown.* below 0\.10°, 1\.0 mm or 1 point of a percentage are in Readings only\. Riders notice about 2\.0 mm of trail or 0\.25° of rake; up to twice that it is called slight\.$/,
    );
    expect(plain(leastToldWords({ system: 'inch', decimal: ',' }))).toContain('0,04 in');
  });
});
