/** How surely the points of a measured bike stand where they are drawn: an ellipse about each, enlarged where it is small. */
import type { PlaceSpread } from '../core/measure/spread/measured-places.ts';
import type { Bike } from '../core/parts/bike.ts';
import { POINTS } from '../core/sketch/points.ts';
import type { Stance } from '../core/standing/stance.ts';
import { spreadScaleWords } from '../words/measure/spread-words.ts';
import type { WantedLabel } from './shapes/label-placing.ts';
import { pen } from './shapes/outline.ts';
import type { PathShape } from './shapes/shape.ts';

interface PlacesDrawing {
  readonly shapes: readonly PathShape[];
  readonly label: Omit<WantedLabel, 'sizePx'>;
}

/** An ellipse of so many standard deviations holds a point of two normal numbers in 95 of 100: √(−2·ln 0.05). */
const HOLDS = Math.sqrt(-2 * Math.log(0.05));
/** How many times as large ellipses may be drawn. */
const SCALES = [50, 20, 10, 5, 2, 1] as const;
/** The middle one of them is drawn no longer than this from its point, mm of the bike. */
const LONGEST = 45;
/** A point known better than this counts as exact, mm. */
const EXACT = 0.005;
/** Of a quarter of a circle as a cubic curve: 4/3·(√2 − 1). */
const ROUND = (4 / 3) * (Math.SQRT2 - 1);
/** Below the rear wheel, mm. */
const BELOW = 45;

/** Half axes of an ellipse, mm, and how far the longer one is turned, radians counter-clockwise. */
interface Ellipse {
  readonly long: number;
  readonly short: number;
  readonly turn: number;
}

/** The ellipse that holds the point in 95 of 100, of a spread's two variances and what they share. */
function ellipseOf({ along, up, both }: Pick<PlaceSpread, 'along' | 'up' | 'both'>): Ellipse {
  const mean = (along + up) / 2;
  const off = Math.hypot((along - up) / 2, both);
  return {
    long: HOLDS * Math.sqrt(mean + off),
    short: HOLDS * Math.sqrt(Math.max(0, mean - off)),
    turn: Math.atan2(2 * both, along - up) / 2,
  };
}

/** The ellipses of the points that a bike has, all enlarged alike; null where none is large enough to be seen. */
export function placesDrawn(
  { bike, stance }: { readonly bike: Bike; readonly stance: Stance },
  places: readonly PlaceSpread[],
): PlacesDrawing | null {
  const drawn = places.flatMap((spread) => {
    const at = POINTS[spread.key].applies(bike) ? POINTS[spread.key].place(stance, bike) : null;
    const ellipse = ellipseOf(spread);
    return at === null || ellipse.long < EXACT ? [] : [{ at, ellipse }];
  });
  if (drawn.length === 0) return null;
  const lengths = drawn.map(({ ellipse }) => ellipse.long).sort((a, b) => a - b);
  const middle = lengths[Math.floor(lengths.length / 2)];
  const scale = SCALES.find((each) => each * middle <= LONGEST) ?? 1;
  const { rearAxle } = stance;
  return {
    shapes: drawn.map(({ at, ellipse: { long, short, turn } }) => {
      const [a, b] = [scale * long, scale * short];
      const [u, v] = [ROUND * a, ROUND * b];
      return pen({ ...at, turn })
        .move(a, 0)
        .curve(a, v, u, b, 0, b)
        .curve(-u, b, -a, v, -a, 0)
        .curve(-a, -v, -u, -b, 0, -b)
        .curve(u, -b, a, -v, a, 0)
        .close()
        .shape('spread');
    }),
    label: {
      role: 'spread',
      text: spreadScaleWords(scale),
      // The middle is the wheelbase's.
      at: { x: rearAxle.x, y: -BELOW },
      spot: 'below',
    },
  };
}
