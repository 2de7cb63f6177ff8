/** The main stories once more in WebKitGTK, each figure on the page held against what the core computes. */
import { serve } from '../../src/commands/serve.js';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { sentencesOf, standing, writtenReading } from '../browser/support/bike-document.ts';
import { benchTable, type BenchRow } from '../bench/bench-table.ts';
import { builtPage, type BuiltPage } from '../support/built-page.ts';
import { KEYS, type DrivenPage, type Place } from '../support/web-driver.ts';
import { findWebKit, installWebKit, startWebKit, type WebKit } from '../support/webkit.ts';

const SIZE = { width: 1280, height: 800 };
/** How far a dragged point may be from the pointer that holds it, px: the pointer stands on whole ones here. */
const FOLLOWS_WITHIN_PX = 2;

const SHOCK = '[data-adjuster="shockLength"]';
const FORK = '[data-adjuster="forkTubes"]';
const FIELD = 'input[type="text"]';

/** Everything a story needs: a fresh window, and the address of the page. */
interface Given {
  readonly page: DrivenPage;
  readonly address: string;
  /** Takes the server away, as a paddock without a network does. */
  readonly cutOff: () => Promise<void>;
}

/** What a story has compared; it throws where the page differs. */
class Held {
  figures = 0;

  same(what: string, found: unknown, expected: unknown): void {
    this.figures += 1;
    if (JSON.stringify(found) !== JSON.stringify(expected))
      throw new Error(`${what}: ${JSON.stringify(found)} on the page, ${JSON.stringify(expected)} computed`);
  }
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

async function opened({ page, address }: Given): Promise<void> {
  await page.goTo(address);
  await page.until(
    'the bike is there',
    () =>
      page.run(
        () =>
          (document.querySelector<HTMLElement>('[data-bike]')?.dataset.bike ?? '') !== '' &&
          document.querySelector('[data-handle="point-pivot"]') !== null,
      ),
    (there) => there,
  );
}

/** Waits until the page has drawn what it was told, and the figures that follow a hand a few times a second have come to rest. */
async function settled(page: DrivenPage): Promise<void> {
  await page.run(
    () => new Promise<null>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))),
  );
}

async function typed(page: DrivenPage, adjuster: string, figure: string): Promise<void> {
  await page.type(`${adjuster} ${FIELD}`, figure + KEYS.enter);
  await settled(page);
}

/** The readings shown: label and figure, their spaces plain. */
async function shown(page: DrivenPage): Promise<readonly (readonly [string, string])[]> {
  await settled(page);
  const found = await page.run(() =>
    [...document.querySelectorAll('#readings li button[aria-pressed]')].map((line): [string, string] => [
      (line.querySelector('.name') as HTMLElement).innerText,
      (line.querySelector('.value') as HTMLElement).innerText,
    ]),
  );
  return found.map(([label, figure]) => [plain(label), plain(figure)] as const);
}

/** What stands in an adjuster's field. */
function valueOf(page: DrivenPage, adjuster: string): Promise<string> {
  return page.run(
    (selector) => document.querySelector<HTMLInputElement>(selector)?.value ?? '',
    `${adjuster} ${FIELD}`,
  );
}

/** Holds every reading shown against what the core makes of a document. */
async function holdReadings(page: DrivenPage, document: BikeDocument, held: Held): Promise<void> {
  const stance = standing(document);
  const lines = await shown(page);
  const known = lines.flatMap(([label, figure]) => {
    const reading = READINGS.find((each) => each.label === label);
    return reading === undefined ? [] : [{ reading, figure }];
  });
  if (known.length < 8) throw new Error(`only ${known.length} readings are on the page`);
  for (const { reading, figure } of known)
    held.same(reading.label, figure, plain(writtenReading(stance, reading.key)));
}

/** The bike that the page's store holds; null before the first save. */
function stored(page: DrivenPage): Promise<string | null> {
  return page.run(
    () =>
      new Promise<string | null>((done, failed) => {
        const asked = indexedDB.open('sidestance');
        asked.onerror = () => failed(asked.error ?? new Error('no store'));
        asked.onsuccess = () => {
          const rows = asked.result.transaction('bikes').objectStore('bikes').getAll();
          rows.onerror = () => failed(rows.error ?? new Error('no bikes'));
          rows.onsuccess = () => {
            asked.result.close();
            const bikes = rows.result as { text: string; savedAt: number }[];
            done(bikes.sort((a, b) => b.savedAt - a.savedAt)[0]?.text ?? null);
          };
        };
      }),
  );
}

