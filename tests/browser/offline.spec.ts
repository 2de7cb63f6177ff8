/** Without a network: after one visit the whole page opens from the device, and a newer build waits until a person takes it. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { serve } from '../../src/commands/serve.js';
import { askForDemo } from './support/bikes.ts';
import { expectKeptFork } from './support/kept.ts';
import { field, FRONT_HEIGHT, typeInto } from './support/panels.ts';
import { openPage, sideView } from './support/side-view.ts';

// A window without a network would stay so for the next test.
test.use({ serviceWorkers: 'allow', reuseContext: false });

const BUILT = fileURLToPath(new URL('../../dist/', import.meta.url));
const TABS = ['Ride', 'Springs', 'Chain', 'Sprockets', 'Sheets', 'Curves', 'Tape, photo', 'Why'] as const;

/** Waits until the page lies on the device. */
async function putDown(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
}

test('after one visit the page opens again without a network, with the last edit, every panel and the pages to print', async ({
  page,
  context,
}) => {
  await openPage(page);
  await putDown(page);
  await typeInto(page, FRONT_HEIGHT, '8');
  await expectKeptFork(page, 8);
  await context.setOffline(true);
  await page.reload();
  await expect(sideView(page)).toBeVisible();
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('8.0');
  for (const tab of TABS) {
    await page.getByRole('group', { name: 'Below the side view' }).getByText(tab, { exact: true }).click();
    await expect(page.getByRole('region', { name: tab, exact: true })).toBeVisible();
  }
  await askForDemo(page, 'Twin-shock roadster');
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await expect(page.getByRole('article', { name: 'Page to print' })).toBeVisible();
});

test.describe('a newer build', () => {
  let folder = '';
  let server: Server & { portTaken: number };

  test.beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'sidestance-builds-'));
    cpSync(BUILT, folder, { recursive: true });
    server = await serve(folder, 0);
  });

  test.afterEach(() => {
    server.close();
    server.closeAllConnections();
    rmSync(folder, { recursive: true, force: true });
  });

  /** Another build in place of the first: its page says so, and its worker has another mark. */
  function putAnother(): void {
    const page = join(folder, 'index.html');
    writeFileSync(
      page,
      readFileSync(page, 'utf8').replace('<title>Sidestance</title>', '<title>Newer</title>'),
    );
    const worker = join(folder, 'offline-worker.js');
    const text = readFileSync(worker, 'utf8');
    const changed = text.replace(/BUILD = "[0-9a-f]{16}"/, 'BUILD = "0123456789abcdef"');
    expect(changed).not.toBe(text);
    writeFileSync(worker, changed);
  }

  test('is announced, stays out of use until it is taken, and the last edit survives', async ({ page }) => {
    await page.goto(`http://localhost:${server.portTaken}/`);
    await putDown(page);
    putAnother();
    await page.reload();
    await expect(page).toHaveTitle('Sidestance');
    const notice = page.getByText('A new version of Sidestance is ready.');
    await expect(notice).toBeVisible();
    await page.reload();
    await expect(page).toHaveTitle('Sidestance');
    await expect(notice).toBeVisible();
    await typeInto(page, FRONT_HEIGHT, '7');
    await page.getByRole('button', { name: 'Update and reload' }).click();
    await expect(page).toHaveTitle('Newer');
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('7.0');
    await expect(notice).toHaveCount(0);
    const kept = await page.evaluate(() => caches.keys());
    expect(kept).toHaveLength(1);
    expect(kept[0]).toContain('0123456789abcdef');
  });

  test('can be installed: the manifest names icons that are there', async ({ page, request }) => {
    const at = `http://localhost:${server.portTaken}/`;
    await page.goto(at);
    const address = await page.locator('link[rel="manifest"]').getAttribute('href');
    const manifest = (await (await request.get(new URL(address ?? '', at).href)).json()) as {
      icons: { src: string; type: string }[];
    };
    expect(manifest.icons.length).toBeGreaterThan(1);
    for (const { src, type } of manifest.icons) {
      const icon = await request.get(new URL(src, at).href);
      expect(icon.status()).toBe(200);
      expect(icon.headers()['content-type']).toContain(type);
    }
  });
});

test('the page opened as a file says what to do instead', async ({ page }) => {
  await page.goto(pathToFileURL(join(BUILT, 'index.html')).href);
  await expect(page.getByText('it does not run when the file is opened from a folder')).toBeVisible();
});
