/** What the fit makes of each photo: where the bike that was found lies on it, and which place on it is suspected. */
import type { Fit } from './fit-values.ts';
import { rotate, type Point } from '../plane/point.ts';
import { onPicture, onPlane, type Camera, type Pixel } from './photo/camera.ts';
import type { HeldBike } from './held/held-bike.ts';
import { holdBike, postureOf } from './held/hold-bike.ts';
import type { Suspicion } from './measured-bike.ts';
import { spread } from './measured-readings.ts';
import type { MeasurePartKey } from './held/measure-parts.ts';
import { cameraOf, photoRows } from './photo-rows.ts';
import type { MeasurePhoto, PhotoOutcome, SprocketKey } from './photo/photo.ts';

const SPROCKETS: readonly SprocketKey[] = ['frontSprocket', 'rearSprocket'];
/** Points of a tyre's outline. */
const ROUND = 72;

/** One outcome for each photo; null for one that the found bike does not lie on. `before` counts the rows before those of photos. */
export function photoOutcomes(
  fit: Fit,
  photos: readonly MeasurePhoto[],
  suspected: ReadonlyMap<number, Suspicion>,
  before: number,
): readonly (PhotoOutcome | null)[] {
  let at = before;
  return photos.map((photo, index) => {
    const from = at;
    at += photoRows(photo, index).length;
    const first = [...suspected].find(([row, { place }]) => row >= from && row < at && place === 1);
    const part = first === undefined ? null : (fit.rows[first[0]].row.parts[0] ?? null);
    return outcome(fit, photo, index, part);
  });
}

function outcome(
  fit: Fit,
  photo: MeasurePhoto,
  index: number,
  suspected: MeasurePartKey | null,
): PhotoOutcome | null {
  const held = holdBike(postureOf(fit.origin, fit.values), photo.state);
  if (held === null) return null;
  const camera = cameraOf(held, photo, index);
  const line = (points: readonly ({ readonly x: number; readonly y: number } | null)[]): readonly Pixel[] =>
    points.flatMap((point) => (point === null ? [] : (onPicture(camera, { ...point, z: 0 }) ?? [])));
  const [rear, front, pivot] = [held.place('rearAxle'), held.place('frontAxle'), held.place('pivot')];
  const tyre = (middle: typeof rear, radius: number): readonly Pixel[] =>
    middle === null
      ? []
      : line(
          Array.from({ length: ROUND + 1 }, (_, i) => {
            const turn = (2 * Math.PI * i) / ROUND;
            return { x: middle.x + radius * Math.cos(turn), y: middle.y + radius * Math.sin(turn) };
          }),
        );
  const depths = new Map(photo.clicks.map(({ part, depth }) => [part, depth]));
  const seen = [...depths].flatMap(([part, depth]) => {
    const place = held.place(part);
    const z = depth + held.unknown(`photo${index}:depth:${part}`);
    const pixel = place === null ? null : onPicture(camera, { ...place, z });
    return pixel === null ? [] : [{ part, ...pixel }];
  });
  const lines = [
    tyre(rear, held.freeRadius.rear),
    tyre(front, held.freeRadius.front),
    line([rear, pivot]),
    line([held.place('steeringHead'), held.place('axisFoot'), front]),
  ];
  return {
    seen,
    lines: lines.filter((each) => each.length > 1),
    corners: rear === null || front === null ? [] : cornersOn(camera, rear, front),
    away: camera.at.z,
    teeth: teethOn(fit, held, photo, index),
    suspected,
  };
}

/** The teeth of each sprocket whose pins were clicked, by how far out they lie. */
function teethOn(
  fit: Fit,
  { sprockets, unknown }: HeldBike,
  { rims }: MeasurePhoto,
  index: number,
): PhotoOutcome['teeth'] {
  const { frontTeeth, rearTeeth } = fit.origin.setup;
  return SPROCKETS.flatMap((part) => {
    const click = rims.find(({ wheel }) => wheel === part);
    const key = `photo${index}:radius:${part}`;
    const at = fit.touched.findIndex((place) => fit.origin.unknowns[place].key === key);
    if (sprockets === null || click === undefined || at < 0) return [];
    const [set, teeth] =
      part === 'frontSprocket' ? [sprockets.front, frontTeeth] : [sprockets.rear, rearTeeth];
    const pitch = 2 * set * Math.sin(Math.PI / teeth);
    const count = (radius: number): number => Math.PI / Math.asin(pitch / (2 * radius));
    const radius = click.radius + unknown(key);
    const sd = spread(
      fit,
      fit.touched.map((_, j) => (j === at ? 1 : 0)),
    );
    if (sd === null || !(radius - sd > pitch / 2)) return [];
    return [{ part, count: count(radius), u: (count(radius + sd) - count(radius - sd)) / 2 }];
  });
}

/** The corners of the picture on the bike's middle plane, by its axles; a bulge is left out, as it bends the edges. */
function cornersOn(camera: Camera, rear: Point, front: Point): readonly Point[] {
  const { widthPx, heightPx } = camera;
  const along = Math.atan2(front.y - rear.y, front.x - rear.x);
  const corners = [
    { x: 0, y: 0 },
    { x: widthPx, y: 0 },
    { x: widthPx, y: heightPx },
    { x: 0, y: heightPx },
  ].flatMap((pixel) => {
    const met = onPlane({ ...camera, bulge: 0 }, pixel, 0);
    return met === null ? [] : [rotate({ x: met.x - rear.x, y: met.y - rear.y }, -along)];
  });
  return corners.length === 4 ? corners : [];
}
