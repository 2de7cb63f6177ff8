/** Bikes as files: saved, opened, dropped on the page, repaired with a list of changes, or refused in plain words. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { textOfBytes } from '../../src/document/json/file-text.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { expectBike } from './support/bikes.ts';
import { savedText } from './support/bike-document.ts';
import { expectNoUndo, field, FRONT_HEIGHT, readingText, typeInto, undo } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

const broken = fileURLToPath(new URL('../../fixtures/broken/', import.meta.url));
const plain = fileURLToPath(new URL('../../fixtures/bikes/plain.json', import.meta.url));

async function open(page: Page, file: string | { name: string; text: string }): Promise<void> {
  const given =
    typeof file === 'string'
      ? file
      : { name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) };
  await page.getByLabel('Bike file', { exact: true }).setInputFiles(given);
}

function told(page: Page, words: string | RegExp): Locator {
  return page.locator('[role="status"], [role="alert"]').filter({ hasText: words });
}

test('a saved file opens again to the same document, also twice', { tag: '@engines' }, async ({ page }) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  const text = await savedText(page);
  await typeInto(page, FRONT_HEIGHT, '2');
  for (let times = 0; times < 2; times++) {
    await open(page, { name: 'mine.json', text });
    await expect(told(page, 'Opened mine.json.')).toBeVisible();
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
    expect(await savedText(page)).toBe(text);
    await expectNoUndo(page);
  }
});

test('Ctrl+S saves and Ctrl+O asks for a file, named after the bike', async ({ page }) => {
  await openPage(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('body').press('Control+s'),
  ]);
  expect(download.suggestedFilename()).toBe('road-sport-as-delivered.sidestance.json');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.locator('body').press('Control+o'),
  ]);
  await chooser.setFiles(plain);
  await expectBike(page, 'Plain road bike, invented');
});

test('a file written by hand with the least there can be opens, and every assumption is listed', async ({
  page,
}) => {
  await openPage(page);
  const least = {
    format: 'sidestance-bike',
    schema: 1,
    bike: {
      frame: { steeringHead: { x: 690, y: 455 }, axisAngleDeg: 24, countershaft: { x: 80, y: 22 } },
      fork: { length: 740 },
      swingarm: { length: 570, toppedOutAngleDeg: 12 },
    },
    setup: {
      frontTeeth: 16,
      rearTeeth: 43,
      clampOffset: 30,
      frontTyre: { code: '120/70-17' },
      rearTyre: { code: '190/55-17' },
    },
  };
  const text = JSON.stringify(least);
  const opened = openDocument(text);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  expect(opened.value.repairs.length).toBeGreaterThan(5);
  await open(page, { name: 'least.json', text });
  const list = told(page, `Opened least.json, with ${opened.value.repairs.length} changes.`);
  await expect(list.getByRole('listitem')).toHaveText(opened.value.repairs.map((repair) => repair.sentence));
  expect(await readingText(page, 'Rake')).toMatch(/^\d+\.\d\d°$/);
  await list.getByRole('button', { name: 'Dismiss' }).click();
  await expect(list).toHaveCount(0);
});

test('a file with 4,800 changes says how many, names the first and sums up the rest', async ({ page }) => {
  await openPage(page);
  const unknown = Object.fromEntries(Array.from({ length: 4800 }, (_, i) => [`unknown${i}`, i]));
  const text = JSON.stringify({ ...JSON.parse(readFileSync(plain, 'utf8')), ...unknown });
  await open(page, { name: 'many.json', text });
  const list = told(page, 'Opened many.json, with 4800 changes.').getByRole('listitem');
  await expect(list).toHaveCount(13);
  await expect(list.first()).toHaveText('unknown0 is not used by this file format and was left out.');
  await expect(list.last()).toHaveText('4788 more unknown fields were left out.');
});

test('a broken file is refused in plain words, and the bike on the page stays with all that can be undone', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  const before = await savedText(page);
  const decode = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  let refusals = 0;
  for (const name of readdirSync(broken)) {
    const text = textOfBytes(readFileSync(`${broken}${name}`), decode);
    const opened = text.ok ? openDocument(text.value) : text;
    if (opened.ok) continue;
    refusals += 1;
    await open(page, `${broken}${name}`);
    await expect(told(page, `${name} was not opened. ${opened.reason.sentence}`)).toBeVisible();
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
  }
  expect(refusals).toBeGreaterThan(15);
  await page.getByRole('button', { name: 'Dismiss' }).click();
  expect(await savedText(page)).toBe(before);
  await undo(page);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('5.0');
});

test('a file of 50 MB is refused without being read', async ({ page }, info) => {
  await openPage(page);
  const large = info.outputPath('large.json');
  writeFileSync(large, Buffer.alloc(50_000_000, 0x20));
  await open(page, large);
  await expect(told(page, 'large.json was not opened. The file is 50.0 MB')).toBeVisible();
  // A picture that someone has renamed is no text either.
  const png = readFileSync(new URL('../../static/icon-192.png', import.meta.url));
  await page
    .getByLabel('Bike file', { exact: true })
    .setInputFiles({ name: 'photo.json', mimeType: 'application/json', buffer: png });
  await expect(told(page, 'photo.json was not opened. The file is not text in UTF-8')).toBeVisible();
  await typeInto(page, FRONT_HEIGHT, '9');
  await undo(page);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('5.0');
});

/** What takes dropped files comes after the first sight. */
async function expectTakesFiles(page: Page): Promise<void> {
  await expect(page.locator('[data-takes-files="true"]')).toBeAttached();
}

