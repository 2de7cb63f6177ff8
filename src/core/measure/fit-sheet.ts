/** From a sheet and a starting bike to the fit of its rows, or the row that cannot be fitted. */
import type { Setup } from '../adjusters/setup.ts';
import { machine } from '../standing/machine.ts';
import { measureStateOf, type MeasureStateKey } from './held/all-measure-states.ts';
import { fitValues, type Fit, type FitRow } from './fit-values.ts';
import { FLOOR_SLOPE } from './floor-slope.ts';
import { buildBike } from './held/build-bike.ts';
import { holdBike, postureOf } from './held/hold-bike.ts';
import { turnLinks } from './held/turn-links.ts';
import { photoRows, photoUnknowns } from './photo-rows.ts';
import { LEAST_PLACES, placesOn, type MeasurePhoto } from './photo/photo.ts';
import { impossibleTriangle } from './impossible-triangle.ts';
import type { StartingBike } from './held/starting-bike.ts';
import { noMeasure, type NoMeasure } from './no-measure.ts';
import { readRows, type ReadRow } from './read-rows.ts';
import { rowFigures } from './row-figures.ts';
import { mirroredFits, type MirroredFit } from './second-answer.ts';
import type { MeasureSheet } from './sheet.ts';
import { originOf, withUnknowns, type KnownTravel, type Origin, type Unknown } from './held/unknowns.ts';

export interface FittedSheet {
  readonly ok: true;
  readonly fit: Fit;
  /** A different bike that fits as well; null where there is none. */
  readonly mirrored: MirroredFit | null;
  /** The rows of the sheet that were fitted, in the order of the fit. */
  readonly fitted: readonly ReadRow[];
}

/** A mirrored bike that fits better by this much in the sum of squares is taken for the bike: chance does that once in a hundred. */
const CLEARLY_BETTER = 6.63;
/** Sums of squares that differ by less fit alike: what is left is rounding. */
const AS_GOOD = 1e-6;

/** The least squares of the rows that are switched on; refused where a row cannot be or the starting bike does not stand. */
export function fitSheet(start: StartingBike, sheet: MeasureSheet): FittedSheet | NoMeasure {
  const read = readRows(sheet, start.bike);
  if (!read.ok) return read;
  const triangle = impossibleTriangle(read.rows);
  if (triangle !== null) {
    const [longest, ...others] = triangle;
    return noMeasure('triangleImpossible', longest, { withRows: others });
  }
  const twice = countedTwice(read.rows);
  if (twice !== null) return noMeasure('countedTwice', twice.row, { withRows: [twice.before] });
  const setup = withExactRows(start.setup, read.rows);
  const made = machine(start.bike, setup);
  if (!made.ok) return noMeasure('startCannotStand', null, { stand: made });
  const photos = sheet.photos ?? [];
  const readIn = readInState(read.rows, photos);
  const known = start.isMeasured === true ? knownTravel(read.rows, photos) : undefined;
  const alone = originOf(start.bike, setup, made, readIn, sheet.gaugeZeroed, known);
  if (alone === null) return noMeasure('startCannotStand', null);
  const origin = withPhotos(alone, photos);
  if (origin === null) return noMeasure('photoImpossible', null);
  const fitted = read.rows.filter(({ kind }) => kind.read !== 'exact');
  const values = origin.unknowns.map((unknown) => unknown.start);
  for (const { index, ...row } of fitted)
    if (rowFigures(origin, [row], values) === null) return noMeasure('partMissing', index);
  const rows: FitRow[] = [...fitted, ...photos.flatMap(photoRows)];
  if (!sheet.gaugeZeroed) rows.push(FLOOR_SLOPE);
  const first = fitValues(origin, rows, values);
  if (first === null) return noMeasure('noBike', null);
  const found = withLinksThatHang(first);
  const [mirrored = null] = mirroredFits(found);
  return mirrored !== null && mirrored.fit.chiSquare < found.chiSquare - CLEARLY_BETTER
    ? { ok: true, fit: mirrored.fit, mirrored: null, fitted }
    : { ok: true, fit: found, mirrored, fitted };
}

