/** Gets a browser for the tests onto this machine when it has none. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser, findFirefox } from './find-browser.js';
import { root } from './install.js';

/**
 * Tries Playwright's own download first, then Debian's package where that can be installed.
 * @returns {Promise<string | undefined>} the browser's path; undefined when there is still none
 */
export async function browserForTests() {
  const found = await findBrowser();
  if (found) return found;
  console.error('No browser for the tests was found; getting one …');
  run(process.execPath, ['node_modules/@playwright/test/cli.js', 'install', 'chromium']);
  const downloaded = await findBrowser();
  if (downloaded) return downloaded;
  fromDebian('chromium-headless-shell');
  return findBrowser();
}

/** A Firefox to run the main stories in as well; undefined when there is none and none can be had. */
export function firefoxForTests() {
  const found = findFirefox();
  if (found) return found;
  fromDebian('firefox-esr');
  return findFirefox();
}

/** Installs a package where that is possible. @param {string} name */
function fromDebian(name) {
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return;
  run('apt-get', ['update']);
  run('apt-get', ['install', '--yes', '--no-install-recommends', name]);
}

/** How long one way of getting a browser may take, so that the next is still tried when a network only hangs. */
const LONGEST_MS = 240_000;

/** @param {string} program @param {string[]} args */
function run(program, args) {
  const done = spawnSync(program, args, { cwd: root, stdio: ['ignore', 2, 2], timeout: LONGEST_MS });
  if (done.status !== 0) console.error(`${program} ${args.join(' ')} did not succeed.`);
}
