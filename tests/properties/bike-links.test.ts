/** Tests of bikes in links: made, opened again to the last digit, and refused in words when they are cut, damaged or hostile. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { largeBike } from '../support/large-bike.ts';
import { newDocument } from '../support/new-document.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import { renameBike, setAdjuster } from '../../src/document/edits.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { shortText } from '../../src/document/short-form.ts';
import { isBikeLink, makeLink, openLink } from '../../src/storage/link/bike-link.ts';
import { checkFigure } from '../../src/storage/link/check-figure.ts';
import { LONGEST_LINK } from '../../src/storage/link/packed-link.ts';
import { longLinkWords } from '../../src/words/kept/link-words.ts';

const ADDRESS = 'https://bikes.example.com/workshop/sidestance/';
const [road] = DEMO_BIKES;

async function linkOf(document: BikeDocument): Promise<string> {
  const made = await makeLink(document, ADDRESS);
  if (!made.ok) throw new Error(made.reason.kind);
  return made.value;
}

const behind = (link: string): string => link.slice(link.indexOf('#'));

/** The fragment of a link that holds these bytes, its check figure right. */
async function fragmentOf(bytes: BlobPart): Promise<string> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const deflated = new Uint8Array(await new Response(stream).arrayBuffer());
  const packed = btoa(Array.from(deflated, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');
  return `#bike=1.${checkFigure(packed)}.${packed}`;
}

async function refusalOf(fragment: string): Promise<string> {
  const opened = await openLink(fragment);
  return opened.ok ? '' : opened.reason;
}

describe('a link to a bike', () => {
  it.each(DEMO_BIKES)(
    'holds $bike.name in at most 2,000 characters, with a baseline of its own',
    async (demo) => {
      const turned = setAdjuster(demo, 'forkTubes', 7.25);
      if (!turned.ok) throw new Error(turned.reason.sentence);
      for (const document of [demo, turned.value]) {
        const link = await linkOf(document);
        expect(link.length).toBeLessThanOrEqual(LONGEST_LINK);
        expect(link).toMatch(/^https:\/\/[\w./-]+#bike=1\.[0-9a-z]{7}\.[\w-]+$/);
        const opened = await openLink(behind(link));
        expect(opened).toMatchObject({ ok: true, value: { repairs: [] } });
        if (opened.ok) expect(saveDocument(opened.value.document)).toBe(saveDocument(document));
      }
    },
  );

  it('opens any bike again as the file does, to the last digit', async () => {
    await fc.assert(
      fc.asyncProperty(likelyBike, likelyBike, async (one, other) => {
        const document: BikeDocument = {
          ...newDocument(one.bike, one.setup),
          baseline: { name: 'Before', bike: one.bike, setup: other.setup },
        };
        const opened = await openLink(await fragmentOf(shortText(document)));
        if (!opened.ok) throw new Error(opened.reason);
        expect(opened.value.repairs).toEqual([]);
        expect(saveDocument(opened.value.document)).toBe(saveDocument(document));
      }),
      { numRuns: cases(60) },
    );
  });

  it('brings the rows that the bike was measured by, without their photos', async () => {
    const row = {
      kind: 'height',
      parts: ['pivot'],
      state: 'onWheels',
      otherState: null,
      figure: '412',
      unit: '',
      sd: null,
      outOfPlane: 0,
      fromOther: true,
      off: false,
      note: '',
    };
    const measure = { gaugeZeroed: false, setup: road.setup, rows: [row], photos: [{ picture: 'p' }] };
    const opened = await openLink(behind(await linkOf({ ...road, measure })));
    expect(opened.ok && opened.value.document.measure).toEqual({
      gaugeZeroed: false,
      setup: road.setup,
      rows: [row],
    });
  });

  it('keeps a hostile name as the text it is', async () => {
    const name = '"><script>alert(1)</script>&#x202e;=cmd|‮\u0007';
    const named = renameBike(road, name);
    if (!named.ok) throw new Error(named.reason.sentence);
    const link = await linkOf(named.value);
    expect(link).not.toMatch(/[<>"&\s]/);
    const opened = await openLink(behind(link));
    expect(opened.ok && opened.value.document.bike.name).toBe(named.value.bike.name);
  });

  it('is not made longer than 2,000 characters, and says how long it would be', async () => {
    const large = largeBike();
    const made = await makeLink(large, ADDRESS);
    if (made.ok || made.reason.kind !== 'tooLong') throw new Error('a link was made');
    const { length } = made.reason;
    // The same bike packed by hand, its address before it: the figure told is the length that the link would have.
    expect(length).toBe(ADDRESS.length + (await fragmentOf(shortText(large))).length);
    expect(length).toBeGreaterThan(LONGEST_LINK);
    expect(longLinkWords('bike', length, LONGEST_LINK)).toBe(
      `The link of this bike would have ${length} characters, and many messages cut a link after 2000. Send a file instead.`,
    );
    // The file that is sent instead holds every row.
    const opened = openDocument(saveDocument(large));
    expect(opened.ok && opened.value.repairs).toEqual([]);
    expect(opened.ok && opened.value.document.measure?.rows).toEqual(large.measure?.rows);
  });

  it('is made as long as it has no more than 2,000 characters, however many rows the bike was measured by', async () => {
    const lengths: number[] = [];
    for (let rows = 0; rows < 60; rows += 1) {
      const made = await makeLink(largeBike(rows), ADDRESS);
      const length = made.ok ? made.value.length : made.reason.kind === 'tooLong' ? made.reason.length : 0;
      expect(made.ok).toBe(length <= LONGEST_LINK);
      lengths.push(length);
    }
    expect(lengths.some((length) => length <= LONGEST_LINK)).toBe(true);
    expect(lengths.some((length) => length > LONGEST_LINK)).toBe(true);
  });
});

describe('a link that is no bike', () => {
  it('is refused with the same words wherever it was cut', async () => {
    const whole = behind(await linkOf(road));
    for (let length = '#bike='.length; length < whole.length; length += 1)
      expect(await refusalOf(whole.slice(0, length))).toMatch(/^The link is cut off or damaged/);
  });

  it('is refused where one character is another', async () => {
    const whole = behind(await linkOf(road));
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 8, max: whole.length - 1 }),
        fc.constantFrom('A', 'z', '0', '.', '%', '\u0000'),
        async (at, by) => {
          fc.pre(whole[at] !== by);
          expect(await refusalOf(whole.slice(0, at) + by + whole.slice(at + 1))).toMatch(
            /cut off or damaged/,
          );
        },
      ),
      { numRuns: cases(300) },
    );
  });

  it('with a million characters is refused before anyone looks into it', async () => {
    const start = performance.now();
    expect(await refusalOf(`#bike=1.${'a'.repeat(1_000_000)}`)).toMatch(
      /^The link is 1000008 characters long/,
    );
    expect(performance.now() - start).toBeLessThan(200);
  });

  it('that unpacks to far more than a bike stops early', async () => {
    expect(await refusalOf(await fragmentOf(' '.repeat(5_000_000)))).toMatch(/far more than a bike/);
  });

  it.each([
    ['no JSON', 'bike', /not JSON/],
    ['a list', '[]', /not a bike/],
    ['nothing', '', /empty/],
    [
      'a bike without a frame',
      JSON.stringify({ schema: 4, bike: { name: 'X' }, setup: {} }),
      /steering head/,
    ],
    ['a newer schema', JSON.stringify({ schema: 99 }), /newer Sidestance/],
    ['a name given twice', '{"schema":4,"schema":4}', /twice/],
    ['nests of brackets', '['.repeat(100_000), /levels deep/],
    ['bytes that are no text', new Uint8Array([0xff, 0xfe, 0x80]), /cut off or damaged/],
  ])('that holds %s says so as a file does', async (_, text, says) => {
    expect(await refusalOf(await fragmentOf(text))).toMatch(says);
  });

  it('from a newer Sidestance says so', async () => {
    expect(await refusalOf('#bike=2!whatever')).toMatch(/^A newer Sidestance made this link/);
    expect(await refusalOf('#bike=17.abc')).toMatch(/^A newer Sidestance made this link/);
  });

  it('is left alone where it is meant for something else', () => {
    expect(['', '#', '#readings', '#bikes'].some(isBikeLink)).toBe(false);
    expect(isBikeLink('#bike=')).toBe(true);
  });
});
