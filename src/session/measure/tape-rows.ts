/** The rows that are kept with a bike as rows in known keys, and new ones. */
import { MEASURE_KINDS, measureKindOf, type MeasureKindKey } from '../../core/measure/kinds/all-kinds.ts';
import { MEASURE_STATES, type MeasureStateKey } from '../../core/measure/held/all-measure-states.ts';
import {
  MEASURE_PARTS,
  MEASURE_PART_KEYS,
  type MeasurePartKey,
} from '../../core/measure/held/measure-parts.ts';
import type { MeasurePhoto } from '../../core/measure/photo/photo.ts';
import type { MeasureRow } from '../../core/measure/sheet.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { KeptRow } from '../../document/measure.ts';
import type { KeptPhoto } from '../../document/measure-photo.ts';

/** The row in known keys; null where one of them belongs to another program. */
export function knownRow(row: KeptRow): MeasureRow | null {
  const kind = MEASURE_KINDS.find(({ key }) => key === row.kind);
  const state = stateKey(row.state);
  const otherState = row.otherState === null ? null : stateKey(row.otherState);
  const parts = row.parts.flatMap((key) => MEASURE_PART_KEYS.find((each) => each === key) ?? []);
  if (kind === undefined || state === undefined || otherState === undefined) return null;
  return parts.length === row.parts.length ? { ...row, kind: kind.key, parts, state, otherState } : null;
}

function stateKey(key: string): MeasureStateKey | undefined {
  return MEASURE_STATES.find((each) => each.key === key)?.key;
}

/** The photo in known keys, without clicks on parts that belong to another program; null in a state of another program. */
export function knownPhoto({ state: given, clicks, keptAt: _, ...rest }: KeptPhoto): MeasurePhoto | null {
  const state = stateKey(given);
  if (state === undefined) return null;
  const known = clicks.flatMap((click) => {
    const part = MEASURE_PART_KEYS.find((each) => each === click.part);
    return part === undefined ? [] : [{ ...click, part }];
  });
  return { ...rest, state, clicks: known };
}

/** An empty row of a kind, with the first parts that this bike has for it. */
export function newRow(kind: MeasureKindKey, bike: Bike): KeptRow {
  const { state, betweenStates } = measureKindOf(kind);
  const other = MEASURE_STATES.find(({ key }) => key !== state)?.key ?? null;
  return {
    kind,
    parts: firstParts(kind, bike),
    state,
    otherState: betweenStates ? other : null,
    figure: '',
    unit: '',
    sd: null,
    outOfPlane: 0,
    fromOther: false,
    off: false,
    note: '',
  };
}

/** The parts that a bike has for one place of a kind. */
export function partsFor(kind: MeasureKindKey, place: number, bike: Bike): readonly MeasurePartKey[] {
  const shapes = measureKindOf(kind).takes[place] ?? [];
  return MEASURE_PART_KEYS.filter((key) => {
    const { shape, applies } = MEASURE_PARTS[key];
    return shapes.includes(shape) && applies(bike);
  });
}

function firstParts(kind: MeasureKindKey, bike: Bike): readonly MeasurePartKey[] {
  return measureKindOf(kind).takes.reduce<readonly MeasurePartKey[]>((taken, _, place) => {
    const free = partsFor(kind, place, bike).find((key) => !taken.includes(key));
    return free === undefined ? taken : [...taken, free];
  }, []);
}
