/** Files and folders that a page of prose names in backquotes. */

/** A name with a slash and an ending, or a folder that ends in a slash; patterns with a star or a capital NAME are no names. */
const PATH = /^(?!\.\.)[\w.@-]+(?:\/[\w.@-]+)*\/(?:[\w.@-]+\.(?:ts|js|svelte|json|css|md|png))?$/;

/** Every path in backquotes, as it is written. */
export function namedPaths(markdown: string): string[] {
  return [...markdown.matchAll(/`([^`\n]+)`/g)].map(([, name]) => name).filter((name) => PATH.test(name));
}

/** Those of the named paths that are neither below `src` nor below the top of the project. */
export function missingPaths(named: readonly string[], files: readonly string[]): string[] {
  const there = (path: string): boolean =>
    files.some((file) => file === path || (path.endsWith('/') && file.startsWith(path)));
  return named.filter((path) => !there(path) && !there(`src/${path}`));
}
