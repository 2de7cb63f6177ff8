/** The files of folders that were dropped on the page, however deep they lie. */

/** The dropped files with those of the folders among them, which the browser gives as files that cannot be read. */
export async function withFolders(
  files: readonly File[],
  folders: readonly FileSystemEntry[],
): Promise<readonly File[]> {
  const names = folders.map(({ name }) => name);
  const found = await Promise.all(folders.map(filesOf));
  return [...files.filter(({ name }) => !names.includes(name)), ...found.flat()];
}

/** A file or folder that the browser can no longer read counts as an empty one of its name, which opening it then says. */
async function filesOf(entry: FileSystemEntry): Promise<readonly File[]> {
  try {
    if (isFolder(entry)) return (await Promise.all((await inside(entry)).map(filesOf))).flat();
    return isFile(entry) ? [await new Promise<File>((found, failed) => entry.file(found, failed))] : [];
  } catch {
    return [new File([], entry.name)];
  }
}

const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;
const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;

/** A browser gives the content of a folder in parts, and none once all were given. */
async function inside(folder: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((found, failed) => reader.readEntries(found, failed));
    if (part.length === 0) return all;
    all.push(...part);
  }
}
