/** Tyres: outside diameter from the size code, or as measured. */
import { MM_PER_INCH } from '../units/convert.ts';
import { fail, succeed, type Result } from '../numeric/result.ts';

/** A tyre by its size code, by its measured outside diameter, or by its measured rolling circumference, mm. */
export type Tyre =
  { readonly code: string } | { readonly diameter: number } | { readonly circumference: number };

export type TyreReason = 'tyreCodeUnreadable' | 'tyreSizeImpossible';

export interface TyreSize {
  /** Section width, mm. */
  readonly width: number;
  /** Section height as a part of the width, per cent. */
  readonly aspect: number;
  /** Rim diameter, inches. */
  readonly rim: number;
}

/** Outside diameters accepted, mm: from a child's machine to a tractor wheel. */
const LEAST_DIAMETER = 150;
const MOST_DIAMETER = 2000;

/** Size, then what else a sidewall says of it: M/C, load and speed marks, tube or tubeless. */
const SIZE_CODE =
  /^\s*(\d{2,3})\s*\/\s*(\d{2,3})\s*[-\s]?\s*[A-Z]{0,2}\s*-?\s*(\d{1,2}(?:[.,]5)?)(?:\s+M\/C|\s+\(?\d{2,3}[A-Z]\)?|\s+T[LT])*\s*$/i;

/** What tyre codes say, kept for the last hundred: a search for a setup reads two tyres with every combination. */
const read = new Map<string, TyreSize | 'tyreCodeUnreadable'>();
const KEPT = 100;

/** Reads a metric size code such as `120/70-17`, `120/70 ZR17` or `190/55ZR17 M/C 75W`. */
export function readTyreCode(code: string): TyreSize | 'tyreCodeUnreadable' {
  const known = read.get(code);
  if (known !== undefined) return known;
  if (read.size >= KEPT) read.clear();
  const size = sizeOf(code);
  read.set(code, size);
  return size;
}

function sizeOf(code: string): TyreSize | 'tyreCodeUnreadable' {
  const match = SIZE_CODE.exec(code);
  if (!match) return 'tyreCodeUnreadable';
  return { width: Number(match[1]), aspect: Number(match[2]), rim: Number(match[3].replace(',', '.')) };
}

/**
 * Outside diameter of a tyre in mm, unloaded: two section heights and the rim, or as measured (a circumference
 * divided by pi). Source of the formula: the definition of the metric size code (common practice; published
 * tables of overall diameters agree). Real tyres differ by some millimetres, so a measured one is better.
 */
export function tyreDiameter(tyre: Tyre): Result<number, TyreReason> {
  let diameter: number;
  if ('code' in tyre) {
    const size = readTyreCode(tyre.code);
    if (typeof size === 'string') return fail(size);
    diameter = (2 * size.width * size.aspect) / 100 + MM_PER_INCH * size.rim;
  } else if ('diameter' in tyre) diameter = tyre.diameter;
  else diameter = tyre.circumference / Math.PI;
  if (!(diameter >= LEAST_DIAMETER && diameter <= MOST_DIAMETER)) return fail('tyreSizeImpossible');
  return succeed(diameter);
}
