/** What a set of values makes of every row, and how that changes with each unknown. */
import type { MeasureStateKey } from './held/all-measure-states.ts';
import type { HeldBike } from './held/held-bike.ts';
import { holdBike, postureOf } from './held/hold-bike.ts';
import type { MeasureKind } from './held/measure-kind.ts';
import type { MeasureRow } from './sheet.ts';
import { isInState, isOfPhoto, type Origin } from './held/unknowns.ts';

/** What is needed of a row to say what the bike makes of it. */
export interface AskedRow {
  readonly kind: MeasureKind;
  readonly row: Pick<MeasureRow, 'parts' | 'state' | 'otherState' | 'outOfPlane'>;
  /** Whether an unknown of a photo can change the figure, by its key; left out where none can. */
  readonly movedByPhoto?: (key: string) => boolean;
}

/** Figures of the rows in their file units; null where some row has none with these values. */
export function rowFigures(
  origin: Origin,
  rows: readonly AskedRow[],
  values: readonly number[],
): number[] | null {
  const posture = postureOf(origin, values);
  const states = new Map<MeasureStateKey, HeldBike | null>();
  const held = (state: MeasureStateKey): HeldBike | null => {
    let found = states.get(state);
    if (found === undefined) {
      found = holdBike(posture, state);
      states.set(state, found);
    }
    return found;
  };
  const found: number[] = [];
  for (const { kind, row } of rows) {
    const figure = figureIn(kind, row, held(row.state));
    const other = row.otherState === null ? 0 : figureIn(kind, row, held(row.otherState));
    if (figure === null || other === null || !Number.isFinite(figure - other)) return null;
    found.push(figure - other);
  }
  return found;
}

function figureIn(
  kind: MeasureKind,
  { parts, outOfPlane }: AskedRow['row'],
  held: HeldBike | null,
): number | null {
  const figure = held === null ? null : kind.figure(held, parts);
  return figure === null || !kind.slant ? figure : Math.hypot(figure, outOfPlane);
}

/** Step of the differences: rounding and the curve of the figures both stay below 1e-11 with four places, mm or mrad. */
const STEP = 0.05;

/** A step for the way down, where a slope good to 1e-7 is enough: two places do. */
const ROUGH_STEP = 0.01;

/** Change of each row's figure per unit of the unknown at `place`, roughly; null where the bike cannot be held there. */
export function roughSlopes(
  origin: Origin,
  rows: readonly AskedRow[],
  values: readonly number[],
  place: number,
): number[] | null {
  return amongMoved(origin, rows, place, (some) => {
    const ahead = rowFigures(origin, some, moved(values, place, ROUGH_STEP));
    const back = rowFigures(origin, some, moved(values, place, -ROUGH_STEP));
    return ahead === null || back === null
      ? null
      : some.map((_, i) => (ahead[i] - back[i]) / (2 * ROUGH_STEP));
  });
}

/**
 * Change of each row's figure per unit of the unknown at `place`, by differences over four places; null where the bike
 * cannot be held there.
 */
export function rowSlopes(
  origin: Origin,
  rows: readonly AskedRow[],
  values: readonly number[],
  place: number,
): number[] | null {
  return amongMoved(origin, rows, place, (some) => {
    const at = (steps: number): number[] | null =>
      rowFigures(origin, some, moved(values, place, steps * STEP));
    const ahead = at(1);
    const back = at(-1);
    const far = at(2);
    const farBack = at(-2);
    if (ahead === null || back === null || far === null || farBack === null) return null;
    return some.map((_, i) => (8 * (ahead[i] - back[i]) - (far[i] - farBack[i])) / (12 * STEP));
  });
}

/** Slopes of those rows that the unknown can change, and 0 for the rest: what is of one photo or one state changes few. */
function amongMoved(
  { unknowns }: Origin,
  rows: readonly AskedRow[],
  place: number,
  slopesOf: (some: readonly AskedRow[]) => number[] | null,
): number[] | null {
  const { key } = unknowns[place];
  if (!key.includes(':')) return slopesOf(rows);
  const moves = rows.map((each) => canMove(key, each));
  const slopes = slopesOf(rows.filter((_, i) => moves[i]));
  if (slopes === null) return null;
  let next = 0;
  return moves.map((isMoved) => (isMoved ? slopes[next++] : 0));
}

function canMove(key: string, { row: { state, otherState }, movedByPhoto }: AskedRow): boolean {
  if (isOfPhoto(key)) return movedByPhoto?.(key) ?? false;
  return isInState(key, state) || (otherState !== null && isInState(key, otherState));
}

/** The values with one of them moved. */
export function moved(values: readonly number[], place: number, by: number): number[] {
  const next = [...values];
  next[place] += by;
  return next;
}
