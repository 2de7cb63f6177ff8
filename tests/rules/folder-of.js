/** Finds the folder of a file, and the row of a folder. */
import { folders } from './folders.js';

/**
 * The row for a folder under src, such as `core/plane`: its own, or else the row for all folders beside it, which
 * ends with a star. @param {string} name @returns {import('./folder-row.js').Folder | undefined}
 */
export function rowOf(name) {
  const star = `${name.slice(0, name.lastIndexOf('/') + 1)}*`;
  return folders.find((each) => each.folder === name) ?? folders.find((each) => each.folder === star);
}

/**
 * The row of the folder a file sits in, by its path from the project's root, e.g. `src/core/plane/point.ts`.
 * @param {string} file
 * @returns {import('./folder-row.js').Folder | undefined}
 */
export function folderOf(file) {
  return /^src\//.test(file) ? rowOf(nameOf(file)) : undefined;
}

/**
 * The folder under src that a file sits in.
 * @param {string} file
 */
export function nameOf(file) {
  return file.slice('src/'.length, file.lastIndexOf('/'));
}
