/** Every panel in every theme on seven screens, after the rear was raised and the front dropped: no word is faint, cut or over another, and none lies on what the drawing must show. */
import { chromium, type Browser, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { keptClear } from '../../src/scene/construction/kept-clear.ts';
import { toScreen } from '../../src/scene/shapes/view.ts';
import { savedDocument, standing } from '../browser/support/bike-document.ts';
import { expectLookedFor } from '../browser/support/bikes.ts';
import { drawn, middleOf, sideView } from '../browser/support/side-view.ts';
import { pictureText, wordBoxes } from '../browser/support/side-view-picture.ts';
import { benchTable } from '../bench/bench-table.ts';
import { builtPage, type BuiltPage } from '../support/built-page.ts';
import { wordsAmiss } from './words-amiss.ts';

/** Width and height in px, and whether a finger works it. */
const SCREENS = [
  [1280, 720, false],
  [1920, 1080, false],
  [1024, 768, true],
  [820, 1180, true],
  [390, 844, true],
  [390, 664, true],
  [667, 320, true],
] as const;
const THEMES = ['paper', 'garage', 'sun'] as const;
/** By how much the rear is raised and the fork tubes are pushed up, mm. */
const RAISED = 10;
const DROPPED = 5;
/** Kinds of trouble that are printed in full, at most. */
const TOLD = 40;

interface Found {
  views: number;
  words: number;
  readonly faint: Map<string, string>;
  readonly cut: Map<string, string>;
  readonly over: Map<string, string>;
  readonly hidden: Map<string, string>;
}

/** Chooses a panel where one at a time is in sight. */
async function choosePanel(page: Page, name: string): Promise<void> {
  const label = page.getByRole('group', { name: 'Panel' }).getByText(name, { exact: true });
  if (await label.isVisible()) await label.click();
}

async function choose(page: Page, theme: (typeof THEMES)[number]): Promise<void> {
  const list = page.getByRole('combobox', { name: 'Theme' });
  if (!(await list.isVisible())) {
    await page.getByRole('button', { name: /nits and theme$/ }).click();
    await list.selectOption(theme);
    await page.keyboard.press('Escape');
  } else await list.selectOption(theme);
}

async function turn(page: Page, key: 'shockLength' | 'forkTubes', by: number): Promise<void> {
  const field = page.locator(`[data-adjuster="${key}"] input[type="text"]`);
  await field.fill(String(Number(await field.inputValue()) + by));
  await field.press('Enter');
}

/** Words on the drawing that lie over trail triangle, patches, instant centre or wheelbase arrow. */
async function hiddenBy(page: Page): Promise<string[]> {
  const view = await sideView(page).boundingBox();
  const [rear, front] = [await middleOf(page, 'point-rearPatch'), await middleOf(page, 'point-frontPatch')];
  const stance = standing(await savedDocument(page));
  const [x, y] = [view?.x ?? 0, view?.y ?? 0];
  const shown = {
    scale: (front.x - rear.x) / stance.pose.wheelbase,
    turn: 0,
    xPx: rear.x - x,
    yPx: rear.y - y,
  };
  const clear = keptClear(stance, shown);
  if (Math.abs(toScreen(shown, { x: stance.pose.wheelbase, y: 0 }).x - (front.x - x)) > 0.5)
    return ['the drawing is not where its points are'];
  const { boxes } = await wordBoxes(page.context(), await pictureText(page));
  // The browser's box about words has the room above and below them; their ink is the middle of it.
  return boxes
    .filter(({ layer }) => layer === 'labels')
    .filter(({ left, top, right, bottom }) => {
      const inset = 0.2 * (bottom - top);
      return clear.some(
        (other) =>
          left < other.right &&
          other.left < right &&
          top + inset < other.bottom &&
          other.top < bottom - inset,
      );
    })
    .map(({ text }) => text);
}

async function look(page: Page, at: string, found: Found): Promise<void> {
  await drawn(page);
  const { words, ...amiss } = await page.evaluate(wordsAmiss);
  found.views += 1;
  found.words += words;
  for (const kind of ['faint', 'cut', 'over'] as const)
    for (const each of amiss[kind]) if (!found[kind].has(each)) found[kind].set(each, at);
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  if (beyond > 0) found.cut.set(`the page is ${beyond} px wider than the window`, at);
}

/** All panels of one screen in one theme. */
async function lookAround(page: Page, at: string, tabs: number, found: Found): Promise<void> {
  await choosePanel(page, 'Adjusters');
  await turn(page, 'shockLength', RAISED);
  await turn(page, 'forkTubes', DROPPED);
  await look(page, `${at}, as opened`, found);
  for (const each of await hiddenBy(page)) found.hidden.set(each, at);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  await look(page, `${at}, all adjusters`, found);
  await choosePanel(page, 'Readings');
  await look(page, `${at}, readings`, found);
  await choosePanel(page, 'Why and more');
  const labels = page.getByRole('group', { name: 'Below the side view' }).locator('label');
  for (let i = 0; i < Math.min(tabs, await labels.count()); i++) {
    const label = labels.nth(i);
    await label.click();
    const name = (await label.innerText()).trim();
    await page.getByRole('region', { name, exact: true }).waitFor();
    await look(page, `${at}, ${name}`, found);
    const parts = page.locator('.below .panel header fieldset:visible').first().locator('label');
    for (let part = 1; part < (await parts.count()); part++) {
      await parts.nth(part).click();
      await look(page, `${at}, ${name}, part ${part + 1}`, found);
    }
  }
  await page
    .getByRole('group', { name: 'A hand on the side view' })
    .getByText('Edit', { exact: true })
    .click();
  await choosePanel(page, 'Bike');
  await look(page, `${at}, Edit`, found);
}

async function looks(browser: Browser, address: string, short: boolean): Promise<string[]> {
  const none = () => new Map<string, string>();
  const found: Found = { views: 0, words: 0, faint: none(), cut: none(), over: none(), hidden: none() };
  const troubles: string[] = [];
  for (const [width, height, isTouch] of short ? SCREENS.slice(4, 5) : SCREENS)
    for (const theme of short ? THEMES.slice(0, 1) : THEMES) {
      const context = await browser.newContext({
        viewport: { width, height },
        hasTouch: isTouch,
        isMobile: isTouch,
        serviceWorkers: 'block',
      });
      const page = await context.newPage();
      page.on('pageerror', (error) => troubles.push(error.message));
      await page.goto(address);
      await expectLookedFor(page);
      await choose(page, theme);
      await lookAround(page, `${width} × ${height}, ${theme}`, short ? 2 : Infinity, found);
      await context.close();
    }
  const kinds = [
    ['faint', 'words or edges too faint'],
    ['cut', 'words cut or beside their box'],
    ['over', 'words over words'],
    ['hidden', 'words on the trail triangle, a patch, the instant centre or the wheelbase arrow'],
  ] as const;
  return [
    `${found.views} views, ${found.words} words or runs of words looked at`,
    ...troubles.slice(0, 5),
    ...kinds.flatMap(([kind]) =>
      [...found[kind]].slice(0, TOLD).map(([what, at]) => `${kind}: ${what} — ${at}`),
    ),
    ...benchTable([
      { what: 'errors on the page', figure: troubles.length, unit: '', goal: { most: 0 } },
      ...kinds.map(([kind, what]) => ({ what, figure: found[kind].size, unit: '', goal: { most: 0 } })),
    ]),
  ];
}

export default async function run(short: boolean, given?: BuiltPage): Promise<string[]> {
  const executablePath = await findBrowser();
  const built = given ?? (await builtPage());
  const server = await serve(built.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await looks(browser, `http://127.0.0.1:${server.portTaken}/`, short);
  } finally {
    await browser.close();
    server.close();
    if (given === undefined) built.remove();
  }
}
