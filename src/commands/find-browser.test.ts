/** Tests of where a browser is looked for. */
import { expect, it } from 'vitest';
import { findBrowser, findFirefox, placesToLook } from './find-browser.js';

it('on Linux the shell without a window is looked for on the whole path before any other browser', () => {
  const places = placesToLook('linux', { PATH: '/a:/b' });
  expect(places.slice(0, 3)).toEqual([
    '/a/chromium-headless-shell',
    '/b/chromium-headless-shell',
    '/a/chromium',
  ]);
});

it('on macOS the applications folder is looked through', () => {
  expect(placesToLook('darwin', {})[0]).toBe('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
});

it('on Windows folders the environment does not name are left out', () => {
  const places = placesToLook('win32', { PROGRAMFILES: 'C:\\P' });
  expect(places).toEqual([
    'C:\\P\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\P\\Microsoft\\Edge\\Application\\msedge.exe',
  ]);
});

it('a browser named in the environment is taken', async () => {
  const before = process.env.BROWSER_PATH;
  process.env.BROWSER_PATH = '/some/browser';
  expect(await findBrowser()).toBe('/some/browser');
  if (before === undefined) delete process.env.BROWSER_PATH;
  else process.env.BROWSER_PATH = before;
});

it('a Firefox named in the environment is taken, and one that does not start is not', () => {
  const { FIREFOX_PATH, PATH } = process.env;
  process.env.FIREFOX_PATH = '/some/firefox';
  expect(findFirefox()).toBe('/some/firefox');
  delete process.env.FIREFOX_PATH;
  process.env.PATH = '/nowhere';
  if (process.platform === 'linux') expect(findFirefox()).toBeUndefined();
  process.env.PATH = PATH;
  if (FIREFOX_PATH !== undefined) process.env.FIREFOX_PATH = FIREFOX_PATH;
});