function documentOf(text: string | null): BikeDocument | null {
  if (text === null) return null;
  const found = openDocument(text);
  if (!found.ok) throw new Error(found.reason.sentence);
  return found.value.document;
}

/** The document once the store holds what it should. */
async function storedWhen(
  page: DrivenPage,
  isSo: (document: BikeDocument) => boolean,
): Promise<BikeDocument> {
  const text = await page.until(
    'the bike in the store',
    () => stored(page),
    (found) => {
      const document = documentOf(found);
      return document !== null && isSo(document);
    },
  );
  return documentOf(text) as BikeDocument;
}

function middleOf(page: DrivenPage, handle: string): Promise<Place> {
  return page.run((id) => {
    const element = document.querySelector(`[data-handle="${id}"]`) as HTMLElement;
    const { left, top } = (element.offsetParent as HTMLElement).getBoundingClientRect();
    const { e, f } = new DOMMatrix(element.style.transform);
    return { x: left + e, y: top + f };
  }, handle);
}

/** Presses a button by its name, in a part of the page. */
async function pressNamed(page: DrivenPage, within: string, name: string): Promise<void> {
  const pressed = await page.run(
    (part, words) => {
      const named = [...document.querySelectorAll<HTMLElement>(`${part} :is(button, label)`)].find(
        (each) => (each.getAttribute('aria-label') ?? each.innerText).trim() === words,
      );
      named?.click();
      return named !== undefined;
    },
    within,
    name,
  );
  if (!pressed) throw new Error(`there is no ${name} in ${within}`);
  await settled(page);
}

const [demo] = DEMO_BIKES;
const shockOf = (document: BikeDocument): number => document.setup.shockLength;

const STORIES: Readonly<Record<string, (given: Given, held: Held) => Promise<void>>> = {
  'the bike of the first visit reads as the core computes it': async (given, held) => {
    await opened(given);
    await holdReadings(given.page, demo, held);
  },
  '10 mm at the shock: every reading follows, and the reasons are those of the core': async (given, held) => {
    const { page } = given;
    await opened(given);
    await typed(page, SHOCK, '10');
    const after = await storedWhen(page, (document) => shockOf(document) === 10);
    await holdReadings(page, after, held);
    const told = await page.until(
      'the reasons',
      () =>
        page.run(() => [...document.querySelectorAll<HTMLElement>('.below li')].map((li) => li.innerText)),
      (sentences) => sentences.length > 0,
    );
    held.same(
      'the reasons',
      told.map(plain),
      sentencesOf(demo, after).map(({ text }) => text),
    );
  },
  'five presses on lower at the fork': async (given, held) => {
    const { page } = given;
    await opened(given);
    for (let i = 0; i < 5; i++) await page.click(`${FORK} button[aria-label$="lowers the front"]`);
    const figure = Number(await valueOf(page, FORK));
    held.same('the fork went down', figure > demo.setup.forkTubes, true);
    const after = await storedWhen(page, ({ setup }) => setup.forkTubes === figure);
    await holdReadings(page, after, held);
  },
  'all to baseline brings the first figures back': async (given, held) => {
    const { page } = given;
    await opened(given);
    await typed(page, SHOCK, '10');
    await storedWhen(page, (document) => shockOf(document) === 10);
    await pressNamed(page, 'main', 'All to baseline');
    const after = await storedWhen(page, (document) => shockOf(document) === shockOf(demo));
    held.same('the setup', after.setup, demo.setup);
    await holdReadings(page, demo, held);
  },
  'the tail pulled by the mouse turns the shock, and the grip is where the hand let go': async (
    given,
    held,
  ) => {
    const { page } = given;
    await opened(given);
    const from = await middleOf(page, 'grip-shockLength');
    await page.drag(from, { x: from.x, y: from.y - 8 }, 6);
    const after = await storedWhen(page, (document) => shockOf(document) !== shockOf(demo));
    held.same('the shock grew longer', shockOf(after) > shockOf(demo), true);
    await holdReadings(page, after, held);
  },
  'a point dragged in Edit is under the hand, and one undo brings back the very bike': async (
    given,
    held,
  ) => {
    const { page } = given;
    await opened(given);
    await pressNamed(page, '.side-view', 'Edit');
    const from = await middleOf(page, 'point-seat');
    const to = { x: Math.round(from.x) - 30, y: Math.round(from.y) - 16 };
    await page.drag(from, to, 8);
    const moved = await storedWhen(page, (document) => document.bike.frame.seat !== undefined);
    held.same('the seat moved', JSON.stringify(moved.bike) !== JSON.stringify(demo.bike), true);
    await settled(page);
    const at = await middleOf(page, 'point-seat');
    held.same('px off the hand', Math.hypot(at.x - to.x, at.y - to.y) <= FOLLOWS_WITHIN_PX, true);
    await page.press(KEYS.control, 'z');
    const back = await storedWhen(
      page,
      (document) => JSON.stringify(document.bike) === JSON.stringify(demo.bike),
    );
    held.same('the setup', back.setup, demo.setup);
  },
  'another pair of sprockets from the table': async (given, held) => {
    const { page } = given;
    await opened(given);
    await pressNamed(page, 'main', 'Sprockets');
    const pair = await page.until(
      'the table of pairs',
      () =>
        page.run(
          () => document.querySelector('button[aria-label^="Try "]')?.getAttribute('aria-label') ?? '',
        ),
      (name) => name !== '',
    );
    const [frontTeeth, rearTeeth] = pair.replace('Try ', '').split('/').map(Number);
    await page.click(`button[aria-label="${pair}"]`);
    const after = await storedWhen(
      page,
      ({ setup }) => setup.frontTeeth === frontTeeth && setup.rearTeeth === rearTeeth,
    );
    await holdReadings(page, after, held);
  },
  'a bike is there again after a reload, with its figures': async (given, held) => {
    const { page } = given;
    await opened(given);
    await typed(page, FORK, '12');
    const before = await storedWhen(page, (document) => document.setup.forkTubes === 12);
    await page.reload();
    await opened(given);
    held.same(adjusterLabel('forkTubes', 'chain'), await valueOf(page, FORK), '12.0');
    await holdReadings(page, before, held);
  },
  'without a server the page opens again and computes': async (given, held) => {
    const { page } = given;
    await opened(given);
    await page.until(
      'the page is kept on the device',
      () => page.run(async () => (await navigator.serviceWorker.getRegistration())?.active?.state ?? ''),
      (state) => state === 'activated',
    );
    await given.cutOff();
    await opened(given);
    await typed(page, SHOCK, '6');
    await holdReadings(page, await storedWhen(page, (document) => shockOf(document) === 6), held);
  },
};

