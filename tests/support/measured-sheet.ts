/** Sheets of measurements on bikes whose true figures are known. */
import { measureKindOf, type MeasureKindKey } from '../../src/core/measure/kinds/all-kinds.ts';
import type { MeasureStateKey } from '../../src/core/measure/held/all-measure-states.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import type { StartingBike } from '../../src/core/measure/held/starting-bike.ts';
import { rowFigures } from '../../src/core/measure/row-figures.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { originOf, type Origin } from '../../src/core/measure/held/unknowns.ts';
import { machine } from '../../src/core/standing/machine.ts';

/** A row without its figure. */
export function asked(
  kind: MeasureKindKey,
  parts: readonly MeasurePartKey[] = [],
  state: MeasureStateKey = 'onWheels',
): MeasureRow {
  return {
    kind,
    parts,
    state,
    otherState: null,
    figure: '',
    unit: '',
    sd: null,
    outOfPlane: 0,
    fromOther: false,
    off: false,
  };
}

/** A chassis in two states: 25 rows. */
export const CHASSIS: readonly MeasureRow[] = [
  asked('circumference', ['frontWheel']),
  asked('circumference', ['rearWheel']),
  asked('axleHeight', ['frontWheel']),
  asked('axleHeight', ['rearWheel']),
  asked('horizontal', ['rearAxle', 'frontAxle']),
  asked('distance', ['rearAxle', 'pivot']),
  asked('height', ['pivot']),
  asked('angle', ['swingarm']),
  asked('angle', ['forkLeg']),
  asked('distance', ['pivot', 'countershaft']),
  asked('height', ['countershaft']),
  asked('distance', ['rearAxle', 'countershaft']),
  asked('height', ['steeringHead']),
  asked('distance', ['steeringHead', 'frontAxle']),
  asked('distance', ['pivot', 'steeringHead']),
  asked('distance', ['rearAxle', 'steeringHead']),
  asked('height', ['seat']),
  asked('distance', ['pivot', 'seat']),
  asked('distance', ['pivot', 'frontAxle']),
  asked('distance', ['rearAxle', 'seat'], 'bothHanging'),
  asked('axleHeight', ['rearWheel'], 'bothHanging'),
  asked('axleHeight', ['frontWheel'], 'bothHanging'),
  asked('height', ['pivot'], 'bothHanging'),
  asked('angle', ['swingarm'], 'bothHanging'),
  asked('angle', ['forkLeg'], 'bothHanging'),
];

/** Bolts of a rocker on the swingarm, the shock in two states, and the scales: 20 rows more. */
export const LINKS_AND_WEIGHTS: readonly MeasureRow[] = [
  asked('distance', ['pivot', 'rockerPivot']),
  asked('height', ['rockerPivot']),
  asked('distance', ['rearAxle', 'rockerPivot']),
  asked('distance', ['rockerPivot', 'rodOnRocker']),
  asked('height', ['rodOnRocker']),
  asked('horizontal', ['rearAxle', 'rodOnRocker']),
  asked('distance', ['rockerPivot', 'shockOnRocker']),
  asked('height', ['shockOnRocker']),
  asked('horizontal', ['rearAxle', 'shockOnRocker']),
  asked('distance', ['pivot', 'rodOnFrame']),
  asked('height', ['rodOnFrame']),
  asked('distance', ['rodOnRocker', 'rodOnFrame']),
  asked('distance', ['pivot', 'shockFarEnd']),
  asked('height', ['shockFarEnd']),
  asked('eyeToEye'),
  asked('eyeToEye', [], 'bothHanging'),
  asked('weight', ['frontWheel']),
  asked('weight', ['rearWheel']),
  asked('axleHeight', ['rearWheel'], 'rearRaised'),
  asked('weight', ['frontWheel'], 'rearRaised'),
];

/** What a bike stands on: its unknowns in the posture on its wheels. */
export function originOn({ bike, setup }: StartingBike, gaugeZeroed = true): Origin {
  const made = machine(bike, setup);
  if (!made.ok) throw new Error(made.reason);
  const origin = originOf(bike, setup, made, 'onWheels', gaugeZeroed);
  if (origin === null) throw new Error('the bike does not stand');
  return origin;
}

/** The rows with the figures of these values, each off by `error` of its standard deviations. */
export function typedRows(
  origin: Origin,
  rows: readonly MeasureRow[],
  values: readonly number[],
  error: (row: number) => number = () => 0,
): readonly MeasureRow[] {
  const figures = rowFigures(
    origin,
    rows.map((row) => ({ kind: measureKindOf(row.kind), row })),
    values,
  );
  if (figures === null) throw new Error('the bike cannot be held so');
  return rows.map((row, i) => ({
    ...row,
    figure: (figures[i] + error(i) * (row.sd ?? measureKindOf(row.kind).sd)).toFixed(10),
  }));
}

/** A true bike: every value of the start moved by up to so much. */
export function trueValues(origin: Origin, seed: number, by: number): number[] {
  const next = evenNumbers(seed);
  return origin.unknowns.map(({ start }) => start + by * (2 * next() - 1));
}

/** Even numbers from 0 to 1 from a seed (mulberry32). */
export function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export { normalNumbers } from '../../src/core/numeric/normal-numbers.ts';
