/** Looks for a second, different bike that fits as well: a place mirrored in the line of those it was measured from. */
import { chanceOfSquares } from '../numeric/chi-square.ts';
import { distance, type Point } from '../plane/point.ts';
import { buildBike } from './held/build-bike.ts';
import { candidateRows } from './candidate-rows.ts';
import { fitValues, type Fit } from './fit-values.ts';
import { holdBike, postureOf } from './held/hold-bike.ts';
import type { SecondAnswer } from './measured-bike.ts';
import { measuredReadings } from './measured-readings.ts';
import { MEASURE_PARTS, type MeasurePartKey } from './held/measure-parts.ts';
import { rowFigures } from './row-figures.ts';

/** A fit may be this much worse and fits as well: chance makes one square exceed it once in a hundred. */
const AS_WELL = 6.63;
/** A fit has to be this much better to be the first of two. */
const BETTER = 1e-6;
/** Bikes nearer than this in every place are one bike, mm. */
const SAME_PLACE = 1;
/** The least way from a line for a mirrored place to be another place, mm. */
const OFF_LINE = 1;

/** The same rows fitted from a mirrored start. */
export interface MirroredFit {
  readonly fit: Fit;
  readonly mirrored: MeasurePartKey;
}

/** Fits from mirrored starts that come to a different bike as good as this one, the best first. */
export function mirroredFits(fit: Fit): readonly MirroredFit[] {
  const toSpare = fit.rows.length - fit.rank;
  const found: MirroredFit[] = [];
  for (const [part, start] of mirroredStarts(fit)) {
    const other = fitValues(fit.origin, fit.rows, start);
    if (other === null || !(other.chiSquare <= fit.chiSquare + AS_WELL)) continue;
    const fits = toSpare === 0 || chanceOfSquares(other.chiSquare, toSpare) >= 0.01;
    const apart = Math.max(...other.values.map((value, i) => Math.abs(value - fit.values[i])));
    if ((fits || other.chiSquare < fit.chiSquare - BETTER) && apart > SAME_PLACE)
      found.push({ fit: other, mirrored: part });
  }
  return found.sort((a, b) => a.fit.chiSquare - b.fit.chiSquare);
}

/** Values with one place mirrored in the line of the first two places it was measured from, for each that has nothing but distances. */
function mirroredStarts(fit: Fit): readonly (readonly [MeasurePartKey, number[]])[] {
  const { origin, rows, values } = fit;
  const held = holdBike(postureOf(origin, values), origin.readIn);
  if (held === null) return [];
  const found: (readonly [MeasurePartKey, number[]])[] = [];
  const touched = new Set(fit.touched.map((place) => origin.unknowns[place].key));
  for (const part of Object.keys(MEASURE_PARTS) as MeasurePartKey[]) {
    const x = origin.places.get(`${part}X`);
    const y = origin.places.get(`${part}Y`);
    if (x === undefined || y === undefined || !touched.has(`${part}X`)) continue;
    const own = rows.filter(({ row }) => row.parts.includes(part));
    if (own.length < 2 || own.some(({ kind }) => !kind.slant)) continue;
    const partners = new Set(own.flatMap(({ row }) => row.parts.filter((each) => each !== part)));
    const [first, second] = [...partners].map((each) => held.place(each));
    const at = held.place(part);
    if (first === undefined || second === undefined || first === null || second === null || at === null)
      continue;
    const by = mirrorStep(at, first, second);
    if (by === null) continue;
    const start = [...values];
    start[x] += by.x;
    start[y] += by.y;
    // All that is counted from the pivot stays where it is.
    if (part === 'pivot') keepOthers(fit, start, by);
    found.push([part, start]);
  }
  return found;
}

function keepOthers({ origin }: Fit, start: number[], by: Point): void {
  for (const key of Object.keys(MEASURE_PARTS)) {
    if (key === 'pivot') continue;
    const x = origin.places.get(`${key}X`);
    const y = origin.places.get(`${key}Y`);
    if (x !== undefined) start[x] -= by.x;
    if (y !== undefined) start[y] -= by.y;
  }
}

/** From a place to its mirror image in the line of two others; null where it lies on that line. */
function mirrorStep(at: Point, first: Point, second: Point): Point | null {
  const length = distance(first, second);
  if (!(length > OFF_LINE)) return null;
  const x = (second.x - first.x) / length;
  const y = (second.y - first.y) / length;
  const off = (at.x - first.x) * -y + (at.y - first.y) * x;
  return Math.abs(off) > OFF_LINE ? { x: 2 * off * y, y: -2 * off * x } : null;
}

/** The second bike with its readings, and the row that tells the two apart best; null where it does not stand. */
export function secondAnswer(first: Fit, { fit, mirrored }: MirroredFit): SecondAnswer | null {
  const built = buildBike(postureOf(fit.origin, fit.values));
  const readings = measuredReadings(fit);
  if (built === null || readings === null) return null;
  let decide: SecondAnswer['decide'] = null;
  let most = 0;
  for (const candidate of candidateRows(first)) {
    const here = rowFigures(first.origin, [candidate], first.values)?.[0];
    const there = rowFigures(fit.origin, [candidate], fit.values)?.[0];
    if (here === undefined || there === undefined) continue;
    const apart = Math.abs(here - there) / candidate.kind.sd;
    if (!(apart > most)) continue;
    most = apart;
    const { kind, row } = candidate;
    const { parts, state, otherState } = row;
    decide = { kind: kind.key, parts, state, otherState, here, there, u: null };
  }
  return { ...built, readings, mirrored: MEASURE_PARTS[mirrored].label, decide };
}
