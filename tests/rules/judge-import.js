/** Decides whether one import in one file under src is allowed by the table of folders, and if not says why. */
import { posix } from 'node:path';
import { isBuiltin } from 'node:module';
import { folderOf, nameOf } from './folder-of.js';
import { testPackages } from './folders.js';

const FILE_WITH_EXTENSION = /\.(ts|js|svelte|json|css|svg)$/;

/**
 * `file` is the importing file from the project's root with forward slashes; `typeOnly` is true for `import type`.
 * @param {string} file
 * @param {string} specifier
 * @param {boolean} typeOnly
 * @returns {string | undefined} the reason it is refused; undefined when it is allowed
 */
export function judgeImport(file, specifier, typeOnly) {
  const from = folderOf(file);
  if (!from) return `${file} is in a folder that the table in tests/rules/folders.js does not name`;
  const isTest = file.endsWith('.test.ts');
  const refuse = (/** @type {string} */ what) => `${nameOf(file)} may not import ${what}: ${from.why}`;

  if (!specifier.startsWith('.')) return judgePackage(from, specifier, isTest, refuse);

  if (!FILE_WITH_EXTENSION.test(specifier)) {
    return `"${specifier}" needs the file's extension: imports name the file itself, not a folder or a barrel`;
  }
  const target = posix.join(posix.dirname(file), specifier);
  if (isTest && /^(fixtures|tests\/support)\//.test(target)) return undefined;
  if (target.startsWith('static/')) return refuse('files of static, which are addressed, not imported');
  const to = folderOf(target);
  if (!to) return refuse(`${target}, which lies in no folder of the table`);
  if (nameOf(target) === nameOf(file) || from.values.includes(to.folder)) return undefined;
  if (isTest && oneHoldsOther(nameOf(file), nameOf(target))) return undefined;
  if (from.types.includes(to.folder)) {
    return typeOnly || isTest ? undefined : refuse(`values of ${to.folder}, only types`);
  }
  return refuse(nameOf(target));
}

/** Whether one of two folders is a room of the other: what it makes is often seen best there. */
const oneHoldsOther = (/** @type {string} */ one, /** @type {string} */ other) =>
  one.startsWith(`${other}/`) || other.startsWith(`${one}/`);

/**
 * @param {import('./folder-row.js').Folder} from
 * @param {string} specifier
 * @param {boolean} isTest
 * @param {(what: string) => string} refuse
 */
function judgePackage(from, specifier, isTest, refuse) {
  if (isBuiltin(specifier)) {
    return from.node ? undefined : refuse(`${specifier}, a module of node that no browser has`);
  }
  const parts = specifier.split('/');
  const name = specifier.startsWith('@') ? parts.slice(0, 2).join('/') : parts[0];
  const allowed = isTest ? [...from.packages, ...testPackages] : from.packages;
  return allowed.includes(name) ? undefined : refuse(`the package ${name}`);
}
