/** Measurements in words: what a row is, what the rows fix, what contradicts what, and what to measure next. */
import { measureKindOf } from '../../core/measure/kinds/all-kinds.ts';
import { measureStateOf } from '../../core/measure/held/all-measure-states.ts';
import { TOUCH_PARTS } from '../../core/parts/touch-parts.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../../core/measure/held/measure-parts.ts';
import type {
  LikelySlip,
  MeasuredBike,
  MeasuredReading,
  NextMeasurement,
  NotFixed,
  RowOutcome,
  SecondAnswer,
  Suspicion,
} from '../../core/measure/measured-bike.ts';
import type { NoMeasure, NoMeasureReason } from '../../core/measure/no-measure.ts';
import type { DrawnRange } from '../../core/measure/spread/drawn-bikes.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { MeasureRow } from '../../core/measure/sheet.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { listAll } from '../list-all.ts';
import { plusMinus, writePlusMinus } from '../plus-minus.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';

/** Below this part of a row nothing else on the sheet checks it. */
const LEAST_CHECKED = 0.05;

const small = (label: string): string =>
  /^[A-Z][a-z]/.test(label) && !label.startsWith('Mark ')
    ? label.charAt(0).toLowerCase() + label.slice(1)
    : label;

/** What a row measures, such as "Distance, rear axle to swingarm pivot". */
export function rowName({ kind, parts }: Pick<MeasureRow, 'kind' | 'parts'>): string {
  const { label } = measureKindOf(kind);
  const names = parts.map((key) => small(MEASURE_PARTS[key].label));
  return names.length === 0 ? label : `${label}, ${names.join(' to ')}`;
}

/** In which state, or between which two, a row is read. */
export function stateName({ state, otherState }: Pick<MeasureRow, 'state' | 'otherState'>): string {
  const { label } = measureStateOf(state);
  return otherState === null ? label : `${label}, less ${small(measureStateOf(otherState).label)}`;
}

/** A reading of the measured bike: with its ±, or that no row fixes it. */
export function measuredReading(
  { value, u, fixed }: MeasuredReading,
  quantity: QuantityKey,
  style: NumberStyle,
): string {
  if (value === null) return 'not on this bike';
  if (!fixed || u === null) return 'not fixed';
  return writePlusMinus(value, u, quantity, style);
}

/** The first thing to say of a fit. */
export function fitHeadline({ status, agreement }: MeasuredBike): string {
  switch (status) {
    case 'disagrees': {
      const times = Math.round(1 / Math.max(agreement.chance, 1e-6));
      return `Rows contradict one another; by chance that happens once in ${times >= 1e6 ? 'a million' : times} times.`;
    }
    case 'twoAnswers':
      return 'Two different bikes fit these rows equally well.';
    case 'notFixed':
      return 'Part of the bike is not fixed yet.';
    case 'solved':
      return 'The rows fix everything they speak of.';
  }
}

const SLIPS: Readonly<Record<LikelySlip, string>> = {
  inchForMm: 'It looks like inches noted as mm.',
  mmForInch: 'It looks like mm noted as inches.',
  cmForMm: 'It looks like cm noted as mm.',
  mmForCm: 'It looks like mm noted as cm.',
  poundForKg: 'It looks like pounds noted as kg.',
  kgForPound: 'It looks like kg noted as pounds.',
  otherReference: 'It looks read from the other reference, such as from horizontal for from vertical.',
};

/** Row numbers as a person counts them. */
export function rowNumbers(places: readonly number[]): string {
  const numbers = places.map((place) => String(place + 1));
  return `${numbers.length === 1 ? 'row' : 'rows'} ${listAll(numbers)}`;
}

export interface JudgedRow {
  /** Its place in the sheet, from 0. */
  readonly place: number;
  readonly row: MeasureRow;
  readonly outcome: RowOutcome;
}

export interface SuspectedRow {
  readonly place: number;
  readonly row: MeasureRow;
  readonly suspected: Suspicion;
}

/** The rows whose figure does not suit the others, the likeliest slip first. */
export function inOrderOfSuspicion(rows: readonly JudgedRow[]): readonly SuspectedRow[] {
  return rows
    .flatMap(({ place, row, outcome: { suspected } }) =>
      suspected === null ? [] : [{ place, row, suspected }],
    )
    .sort((a, b) => a.suspected.place - b.suspected.place);
}

