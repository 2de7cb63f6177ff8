/** One line that says why a sheet of measurements gives no bike, and the list of kinds, parts and states. */
import { MEASURE_KINDS } from '../core/measure/kinds/all-kinds.ts';
import { MEASURE_STATES } from '../core/measure/held/all-measure-states.ts';
import { TOUCH_PARTS } from '../core/parts/touch-parts.ts';
import { MEASURE_PARTS, MEASURE_PART_KEYS } from '../core/measure/held/measure-parts.ts';
import type { LikelySlip, Suspicion } from '../core/measure/measured-bike.ts';
import type { NoMeasure, NoMeasureReason } from '../core/measure/no-measure.ts';
import { unitWord } from '../core/units/all-quantities.ts';

/** Columns of even width; the last is left as it is. */
function table(rows: readonly (readonly string[])[]): string {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  return rows
    .map(
      (row) =>
        `  ${row.map((cell, i) => (i === row.length - 1 ? cell : cell.padEnd(widths[i] + 2))).join('')}`,
    )
    .join('\n');
}

/** Kinds of measurement with their units and standard deviations, then the parts and the states by name. */
export function kindsText(): string {
  const kinds = MEASURE_KINDS.map(({ key, label, quantity, sd, state, takes, read }) => [
    key,
    unitWord(quantity),
    read === 'exact' ? 'exact' : String(Number(sd.toPrecision(3))),
    takes.map((shapes) => shapes.join('/')).join(' + ') || 'no part',
    state,
    label,
  ]);
  const parts = MEASURE_PART_KEYS.map((key) => [key, MEASURE_PARTS[key].shape, MEASURE_PARTS[key].label]);
  const states = MEASURE_STATES.map(({ key, label }) => [key, label]);
  return `Kinds of measurement, with unit, standard deviation (1 σ) and the state that is taken when a row names none:
${table([['KEY', 'UNIT', 'SD', 'PARTS', 'STATE', 'NAME'], ...kinds])}

Parts:
${table([['KEY', 'SHAPE', 'NAME'], ...parts])}

States:
${table([['KEY', 'NAME'], ...states])}
`;
}

const LIKELY: Readonly<Record<LikelySlip, string>> = {
  inchForMm: 'inches read as mm',
  mmForInch: 'mm read as inches',
  cmForMm: 'cm read as mm',
  mmForCm: 'mm read as cm',
  poundForKg: 'pounds read as kg',
  kgForPound: 'kg read as pounds',
  otherReference: 'read from the other reference',
};

function likelyWords({ expected, likely }: Suspicion): string {
  const looks = likely === null ? '' : `; it looks like ${LIKELY[likely]}`;
  return `; the others make it ${Number(expected.toPrecision(5))}${looks}`;
}

const WORDS: Readonly<Record<NoMeasureReason, (no: NoMeasure) => string>> = {
  figureUnreadable: () => 'the figure cannot be read in the unit of this kind',
  figureImpossible: ({ found, limit }) =>
    `no motorcycle has ${found}${limit === undefined ? '' : `; the limit is ${limit}`}`,
  partsWrong: () => 'these are not the parts that this kind takes; --kinds lists them',
  partMissing: ({ part }) =>
    part !== undefined && part in TOUCH_PARTS
      ? `the starting bike does not say how far out “${MEASURE_PARTS[part].label}” stands: give its halfWidth`
      : `the starting bike has no ${part === undefined ? 'such part' : `“${MEASURE_PARTS[part].label}”`}`,
  statesWrong: () => 'a change between two states names two different states, and every other kind names one',
  notWeighedSo: () => 'scales are read on its wheels or raised for weighing',
  sdWrong: () => 'the standard deviation and the distance out of plane have to be numbers above zero',
  otherReferenceWrong: () => 'this kind is read from one reference only',
  triangleImpossible: ({ withRows = [] }) =>
    `with rows ${withRows.map((row) => row + 1).join(' and ')} it makes no triangle: one distance is longer than the other two together`,
  countedTwice: ({ withRows = [] }) =>
    `it counts the sprocket otherwise than row ${withRows.map((row) => row + 1).join(' and ')}; leave one of the two out`,
  tooManyRows: ({ found, limit }) => `${found} rows are too many; the most is ${limit}`,
  photoImpossible: () =>
    'a photo needs sizes above zero and at least three different parts clicked that this bike has',
  startCannotStand: () => 'the starting bike does not stand on its wheels',
  noBike: ({ suspected }) =>
    `these rows lead to no bike that stands${suspected === undefined ? '' : likelyWords(suspected)}`,
};

/** One line: the row, counted from 1, and the reason. */
export function noMeasureWords(no: NoMeasure): string {
  const words = WORDS[no.reason](no);
  return no.row === null
    ? `${words.charAt(0).toUpperCase()}${words.slice(1)}.`
    : `Row ${no.row + 1}: ${words}.`;
}
