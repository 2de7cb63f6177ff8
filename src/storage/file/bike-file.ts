/** Bikes as files: written to the downloads, and read from a file that the user gives. */
import { succeed, type Result } from '../../core/numeric/result.ts';
import type { BikeDocument } from '../../document/document.ts';
import { openDocument } from '../../document/open-document.ts';
import type { Opened } from '../../document/open-json.ts';
import type { OpenReason } from '../../document/json/open-reason.ts';
import { saveDocument } from '../../document/save-document.ts';
import { bikeFileName } from './bike-file-name.ts';
import { download } from './download.ts';
import { readTextFile } from './read-text-file.ts';

/** Gives the bike to the browser's downloads and returns the file's name. */
export function downloadBike(bike: BikeDocument, page: Document = document): string {
  const name = bikeFileName(bike.bike.name);
  download(name, new Blob([saveDocument(bike)], { type: 'application/json' }), page);
  return name;
}

export interface ReadBike extends Opened {
  /** The file's text as it was, to be kept when it was repaired. */
  readonly text: string;
}

/** Opens a file, or says why not; one that is too large is not even read. */
export async function readBikeFile(file: Blob): Promise<Result<ReadBike, OpenReason>> {
  const text = await readTextFile(file);
  if (!text.ok) return text;
  const opened = openDocument(text.value);
  return opened.ok ? succeed({ ...opened.value, text: text.value }) : opened;
}
