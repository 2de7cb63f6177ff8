/** A photo in words: what its clicks make of the bike, what is in doubt, and why something was not taken. */
import type { NoRimEdge } from '../core/measure/rim-edge.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../core/measure/measure-parts.ts';
import type { PhotoOutcome } from '../core/measure/photo.ts';
import { LEAST_PLACES } from '../core/measure/photo.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { writeNumber } from '../core/units/number-style.ts';

const NO_EDGE: Readonly<Record<NoRimEdge['reason'], string>> = {
  tooFew: 'Click three places on the edge, well apart.',
  collinear: 'The clicks lie on a line. Click one on the other side of the wheel.',
  noEllipse: 'The clicks lie on no ring. Take them back and click the edge again.',
  tooSlanted:
    'The ring is too narrow: the camera looks along the wheel. Take a photo from further to the side.',
  tooSmall: 'The rim is too small on this picture. Take one that the bike fills.',
  noEdge: 'No edge was found near these clicks. Click nearer to it, or click a clearer edge of the rim.',
};

/** Why no edge of a rim was found, and what to do. */
export function noRimEdgeWords({ reason }: NoRimEdge): string {
  return NO_EDGE[reason];
}

/** Why a file was not taken as a photo. */
export type NoPicture = 'notAPicture' | 'tooLarge' | 'tooSmall';

/** So many pixels a browser still holds in its memory, and so many on a side show a bike. */
export const MOST_PIXELS = 120_000_000;
export const LEAST_SIDE_PX = 200;

/** Why a file was not taken, and what to do; `name` is that of the file. */
export function noPictureWords(reason: NoPicture, name: string): string {
  switch (reason) {
    case 'notAPicture':
      return `${name} was not opened: this browser cannot show it as a picture. Save it as JPEG and open that.`;
    case 'tooLarge':
      return `${name} was not opened: it has more than ${MOST_PIXELS / 1e6} million pixels. Save it smaller, without cutting anything off.`;
    case 'tooSmall':
      return `${name} was not opened: it is less than ${LEAST_SIDE_PX} pixels wide or high. Take a larger picture.`;
  }
}

/** What to do on a photo that shows `places` places, or what was found on it. */
export function photoStatus(
  outcome: PhotoOutcome | null,
  places: number,
  isFound: boolean,
  style: NumberStyle,
): string {
  if (places < LEAST_PLACES) {
    const left = LEAST_PLACES - places;
    return `${left === LEAST_PLACES ? 'Three places' : left === 2 ? 'Two more places' : 'One more place'} and the photo counts: a rim is one, a part is one.`;
  }
  if (outcome === null) return isFound ? 'The bike that was found does not lie on this photo.' : '';
  if (outcome.suspected !== null) {
    const { label } = MEASURE_PARTS[outcome.suspected];
    return `${label}: these clicks do not fit the others. Take them back and click again.`;
  }
  return `The camera stood ${writeNumber(outcome.away, 'length', style).text} away. The lines show the bike as found.`;
}

/** Why a picture is not in sight though its clicks are kept. */
export const PICTURE_ELSEWHERE =
  'The picture of this photo is not in this browser. Its clicks count all the same. Open the same picture to click on.';

/** Said of a picture that was cut or made smaller. */
export const PICTURE_RESIZED =
  'This picture was cut or made smaller after it was taken. Where it was cut, the answer is off: open the one from the camera.';

/** How to take the photo, before it is taken. */
export const BEFORE_SHOOTING: readonly string[] = [
  'Level floor, bike upright, wheels straight ahead.',
  'Stand 5 m or more away, in line with the middle of the bike, the camera at axle height.',
  'Zoom in until the bike fills the width. Take the whole picture, do not cut it.',
];

/** How often a place was clicked, such as "Swingarm pivot (2)". */
export function placeName(part: MeasurePartKey, clicks: number): string {
  return clicks === 0 ? MEASURE_PARTS[part].label : `${MEASURE_PARTS[part].label} (${clicks})`;
}
