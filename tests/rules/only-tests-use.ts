/** Finds the exports that the program does not need: those that only tests use, or nobody. */
import { posix } from 'node:path';
import { namesOf, type FileNames } from './declarations.ts';

/**
 * Each exported name that nothing reaches from the entry files, as `src/a/x.ts: name`; `texts` maps each file to its
 * text. A name is reached when a statement that runs, or a declaration that is reached itself, refers to it.
 */
export function onlyTestsUse(texts: ReadonlyMap<string, string>, entries: readonly string[]): string[] {
  const files = new Map([...texts].map(([file, text]) => [file, namesOf(file, text)]));
  const loaded = new Set<string>();
  const reached = new Set<string>();

  const at = (file: string, specifier: string) => posix.join(posix.dirname(file), specifier);
  const take = (file: string, name: string): void => {
    const names = files.get(file);
    if (!names) return;
    load(file, names);
    if (name === '*') for (const each of names.exported.values()) reach(file, names, each);
    else reach(file, names, names.exported.get(name) ?? name);
  };
  const load = (file: string, names: FileNames): void => {
    if (loaded.has(file)) return;
    loaded.add(file);
    for (const name of names.run) reach(file, names, name);
    for (const specifier of names.whole) take(at(file, specifier), '*');
  };
  const reach = (file: string, names: FileNames, name: string): void => {
    const origin = names.imported.get(name);
    const refers = names.declared.get(name);
    const key = `${file}: ${name}`;
    if (reached.has(key)) return;
    if (origin) {
      reached.add(key);
      take(at(file, origin.specifier), origin.name);
    } else if (refers) {
      reached.add(key);
      for (const each of refers) reach(file, names, each);
    }
  };

  for (const entry of entries) take(entry, '*');
  return [...files].flatMap(([file, { exported }]) =>
    [...exported]
      .filter(([, inside]) => !reached.has(`${file}: ${inside}`))
      .map(([outside]) => `${file}: ${outside}`),
  );
}
