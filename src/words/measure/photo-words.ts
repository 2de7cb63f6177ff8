/** A photo in words: what its clicks make of the bike, what is in doubt, and why something was not taken. */
import type { Setup } from '../../core/adjusters/setup.ts';
import type { NoRimEdge } from '../../core/measure/photo/rim-edge.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../../core/measure/held/measure-parts.ts';
import { LEAST_PLACES, type PhotoOutcome, type SprocketKey } from '../../core/measure/photo/photo.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { writeNumber } from '../../core/units/number-style.ts';
import { COVERAGE, writePlusMinus } from '../plus-minus.ts';

/** With a ± beyond this the teeth are not counted. */
const MOST_TEETH_ERROR = 4;

const NO_EDGE: Readonly<Record<NoRimEdge['reason'], string>> = {
  tooFew: 'Click three places on the edge, well apart.',
  collinear: 'The clicks lie on a line. Click one on the other side of the wheel.',
  noEllipse: 'These clicks do not make a ring. Take them back and click the edge again.',
  tooSlanted:
    'The ring is too narrow: the camera looks along the wheel. Take the photo square to the side of the bike.',
  tooSmall: 'The rim is too small on this picture. Take one that the bike fills.',
  noEdge: 'No edge was found near these clicks. Click closer to the rim’s edge, or choose a clearer edge.',
};

/** Why no edge of a rim was found, and what to do. */
export function noRimEdgeWords({ reason }: NoRimEdge): string {
  return NO_EDGE[reason];
}

/** Why a file was not taken as a photo. */
export type NoPicture = 'notAPicture' | 'notRead' | 'tooLarge' | 'tooSmall';

/** So many pixels a browser still holds in its memory, and so many on a side show a bike. */
export const MOST_PIXELS = 120_000_000;
export const LEAST_SIDE_PX = 200;

/** Why a file was not taken, and what to do; `name` is that of the file. */
export function noPictureWords(reason: NoPicture, name: string): string {
  switch (reason) {
    case 'notAPicture':
      return `${name} was not opened: this browser cannot show it as a picture. Save it as JPEG and open that.`;
    case 'notRead':
      return `${name} was not opened: this browser may not read it, or it has been moved. Open it again.`;
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
    return `${left === LEAST_PLACES ? 'Three places' : left === 2 ? 'Two more places' : 'One more place'} to click before the photo counts. A rim is one place, a part is one.`;
  }
  if (outcome === null) return isFound ? 'The bike that was found does not fit this photo.' : '';
  if (outcome.suspected !== null) {
    const { label } = MEASURE_PARTS[outcome.suspected];
    return `${label}: these clicks do not fit the others. Take them back and click again.`;
  }
  return `The camera stood ${writeNumber(outcome.away, 'length', style, { extraDigits: -1 }).text} away. The lines show the bike as found.`;
}

/** Why a picture is not in sight though its clicks are kept. */
export const PICTURE_ELSEWHERE =
  'This browser does not have the picture. Its clicks still count. Open the same picture to add more.';

/** What is odd about a picture, and what to do. */
const ODDITIES = {
  resized:
    'This picture was cropped or made smaller. If it was cropped, the figures are off: open the original from the camera.',
  animated: 'This picture moves: only its first image counts. If the bike is not on it, open a still photo.',
  clear:
    'Parts of this picture are see-through and show white. If the bike is cut off there, open the original from the camera.',
} as const;

/** What is odd about a picture, in sentences. */
export function oddityWords(odd: Readonly<Record<keyof typeof ODDITIES, boolean>>): readonly string[] {
  return (['resized', 'animated', 'clear'] as const).filter((key) => odd[key]).map((key) => ODDITIES[key]);
}

/** How to take the photo, before it is taken. */
export const BEFORE_SHOOTING: readonly string[] = [
  'Level floor, wheels straight ahead, bike upright: held by a helper or on a stand that cannot slip.',
  'Stand 5 m or more away, in line with the middle of the bike, the camera at axle height.',
  'Zoom in until the bike fills the width. Do not crop the picture.',
];

/** What to click on a sprocket. */
export const PINS_HELP =
  'Click the chain’s pins where the chain lies on the sprocket: five or more, well apart. They count its teeth and show where its middle is.';

/** What the pins on a sprocket say of its teeth; null while they do not count. */
export function teethWords(
  outcome: PhotoOutcome | null,
  part: SprocketKey,
  { frontTeeth, rearTeeth }: Pick<Setup, 'frontTeeth' | 'rearTeeth'>,
  style: NumberStyle,
): string | null {
  const found = outcome?.teeth.find((each) => each.part === part);
  if (found === undefined) return null;
  const error = COVERAGE * found.u;
  if (error > MOST_TEETH_ERROR) return 'These pins lie too close together to count the teeth by. Click more.';
  const set = part === 'frontSprocket' ? frontTeeth : rearTeeth;
  const counted = `The pins make ${writePlusMinus(found.count, found.u, 'count', style)} teeth.`;
  return Math.abs(found.count - set) <= Math.max(0.5, error)
    ? `${counted} ${set} are set: that fits.`
    : `${counted} ${set} are set: count them on the bike.`;
}

/** How often a place was clicked, such as "Swingarm pivot (2)". */
export function placeName(part: MeasurePartKey, clicks: number, what: string): string {
  const name = `${MEASURE_PARTS[part].label}${what}`;
  return clicks === 0 ? name : `${name} (${clicks})`;
}
