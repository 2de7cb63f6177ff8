/** Reads the table of folders out of DEVELOPERS.md and compares it with the folders there are. */

/** The first cells, in backquotes, of the rows of the table under the heading "Folders". */
export function foldersInTable(markdown: string): string[] {
  const section = /^## Folders\n([\s\S]*?)(?=^## |$(?![\s\S]))/m.exec(markdown)?.[1] ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .flatMap((line) => [...(line.split('|')[1] ?? '').matchAll(/`([^`]+)`/g)].map((match) => match[1] ?? ''));
}

/** The folders of src that hold a file themselves, e.g. `core/plane`, from the paths of all files. */
export function foldersOfFiles(files: readonly string[]): string[] {
  return [...new Set(files.map((file) => file.split('/').slice(1, -1).join('/')))].sort();
}

/** What differs between two lists of names. */
export function difference(told: readonly string[], there: readonly string[]): string[] {
  return [
    ...there.filter((name) => !told.includes(name)).map((name) => `${name} has no row`),
    ...told.filter((name) => !there.includes(name)).map((name) => `${name} has a row but no file`),
  ];
}