/**
 * The same fit where its bike stands. Else the fit again from links that are turned with the arm: those of the starting
 * bike may end their way before the arm hangs where it was measured, and no row says that they are not turned.
 */
function withLinksThatHang(fit: Fit): Fit {
  const { origin, rows, values, chiSquare } = fit;
  if (buildBike(postureOf(origin, values)) !== null) return fit;
  const turned = turnLinks(origin, values);
  const again = turned === null ? null : fitValues(origin, rows, turned);
  const stands = again !== null && buildBike(postureOf(origin, again.values)) !== null;
  return stands && again.chiSquare <= chiSquare + AS_GOOD ? again : fit;
}

/** Which ends hang in some state that was measured, so that the fit finds how far they are pressed in the others. */
function knownTravel(rows: readonly ReadRow[], photos: readonly MeasurePhoto[]): KnownTravel {
  const states = [...rows.map(({ row }) => row), ...photos].map(({ state }) => measureStateOf(state));
  return {
    front: states.some(({ fork }) => fork === 'hanging'),
    rear: states.some(({ arm }) => arm === 'hanging'),
  };
}

/** The unknowns with those of the photos; null where a photo's numbers cannot be, or it has too few places. */
function withPhotos(origin: Origin, photos: readonly MeasurePhoto[]): Origin | null {
  const posture = postureOf(
    origin,
    origin.unknowns.map(({ start }) => start),
  );
  const more: Unknown[] = [];
  for (const [index, photo] of photos.entries()) {
    const held = isPossible(photo) ? holdBike(posture, photo.state) : null;
    const found = held === null ? null : photoUnknowns(photo, index, held);
    if (found === null) return null;
    more.push(...found);
  }
  return withUnknowns(origin, more);
}

function isPossible(photo: MeasurePhoto): boolean {
  const { widthPx, heightPx, focalPx, focalSd, bulgeSd, clicks, rims } = photo;
  const sds = [focalSd, bulgeSd, ...[...clicks, ...rims].map(({ depthSd }) => depthSd)];
  const sizes = [widthPx, heightPx, focalPx, ...[...clicks, ...rims].map(({ sdPx }) => sdPx)];
  return placesOn(photo) >= LEAST_PLACES && sds.every((sd) => sd >= 0) && sizes.every((size) => size > 0);
}

/** The state that readings are of: on its wheels where that is measured, else with the rider, else as in the papers. */
function readInState(rows: readonly ReadRow[], photos: readonly MeasurePhoto[]): MeasureStateKey {
  const states = [
    ...rows.filter(({ kind }) => kind.read === 'number' && !kind.anyState).map(({ row }) => row.state),
    ...photos.map(({ state }) => state),
  ];
  const settings = states
    .filter((state) => state !== 'bothHanging')
    .map((state) => measureStateOf(state).arm);
  if (settings.includes('loaded')) return 'onWheels';
  if (settings.includes('rider')) return 'riderOn';
  return settings.includes('makers') ? 'makersPosture' : 'onWheels';
}

/** A row that counts what a row before it counts to another number; null where none does. */
function countedTwice(rows: readonly ReadRow[]): { readonly row: number; readonly before: number } | null {
  const exact = rows.filter(({ kind }) => kind.read === 'exact');
  for (const [at, { row, measured, index }] of exact.entries()) {
    const before = exact
      .slice(0, at)
      .find((each) => each.row.parts[0] === row.parts[0] && each.measured !== measured);
    if (before !== undefined) return { row: index, before: before.index };
  }
  return null;
}

/** The setup with the counts that the rows name. */
function withExactRows(setup: Setup, rows: readonly ReadRow[]): Setup {
  let counted = setup;
  for (const { kind, row, measured } of rows) {
    if (kind.read !== 'exact') continue;
    counted =
      row.parts[0] === 'frontSprocket'
        ? { ...counted, frontTeeth: measured }
        : { ...counted, rearTeeth: measured };
  }
  return counted;
}