const SHORT = 1;

async function run(kit: WebKit, built: BuiltPage, short: boolean): Promise<string[]> {
  const lines: string[] = [];
  let passed = 0;
  let figures = 0;
  const stories = Object.entries(STORIES).slice(0, short ? SHORT : undefined);
  const webkit = await startWebKit(kit, SIZE);
  try {
    for (const [name, story] of stories) {
      const server = await serve(built.folder, 0);
      const page = await webkit.open();
      const held = new Held();
      const begun = performance.now();
      const cutOff = async (): Promise<void> => {
        server.closeAllConnections();
        await new Promise((done) => server.close(done));
      };
      try {
        await story({ page, address: `http://127.0.0.1:${server.portTaken}/`, cutOff }, held);
        passed += 1;
        lines.push(`passed  ${name}, ${held.figures} figures, ${seconds(begun)} s`);
      } catch (error) {
        lines.push(`FAILED  ${name}: ${error instanceof Error ? error.message : String(error)}`);
      }
      figures += held.figures;
      await page.close();
      server.closeAllConnections();
      server.close();
    }
  } finally {
    webkit.end();
  }
  const rows: BenchRow[] = [
    { what: 'stories in WebKitGTK that hold', figure: passed, unit: '', goal: { least: stories.length } },
    { what: 'figures held against the core', figure: figures, unit: '' },
  ];
  return [...lines, ...benchTable(rows)];
}

const seconds = (since: number): string => ((performance.now() - since) / 1000).toFixed(1);

export default async function webkit(short: boolean, given?: BuiltPage): Promise<string[]> {
  if (findWebKit() === null) installWebKit();
  const kit = findWebKit();
  if (kit === null)
    return [
      `WebKitGTK is not on this machine, so its ${Object.keys(STORIES).length} stories are left out; Debian has it as webkit2gtk-driver and xvfb.`,
    ];
  const built = given ?? (await builtPage());
  try {
    return await run(kit, built, short);
  } finally {
    if (given === undefined) built.remove();
  }
}
