/** Pictures of bikes on their way into a file and out of one. */
import type { FiledBike, FiledPicture } from '../../document/bikes-file.ts';
import type { KeptPicture, WholeBike } from '../../storage/bike-store.ts';
import { canDecode } from '../../storage/file/can-decode.ts';
import { pictureFrom, pictureText } from '../../storage/file/picture-text.ts';

/** The most letters of pictures in one file: a browser's longest text holds them beside the bikes. */
export const LARGEST_PICTURES_TEXT = 200_000_000;

/** The pictures of a bike as the file has them, as long as there is `room`; the others are named in `report`. */
export async function filedPictures(
  { bike, pictures }: WholeBike,
  room: number,
  report: string[],
): Promise<readonly FiledPicture[]> {
  const filed: FiledPicture[] = [];
  for (const { keptAt, blob } of pictures) {
    const data = await pictureText(blob);
    if (data !== null && data.length <= room) {
      filed.push({ keptAt, type: blob.type, data });
      room -= data.length;
    } else {
      const why = data === null ? 'the browser has lost it' : 'the file would be too large to be opened';
      report.push(`A picture of ${bike.name} is not in the file: ${why}.`);
    }
  }
  return filed;
}

/** The pictures that this browser can show; the others are left out and named in `report`. */
export async function keptPictures(
  bikes: readonly FiledBike[],
  start: string,
  report: string[],
): Promise<readonly Omit<KeptPicture, 'id'>[]> {
  const kept: Omit<KeptPicture, 'id'>[] = [];
  for (const { id: bikeId, document, pictures } of bikes)
    for (const [i, { keptAt, type, data }] of (pictures ?? []).entries()) {
      const blob = pictureFrom(data, type);
      if (await canDecode(blob)) kept.push({ bikeId, keptAt, blob });
      else
        report.push(
          `${start}Picture ${i + 1} of ${document.bike.name} was left out: it is damaged, or of a kind that this browser cannot show.`,
        );
    }
  return kept;
}
