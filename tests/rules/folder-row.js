/** One row of the table of folders: what the folder is for and what it may import. */

/**
 * A folder's name may end with a star: the row is then for every folder there without a row. `values` may be imported
 * freely, `types` only with `import type`; `packages` are the packages it may use (its tests may use more, see
 * testPackages). `browser` says whether the browser's globals may appear; `node` whether node's modules may. `why`
 * ends the message of a refused import. @typedef {{ folder: string, purpose: string, values: string[], types:
 * string[], packages: string[], browser: boolean, node: boolean, why: string }} Folder
 */

/**
 * @param {string} folder
 * @param {string} purpose
 * @param {string} why
 * @param {Partial<Omit<Folder, 'folder' | 'purpose' | 'why'>>} allowed
 * @returns {Folder}
 */
export const row = (folder, purpose, why, allowed = {}) => ({
  folder,
  purpose,
  why,
  values: [],
  types: [],
  packages: [],
  browser: false,
  node: false,
  ...allowed,
});
