/** Sets an adjuster from the words of the command line, such as `forkTubes=5` or `rearTyre=190/55-17`. */
import { ADJUSTERS, type Adjuster, type NumberAdjuster } from '../core/adjusters/all-adjusters.ts';
import { adjusterRange, isWithin } from '../core/standing/adjuster-range.ts';
import type { TyreReason } from '../core/parts/tyre.ts';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { parseQuantity, type ParseReason } from '../core/units/parse-quantity.ts';
import { unitWord } from '../core/units/all-quantities.ts';
import type { BikeDocument } from '../document/document.ts';
import { setAdjuster } from '../document/edits.ts';
import { quote } from '../document/json/json.ts';
import { parseTyre } from './parse-tyre.ts';

const WHY: Readonly<Record<ParseReason | TyreReason, string>> = {
  empty: 'it is empty',
  notANumber: 'it is not a number',
  wrongUnit: 'its unit does not fit',
  tooLarge: 'it is far larger than any part of a motorcycle',
  tyreCodeUnreadable: 'it is neither a size code such as 190/55-17 nor a measured diameter or circumference',
  tyreSizeImpossible: 'no wheel has a tyre of that outside diameter',
};

/** What an adjuster is counted in, such as `mm`. */
export function adjusterUnit(adjuster: Adjuster): string {
  return adjuster.holds === 'tyre' ? 'size code, or mm' : unitWord(adjuster.quantity);
}

export interface AdjusterSet {
  readonly document: BikeDocument;
  /** A sentence when the value lies outside what a workshop uses; null when it lies within. */
  readonly remark: string | null;
}

/** The document with one adjuster set as `words` say; or one line why not. */
export function setAdjusterFromWords(document: BikeDocument, words: string): Result<AdjusterSet, string> {
  const at = words.indexOf('=');
  if (at < 1)
    return fail(`--set takes an adjuster and its value, as in --set forkTubes=5, not "${quote(words)}".`);
  const name = words.slice(0, at).trim();
  const text = words.slice(at + 1).trim();
  const adjuster = ADJUSTERS.find(
    (each) => each.key === name || (each.formerly !== undefined && each.formerly === name),
  );
  if (adjuster === undefined)
    return fail(
      `There is no adjuster named "${quote(name)}". The adjusters are ${ADJUSTERS.map((d) => d.key).join(', ')}.`,
    );
  const refuse = (why: string) => fail(`The adjuster ${name} cannot be "${quote(text)}": ${why}.`);
  if (adjuster.holds === 'tyre') {
    const tyre = parseTyre(text, 'metric');
    if (!tyre.ok) return refuse(WHY[tyre.reason]);
    const edited = setAdjuster(document, adjuster.key, tyre.value);
    return edited.ok ? succeed({ document: edited.value, remark: null }) : fail(edited.reason.sentence);
  }
  if (adjuster.holds === 'wholeNumberOrNone') {
    const count = text === 'none' ? null : parseQuantity(text, adjuster.quantity, 'metric');
    if (count?.ok === false) return refuse(WHY[count.reason]);
    const edited = setAdjuster(document, adjuster.key, count === null ? null : count.value);
    return edited.ok ? succeed({ document: edited.value, remark: null }) : fail(edited.reason.sentence);
  }
  const value = parseQuantity(text, adjuster.quantity, 'metric');
  if (!value.ok) return refuse(WHY[value.reason]);
  const edited = setAdjuster(document, adjuster.key, value.value);
  if (!edited.ok) return fail(edited.reason.sentence);
  return succeed({ document: edited.value, remark: remarkOn(adjuster, edited.value, value.value) });
}

function remarkOn(adjuster: NumberAdjuster, { bike, setup }: BikeDocument, value: number): string | null {
  const range = adjusterRange(adjuster, bike, setup);
  if (isWithin(adjuster, range, value)) return null;
  const { least, most } = range;
  return `The adjuster ${adjuster.key} is set to ${value}, outside the adjuster’s range of ${least} to ${most} ${adjusterUnit(adjuster)} on this bike.`;
}
