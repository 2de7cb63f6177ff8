/** Installs the packages the lock file names, unless they are there already. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { unfitness } from './fitness.js';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** @typedef {{ version?: string, optional?: boolean }} LockedPackage */
/** @typedef {{ packages: Record<string, LockedPackage> }} Lock */

/**
 * The packages of a lock file that are missing, or installed in another version. Versions are compared, not the
 * files' times: a checkout sets those anew. Optional packages count only when present, since they depend on the
 * machine. @param {Lock} lock @param {Lock} installed @returns {string[]}
 */
export function missingPackages(lock, installed) {
  return Object.entries(lock.packages)
    .filter(([path, locked]) => {
      const there = installed.packages[path];
      return path !== '' && (there ? there.version !== locked.version : !locked.optional);
    })
    .map(([path]) => path);
}

function isInstalled() {
  const record = `${root}node_modules/.package-lock.json`;
  if (!existsSync(record)) return false;
  const read = (/** @type {string} */ file) => JSON.parse(readFileSync(file, 'utf8'));
  return missingPackages(read(`${root}package-lock.json`), read(record)).length === 0;
}

/**
 * Runs `npm ci` where it is needed; whatever npm prints goes to the error stream, apart from the command's output.
 * Ends the process, with the reason printed, when the packages cannot be installed or nothing can run here.
 */
export function installPackages() {
  const unfit = unfitness(process.versions.node, root);
  if (unfit) {
    console.error(unfit);
    process.exit(1);
  }
  if (isInstalled()) return;
  console.error('Installing the packages (npm ci) …');
  // The shell is needed on Windows, where npm is a script and not a program.
  const done = spawnSync('npm ci --include=dev --no-audit --no-fund', {
    cwd: root,
    shell: true,
    stdio: ['ignore', 2, 2],
  });
  if (done.status !== 0) {
    console.error('The packages could not be installed; see the lines above. Is there a network?');
    process.exit(1);
  }
}
