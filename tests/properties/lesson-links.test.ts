/** Tests of lessons in links: made with their bike, opened again to the last digit, and refused in words where cut, damaged, too long or hostile. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { LESSONS } from '../../src/lessons/all-lessons.ts';
import type { FiledLesson } from '../../src/lessons/lesson-file.ts';
import { makeLesson } from '../../src/lessons/make-lesson.ts';
import { saveLesson } from '../../src/lessons/save-lesson.ts';
import { openShortLesson, shortLesson } from '../../src/lessons/short-lesson.ts';
import { isBikeLink } from '../../src/storage/link/bike-link.ts';
import { isLessonLink, makeLessonLink, unpackLessonLink } from '../../src/storage/link/lesson-link.ts';
import { LONGEST_LINK } from '../../src/storage/link/packed-link.ts';

const ADDRESS = 'https://bikes.example.com/workshop/sidestance/';
const STYLE = { system: 'metric', decimal: '.' } as const;

function madeOn({ bike, setup }: (typeof DEMO_BIKES)[number]): FiledLesson {
  const now = { bike, setup: { ...setup, forkTubes: setup.forkTubes + 7.25 } };
  const { lesson, asSet } = makeLesson({ now, baseline: setup, state: 'riderUp' }, STYLE);
  const because = 'The front stands lower, and the bike tips forward about the rear contact patch.';
  return {
    lesson: {
      ...lesson,
      key: 'filed',
      goal: 'Say what the fork tubes do.',
      steps: [{ ...lesson.steps[0], because }],
    },
    asSet,
  };
}

async function linkOf(filed: FiledLesson): Promise<string> {
  const made = await makeLessonLink(shortLesson(filed), ADDRESS);
  if (!made.ok) throw new Error(JSON.stringify(made.reason));
  return made.value;
}

const behind = (link: string): string => link.slice(link.indexOf('#'));

async function refusalOf(fragment: string): Promise<string> {
  const text = await unpackLessonLink(fragment);
  if (!text.ok) return text.reason;
  const opened = openShortLesson(text.value);
  return opened.ok ? '' : opened.reason.sentence;
}

async function fragmentOf(text: string): Promise<string> {
  const made = await makeLessonLink(text, '');
  return made.ok ? made.value : JSON.stringify(made.reason);
}

describe('a link to a lesson', () => {
  it.each(DEMO_BIKES)(
    'holds one made on $bike.name in at most 2,000 characters, with its bike',
    async (demo) => {
      const filed = madeOn(demo);
      const link = await linkOf(filed);
      expect(link.length).toBeLessThanOrEqual(LONGEST_LINK);
      expect(link).toMatch(/^https:\/\/[\w./-]+#lesson=1\.[0-9a-z]{7}\.[\w-]+$/);
      expect([isLessonLink(behind(link)), isBikeLink(behind(link))]).toEqual([true, false]);
      const text = await unpackLessonLink(behind(link));
      const opened = openShortLesson(text.ok ? text.value : '');
      expect(opened).toMatchObject({ ok: true, value: { repairs: [] } });
      if (opened.ok) expect(saveLesson(opened.value.filed)).toBe(saveLesson(filed));
    },
  );

  it.each(LESSONS.map((lesson) => [lesson.title, lesson] as const))(
    'opens “%s” without a bike as its file does, or is too long and says how long',
    async (_, each) => {
      const filed = { lesson: { ...each, key: 'filed' }, asSet: null };
      const opened = openShortLesson(shortLesson(filed));
      expect(opened).toEqual({ ok: true, value: { filed, repairs: [] } });
      const made = await makeLessonLink(shortLesson(filed), ADDRESS);
      if (!made.ok) expect(made.reason).toMatchObject({ kind: 'tooLong' });
      if (!made.ok && made.reason.kind === 'tooLong')
        expect(made.reason.length).toBeGreaterThan(LONGEST_LINK);
    },
  );
});

describe('a link that is no lesson', () => {
  it('is refused with the same words wherever it was cut, and where one character is another', async () => {
    const whole = behind(await linkOf(madeOn(DEMO_BIKES[0])));
    for (let length = '#lesson='.length; length < whole.length; length += 7)
      expect(await refusalOf(whole.slice(0, length))).toMatch(/^The link is cut off or damaged/);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 10, max: whole.length - 1 }), async (at) => {
        const by = whole[at] === 'A' ? 'B' : 'A';
        expect(await refusalOf(whole.slice(0, at) + by + whole.slice(at + 1))).toMatch(/cut off or damaged/);
      }),
      { numRuns: cases(100) },
    );
  });

  it('with a million characters, of a newer Sidestance, or far larger unpacked is refused before it is used', async () => {
    expect(await refusalOf(`#lesson=1.${'a'.repeat(1_000_000)}`)).toBe(
      'The link is 1000010 characters long, and a lesson takes at most 2000. No lesson was looked for in it.',
    );
    expect(await refusalOf('#lesson=2.abc')).toMatch(/^A newer Sidestance made this link/);
    expect(await refusalOf(await fragmentOf(' '.repeat(1_000_000)))).toBe(
      'The link holds far more than a lesson. Nothing of it was used.',
    );
  });

  it.each([
    ['no JSON', 'lesson', /not JSON/],
    ['a list', '[]', /not a lesson/],
    ['a newer schema', '{"schema":99}', /newer Sidestance/],
    ['no title', '{"schema":1}', /title/],
  ])('that holds %s says so as a file does', async (_, text, says) => {
    expect(await refusalOf(await fragmentOf(text))).toMatch(says);
  });
});
