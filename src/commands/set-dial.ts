/** Sets a dial from the words of the command line, such as `forkHeight=5` or `rearTyre=190/55-17`. */
import type { Dial } from '../core/springs/dial.ts';
import { DIALS } from '../core/springs/dials.ts';
import type { Bike } from '../core/chassis/bike.ts';
import type { TyreReason } from '../core/chassis/tyre.ts';
import { refused, solved, type Result } from '../core/numeric/result.ts';
import { parseQuantity, type ParseReason } from '../core/units/parse-quantity.ts';
import { QUANTITIES } from '../core/units/quantity.ts';
import type { BikeDocument } from '../document/document.ts';
import { setDial } from '../document/edits.ts';
import { quoted } from '../document/json.ts';
import { parseTyre } from './parse-tyre.ts';

const WHY: Readonly<Record<ParseReason | TyreReason, string>> = {
  empty: 'it is empty',
  notANumber: 'it is not a number',
  wrongUnit: 'its unit does not fit',
  tooLarge: 'it is far larger than any part of a motorcycle',
  tyreCodeUnreadable: 'it is neither a size code such as 190/55-17 nor a measured diameter or circumference',
  tyreSizeImpossible: 'no wheel has a tyre of that outside diameter',
};

/** What a dial is counted in, such as `mm`. */
export function dialUnit(dial: Dial): string {
  if (dial.kind === 'tyre') return 'size code, or mm';
  if (dial.kind === 'chain') return 'links';
  return dial.quantity === 'teeth' ? 'teeth' : QUANTITIES[dial.quantity].fileUnit;
}

export interface DialSet {
  readonly document: BikeDocument;
  /** That the value lies outside what a workshop uses, in a sentence; null when it lies within. */
  readonly remark: string | null;
}

/** The document with one dial set as `words` say; or one line why not. */
export function setDialFromWords(document: BikeDocument, words: string): Result<DialSet, string> {
  const at = words.indexOf('=');
  if (at < 1)
    return refused(`--set takes a dial and its value, as in --set forkHeight=5, not "${quoted(words)}".`);
  const name = words.slice(0, at).trim();
  const text = words.slice(at + 1).trim();
  const dial = DIALS.find((each) => each.key === name);
  if (dial === undefined)
    return refused(
      `There is no dial named "${quoted(name)}". The dials are ${DIALS.map((d) => d.key).join(', ')}.`,
    );
  const refuse = (why: string) => refused(`The dial ${name} cannot be "${quoted(text)}": ${why}.`);
  if (dial.kind === 'tyre') {
    const tyre = parseTyre(text, 'metric');
    if (!tyre.ok) return refuse(WHY[tyre.reason]);
    const edited = setDial(document, dial.key, tyre.value);
    return edited.ok ? solved({ document: edited.value, remark: null }) : refused(edited.reason.sentence);
  }
  if (dial.kind === 'chain') {
    const links = text === 'none' ? null : parseQuantity(text, 'links', 'metric');
    if (links?.ok === false) return refuse(WHY[links.reason]);
    const edited = setDial(document, dial.key, links === null ? null : links.value);
    return edited.ok ? solved({ document: edited.value, remark: null }) : refused(edited.reason.sentence);
  }
  const value = parseQuantity(text, dial.quantity, 'metric');
  if (!value.ok) return refuse(WHY[value.reason]);
  const edited = setDial(document, dial.key, value.value);
  if (!edited.ok) return refused(edited.reason.sentence);
  return solved({ document: edited.value, remark: remarkOn(dial, document.bike, value.value) });
}

function remarkOn(dial: Dial, bike: Bike, value: number): string | null {
  if (dial.kind !== 'number') return null;
  const { least, most } = dial.range(bike);
  if (value >= least && value <= most) return null;
  return `The dial ${dial.key} is set to ${value}, outside the dial’s range of ${least} to ${most} ${dialUnit(dial)} on this bike.`;
}
