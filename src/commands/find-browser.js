/** Finds a browser of the Chromium family that can run the tests, among those installed and Playwright's own. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';

// The shell without a window comes first: the same suite takes it a third of the time.
const commands = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];
const macApps = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
const windowsPrograms = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/** Firefox by its names, and as macOS keeps it. */
const firefoxes = ['firefox-esr', 'firefox'];
const firefoxApps = ['Firefox'];

/**
 * The places a browser may be, the best first.
 * @param {NodeJS.Platform} platform
 * @param {NodeJS.ProcessEnv} env
 * @returns {string[]}
 */
export function placesToLook(platform, env) {
  if (platform === 'darwin') return placesOfApps(macApps);
  if (platform === 'win32') {
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => windowsPrograms.map((program) => `${folder}\\${program}`));
  }
  return placesOnPath(commands, env);
}

/** @param {string[]} apps */
const placesOfApps = (apps) =>
  ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
    apps.map((app) => `${folder}/${app}.app/Contents/MacOS/${app === 'Firefox' ? 'firefox' : app}`),
  );

/** @param {string[]} names @param {NodeJS.ProcessEnv} env */
function placesOnPath(names, env) {
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/**
 * Whether the program starts at all: a launcher that only says what to install, or lacks a library, does not count.
 * @param {string} path
 */
function runs(path) {
  if (!existsSync(path)) return false;
  // On Windows the browser opens a window when asked for its version, so it is enough that the file exists.
  if (process.platform === 'win32') return true;
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;
}

/**
 * The path of a browser that runs; undefined when there is none. BROWSER_PATH in the environment is taken at its word.
 * @returns {Promise<string | undefined>}
 */
export async function findBrowser() {
  if (process.env.BROWSER_PATH) return process.env.BROWSER_PATH;
  const installed = placesToLook(process.platform, process.env).find(runs);
  if (installed) return installed;
  const { chromium } = await import('@playwright/test');
  const own = chromium.executablePath();
  return runs(own) ? own : undefined;
}

/** The path of a Firefox of the system; undefined when there is none, or on Windows, where none is looked for. */
export function findFirefox() {
  if (process.env.FIREFOX_PATH) return process.env.FIREFOX_PATH;
  const places =
    process.platform === 'darwin' ? placesOfApps(firefoxApps) : placesOnPath(firefoxes, process.env);
  return places.find(runs);
}