/** Why a row is suspected. `fitted` gives the sheet's place of a row of the fit. */
export function suspicionWords(
  { place, row, suspected }: SuspectedRow,
  fitted: readonly number[],
  style: NumberStyle,
): string {
  const expected = writeNumber(suspected.expected, measureKindOf(row.kind).quantity, style).text;
  const first = suspected.place === 1 ? 'suspected first' : 'suspected next';
  const alike = suspected.alike.map((each) => fitted[each]);
  return [
    `Row ${place + 1}, ${small(rowName(row))}, is ${first}: it says ${figureText(row)}, and the other rows make it ${expected}.`,
    ...(suspected.likely === null ? [] : [SLIPS[suspected.likely]]),
    ...(alike.length === 0 ? [] : [`The slip may be in ${rowNumbers(alike)} instead.`]),
  ].join(' ');
}

/** Signs that stand close to their figure. */
const HUGS: readonly string[] = ['', '°', '"', '″'];

/** A figure as it was typed. */
export function figureText({ figure, unit }: Pick<MeasureRow, 'figure' | 'unit'>): string {
  return HUGS.includes(unit) ? `${figure}${unit}` : `${figure} ${unit}`;
}

/** What the other rows say of one row. */
export function checkWords({ row, outcome }: JudgedRow, style: NumberStyle): string {
  const { redundancy, residual, smallestSlipRevealed: slip } = outcome;
  const { quantity } = measureKindOf(row.kind);
  if (redundancy === null || residual === null) return '';
  if (redundancy < LEAST_CHECKED || slip === null) return 'Nothing checks this row.';
  const off = writeNumber(residual, quantity, style, { signed: true }).text;
  return `${off} from the bike found; a slip of ${writeNumber(slip, quantity, style).text} would be noticed.`;
}

/** The rows that nothing checks, in a sentence; null where all are checked. */
export function uncheckedWords(rows: readonly JudgedRow[]): string | null {
  const fitted = rows.flatMap(({ place, outcome: { redundancy } }) =>
    redundancy === null ? [] : [{ place, redundancy }],
  );
  const unchecked = fitted.filter(({ redundancy }) => redundancy < LEAST_CHECKED);
  if (unchecked.length === 0) return null;
  return unchecked.length === fitted.length
    ? 'No row checks another yet: a slip would not be noticed.'
    : `Nothing checks ${rowNumbers(unchecked.map(({ place }) => place))}: a slip there would not be noticed.`;
}

function notFixedWords({ why, moves }: NotFixed): string {
  const names = moves.map(({ label }) => small(label));
  if (why === 'wide') return `Known only roughly: ${listAll(names)}.`;
  return names.length === 1
    ? `No row fixes ${names[0]}.`
    : `No row fixes ${listAll(names)}: they move together, and fixing one fixes the others.`;
}

/** What the rows find and what moves together. */
export function fixedWords({ unknowns, notFixed }: MeasuredBike): readonly string[] {
  const solved = unknowns.filter(({ assumed, u }) => !assumed && u !== null);
  return [
    ...(solved.length === 0 ? [] : [`Solved: ${listAll(solved.map(({ label }) => small(label)))}.`]),
    ...notFixed.map(notFixedWords),
  ];
}

/** What keeps the starting bike's value, each place once and without its two coordinates; marks and rails are none of the bike's. */
export function assumedNames({ unknowns }: MeasuredBike): readonly string[] {
  const names = unknowns
    .filter(({ assumed }) => assumed)
    .map(({ label }) => small(label.split(',')[0]))
    .filter((name) => !name.startsWith('Mark ') && name !== small(MEASURE_PARTS.frameRail.label));
  return [...new Set(names)];
}

/** Readings that have no ± yet, in one sentence. */
export function looseWords(labels: readonly string[]): string {
  return `Not fixed yet: ${listAll(labels.map(small))}.`;
}

/** As many assumed places as a sentence takes. */
const MOST_NAMED = 5;

export function assumedWords(names: readonly string[]): string | null {
  if (names.length === 0) return null;
  const more = names.length - MOST_NAMED;
  const told = more > 1 ? [...names.slice(0, MOST_NAMED), `${more} more`] : names;
  return `Assumed, as on the starting bike: ${listAll(told)}.`;
}

