/** What the project's top level may hold, and how to read what git ignores. */

const allowed = new RegExp(
  `^(${[
    'README\\.md',
    'DEVELOPERS\\.md',
    'LICENSE',
    'package(-lock)?\\.json',
    'src',
    'static',
    'tests',
    'fixtures',
    '\\.ci',
    '\\.git.*',
    '\\.prettier.*',
    '\\.npmrc',
    '\\.nvmrc',
    '\\.editorconfig',
    'tsconfig.*\\.json',
    'svelte\\.config\\.js',
    'vite\\.config\\.ts',
    'vitest\\.config\\.ts',
    'playwright\\.config\\.ts',
    'eslint\\.config\\.js',
  ].join('|')})$`,
);

/** The names that have no place at the top level; `gitignore` is the text of the file of that name. */
export function strayNames(names: readonly string[], gitignore: string): string[] {
  const ignored = gitignore
    .split('\n')
    .map((line) => line.trim().replace(/\/$/, ''))
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => new RegExp(`^${line.replaceAll('.', '\\.').replaceAll('*', '.*')}$`));
  return names.filter((name) => !allowed.test(name) && !ignored.some((pattern) => pattern.test(name)));
}