/** Drags files over the page, or words when there are none, and lets go of them. */
async function dropped(
  page: Page,
  files: readonly { name: string; text: string }[],
  whileOver: () => Promise<void>,
): Promise<void> {
  const dataTransfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer();
    for (const { name, text } of given) data.items.add(new File([text], name));
    if (given.length === 0) data.setData('text/plain', 'words');
    return data;
  }, files);
  await expectTakesFiles(page);
  const over = page.getByRole('application', { name: 'Side view of the bike' });
  await over.dispatchEvent('dragenter', { dataTransfer });
  await over.dispatchEvent('dragover', { dataTransfer });
  await whileOver();
  await over.dispatchEvent('drop', { dataTransfer });
}

test('a file or folder dropped anywhere on the page is opened, and a hint says so before', async ({
  page,
}, info) => {
  await openPage(page);
  const hint = page.getByText('Drop bike files or a folder to open them');
  const file = { name: 'plain.json', text: readFileSync(plain, 'utf8') };
  await dropped(page, [file], () => expect(hint).toBeVisible());
  await expect(hint).toHaveCount(0);
  await expectBike(page, 'Plain road bike, invented');
  await dropped(page, [{ name: 'cut.json', text: '{' }], () => expect(hint).toBeVisible());
  await expect(told(page, 'cut.json was not opened.')).toBeVisible();
  await expectBike(page, 'Plain road bike, invented');
  // Several, chosen by Ctrl+O or dropped, come into the list with a report, and the page keeps its bike.
  const files = [file, { name: 'cut.json', text: '{' }, { name: 'notes.txt', text: 'words' }];
  await page
    .getByLabel('Bike file', { exact: true })
    .setInputFiles(
      files.map(({ name, text }) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })),
    );
  const report = told(page, 'Everything was here already.');
  await expect(report.getByRole('listitem')).toHaveText([
    'One file does not end in .json and was left out.',
    'cut.json was not opened. The file breaks off before its end; part of it is missing.',
  ]);
  const other = { ...file, text: file.text.replace('Plain road bike', 'Other road bike') };
  await dropped(page, [file, other], () => expect(hint).toBeVisible());
  await expect(told(page, 'Brought back one bike. What was here is as it was. One bike')).toBeVisible();
  // A folder as the system gives it to the browser, with a bike deep in it and other things beside.
  const folder = info.outputPath('shop');
  mkdirSync(`${folder}/2026/may`, { recursive: true });
  writeFileSync(`${folder}/2026/may/third.json`, file.text.replace('Plain road bike', 'Third road bike'));
  writeFileSync(`${folder}/notes.txt`, 'words');
  const drag = await page.context().newCDPSession(page);
  const data = { items: [], files: [folder], dragOperationsMask: 1 };
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await drag.send('Input.dispatchDragEvent', { type, x: 640, y: 300, data });
  const deep = told(page, 'Brought back one bike. What was here is as it was.').filter({ hasText: '.json' });
  await expect(deep).toContainText('One file does not end in .json and was left out.');
});

test('a dragged file that leaves the page takes the hint along, and dragged words show none', async ({
  page,
}) => {
  await openPage(page);
  await expectTakesFiles(page);
  const hint = page.getByText('Drop bike files or a folder to open them');
  const over = page.getByRole('application', { name: 'Side view of the bike' });
  const dataTransfer = await page.evaluateHandle(() => {
    const data = new DataTransfer();
    data.items.add(new File(['{}'], 'a.json'));
    return data;
  });
  await page.locator('body').dispatchEvent('dragenter', { dataTransfer });
  await over.dispatchEvent('dragenter', { dataTransfer });
  await page.locator('body').dispatchEvent('dragleave', { dataTransfer });
  await expect(hint).toBeVisible();
  await over.dispatchEvent('dragleave', { dataTransfer });
  await expect(hint).toHaveCount(0);
  await dropped(page, [], () => expect(hint).toHaveCount(0));
  await expectBike(page, 'Road sport, as delivered');
});