/** The other bike that fits as well, and what would decide between the two. */
export function secondWords({ mirrored, decide }: SecondAnswer, style: NumberStyle): string {
  const other = `Another bike fits as well, with the ${small(mirrored)} on the other side.`;
  if (decide === null) return `${other} Begin from a bike that looks more like this one.`;
  const { quantity } = measureKindOf(decide.kind);
  const write = (value: number): string => writeNumber(value, quantity, style).text;
  return `${other} ${rowName(decide)} tells them apart: ${write(decide.here)} on this one, ${write(decide.there)} on the other.`;
}

export interface NextAdvice {
  readonly next: NextMeasurement;
  readonly text: string;
}

/** The measurements whose help for a reading can be seen in its ±, in words. `now` is its standard deviation; null where it is not fixed. */
export function nextAdvice(
  all: readonly NextMeasurement[],
  { label, quantity }: Pick<Reading, 'label' | 'quantity'>,
  now: number | null,
  style: NumberStyle,
): readonly NextAdvice[] {
  const before = now === null ? 'not fixed' : plusMinus(now, quantity, style);
  return all.flatMap((next) => {
    if (next.u === null) return [];
    const then = plusMinus(next.u, quantity, style);
    const text = `${rowName(next)} (${small(stateName(next))}): ${small(label)} ${then}, now ${before}.`;
    return then === before ? [] : [{ next, text }];
  });
}

type Say = (no: NoMeasure, drive: DriveNoun, style: NumberStyle) => string;

const partName = (part: MeasurePartKey | undefined): string =>
  part === undefined ? 'such part' : small(MEASURE_PARTS[part].label);

const REFUSALS: Readonly<Record<NoMeasureReason, Say>> = {
  figureUnreadable: () => 'The figure cannot be read. Type it again, with its unit.',
  figureImpossible: () => 'No motorcycle has such a figure. Check it and its unit.',
  partsWrong: () => 'This kind is measured between other parts. Choose two different ones.',
  partMissing: ({ part }) =>
    part !== undefined && part in TOUCH_PARTS
      ? `Enter first how far out the ${partName(part)} stands: its half width, under Edit. Until then it does not count on this bike.`
      : `This bike has no ${partName(part)}. Choose another part.`,
  statesWrong: () => 'A change lies between two different states. Choose another second one.',
  notWeighedSo: () => 'Scales are read on its wheels or raised for weighing. Choose one of these states.',
  sdWrong: () => 'The ± has to be above zero. Type what your tool is good for.',
  otherReferenceWrong: () => 'This kind is read from one reference only. Choose the usual one.',
  triangleImpossible: ({ withRows = [] }) =>
    `With ${rowNumbers(withRows)} it makes no triangle: one distance is longer than the other two together. Measure the three again.`,
  countedTwice: ({ withRows = [] }) =>
    `It counts the sprocket otherwise than ${rowNumbers(withRows)}. Count again and leave one of the two out.`,
  tooManyRows: () => 'There are more rows than a sheet can hold. Remove some.',
  photoImpossible: () => 'A photo needs three parts or more that this bike has. Click another part on it.',
  startCannotStand: ({ stand }, drive, style) =>
    `The bike that the fit begins with does not stand. ${stand === undefined ? 'Mend it first.' : noStandWords(stand, drive, style)}`,
  noBike: ({ row }) =>
    row === null
      ? 'These rows lead to no bike that stands. Leave out the row you trust least, or begin from another type of bike.'
      : 'These rows lead to no bike that stands.',
};

/** Why a row, or the sheet, was put aside, and what to do. */
export function noMeasureSentence(no: NoMeasure, drive: DriveNoun, style: NumberStyle): string {
  return REFUSALS[no.reason](no, drive, style);
}

/** Where a reading lies among the bikes that were drawn at random. */
export function drawnWords(
  { least, most }: DrawnRange,
  count: number,
  { label, quantity }: Pick<Reading, 'label' | 'quantity'>,
  style: NumberStyle,
): string {
  const [from, to] = [least, most].map((value) => writeNumber(value, quantity, style).text);
  const many = count.toString().replace(/\B(?=(\d{3})+$)/g, ',');
  return from === to
    ? `Of ${many} bikes drawn by lot from these rows, 95 in 100 have ${small(label)} ${to}.`
    : `Of ${many} bikes drawn by lot from these rows, 95 in 100 have ${small(label)} from ${from} to ${to}.`;
}
