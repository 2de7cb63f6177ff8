/** Writes the licences of every package whose code is in the page into one file beside it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The file beside the page. */
const LICENCES_FILE = 'licences.txt';

/**
 * The folder of the package that a module lies in; null for one of the project's own.
 *
 * @param {string} id path of the module
 * @returns {string | null}
 */
export function packageFolderOf(id) {
  const path = id.replaceAll('\\', '/').split('?')[0];
  const at = path.lastIndexOf('/node_modules/');
  if (at < 0) return null;
  const [first, second] = path.slice(at + '/node_modules/'.length).split('/');
  const name = first.startsWith('@') ? `${first}/${second}` : first;
  return `${path.slice(0, at)}/node_modules/${name}`;
}

/**
 * One package with the text of its licence. Throws when it brings none: a page that leaves out a licence may not be
 * given away.
 *
 * @param {string} folder
 * @returns {{ title: string, text: string }}
 */
export function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((each) => /^licen[cs]e(\.(md|txt))?$/i.test(each));
  if (file === undefined) throw new Error(`The package ${name} brings no text of its licence.`);
  const text = readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
  return { title: `${name} ${version} (${license})`, text };
}

/**
 * All licences as one text, the project's own first, the others by name.
 *
 * @param {readonly string[]} ids modules that are in the page
 * @param {{ title: string, text: string }} own the project with its licence
 * @returns {string}
 */
export function licencesText(ids, own) {
  const folders = new Set(ids.map(packageFolderOf).filter((folder) => folder !== null));
  const parts = [...folders].map(licenceOf).sort((a, b) => (a.title < b.title ? -1 : 1));
  const all = [own, ...parts];
  const rule = '-'.repeat(72);
  return all.map(({ title, text }) => `${title}\n${rule}\n${text}\n`).join('\n\n');
}

/**
 * A plugin that writes the file when the page is built.
 *
 * @param {URL} root the project's folder
 * @returns {import('vite').Plugin}
 */
export function licencesBuild(root) {
  return {
    name: 'licences',
    apply: 'build',
    generateBundle(_, bundle) {
      const ids = Object.values(bundle).flatMap((each) => (each.type === 'chunk' ? each.moduleIds : []));
      const { title, ...own } = licenceOf(fileURLToPath(root));
      const named = { title: title.replace('sidestance', 'Sidestance'), ...own };
      this.emitFile({ type: 'asset', fileName: LICENCES_FILE, source: licencesText(ids, named) });
    },
  };
}
