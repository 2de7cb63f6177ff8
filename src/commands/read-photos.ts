/** Reads the photos of a sheet of measurements: how each was taken, and what was clicked on it. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { MEASURE_STATES } from '../core/measure/held/all-measure-states.ts';
import { MEASURE_PART_KEYS } from '../core/measure/held/measure-parts.ts';
import { RING_KEYS, type MeasurePhoto, type PartClick, type RimClick } from '../core/measure/photo/photo.ts';
import { nearestName } from './nearest-name.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Standard deviation of a click that names none, pixels. */
export const CLICK_SD_PX = 1;
/** Standard deviation of a focal length that names none, as a part of it: the printed figure of a telephone. */
const FOCAL_SD_PART = 0.02;
/** Standard deviation of a lens's bulge at its corners that names none, per cent: 0 ± 0.5 % with 95 %. */
export const BULGE_SD = 0.25;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The photos, or one line that names the first that cannot be read and why. */
export function readPhotos(given: unknown): Result<readonly MeasurePhoto[], string> {
  if (!Array.isArray(given)) return fail('"photos" has to be a list.');
  const photos: MeasurePhoto[] = [];
  for (const [index, each] of (given as readonly unknown[]).entries()) {
    const photo = isFields(each) ? readPhoto(each) : fail('it has to be an object.');
    if (!photo.ok) return fail(`Photo ${index + 1}: ${photo.reason}`);
    photos.push(photo.value);
  }
  return succeed(photos);
}

function readPhoto(photo: Fields): Result<MeasurePhoto, string> {
  const { state: stateGiven = 'onWheels', side = 'right', clicks = [], rims = [] } = photo;
  const state = MEASURE_STATES.find(({ key }) => key === stateGiven);
  if (state === undefined)
    return fail(
      nearest(
        'state',
        stateGiven,
        MEASURE_STATES.map(({ key }) => key),
      ),
    );
  if (side !== 'right' && side !== 'left') return fail('"side" has to be "right" or "left".');
  const numbers = readNumbers(photo, {
    widthPx: null,
    heightPx: null,
    focalPx: null,
    focalSd: -1,
    bulgeSd: BULGE_SD,
  });
  if (!numbers.ok) return numbers;
  if (!Array.isArray(clicks) || !Array.isArray(rims)) return fail('"clicks" and "rims" have to be lists.');
  const parts: PartClick[] = [];
  for (const each of clicks as readonly unknown[]) {
    const click = isFields(each) ? readNumbers(each, CLICK) : fail('a click has to be an object.');
    if (!click.ok) return click;
    const named = isFields(each) ? each.part : undefined;
    const part = MEASURE_PART_KEYS.find((key) => key === named);
    if (part === undefined) return fail(nearest('part', named, MEASURE_PART_KEYS));
    parts.push({ part, ...click.value });
  }
  const edges: RimClick[] = [];
  for (const each of rims as readonly unknown[]) {
    const click = isFields(each) ? readNumbers(each, RIM) : fail('a point on a rim has to be an object.');
    if (!click.ok) return click;
    const named = isFields(each) ? each.wheel : undefined;
    const wheel = RING_KEYS.find((key) => key === named);
    if (wheel === undefined) return fail(nearest('wheel', named, RING_KEYS));
    edges.push({ wheel, ...click.value });
  }
  const { focalPx, focalSd, ...rest } = numbers.value;
  return succeed({
    state: state.key,
    side,
    ...rest,
    focalPx,
    focalSd: focalSd < 0 ? focalPx * FOCAL_SD_PART : focalSd,
    clicks: parts,
    rims: edges,
  });
}

const CLICK = { xPx: null, yPx: null, sdPx: CLICK_SD_PX, depth: 0, depthSd: 0 } as const;
const RIM = { ...CLICK, radius: null, radiusSd: 0 } as const;

/** Numbers by name; null stands for one that has to be there, any other for what it is when left out. */
function readNumbers<Name extends string>(
  from: Fields,
  names: Readonly<Record<Name, number | null>>,
): Result<Readonly<Record<Name, number>>, string> {
  const found: Partial<Record<Name, number>> = {};
  for (const name of Object.keys(names) as Name[]) {
    const value = from[name] ?? names[name];
    if (typeof value !== 'number' || !Number.isFinite(value)) return fail(`"${name}" has to be a number.`);
    found[name] = value;
  }
  return succeed(found as Record<Name, number>);
}

function nearest(what: string, given: unknown, names: readonly string[]): string {
  const typed = typeof given === 'string' ? given : JSON.stringify(given ?? null);
  return `there is no ${what} “${typed}”; the nearest is “${nearestName(typed, names)}”.`;
}
