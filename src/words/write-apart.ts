/** Sentences with several figures, written so that two figures that differ do not read the same. */
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import { degrees } from '../core/units/convert.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';

/** Writes a figure in the user's own units; a dash for a figure that is not there. */
export type WriteFigure = (value: number | undefined, quantity: QuantityKey) => string;

/** An angle of the core as the writer of figures takes it, where there is one. */
export function inDegrees(radians: number | undefined): number | undefined {
  return radians === undefined ? undefined : degrees(radians);
}

/** Digits added at most. */
const MOST_EXTRA_DIGITS = 4;

/** The sentence, with as many digits as its figures need to read apart; figures that no digits tell apart add none. */
export function writeApart(sentence: (write: WriteFigure) => string, style: NumberStyle): string {
  const most = writeWith(sentence, style, MOST_EXTRA_DIGITS);
  for (let extraDigits = 0; extraDigits < MOST_EXTRA_DIGITS; extraDigits++) {
    const { words, apart } = writeWith(sentence, style, extraDigits);
    if (apart === most.apart) return words;
  }
  return most.words;
}

/** The sentence with so many digits added, and how many of its figures read apart. */
function writeWith(sentence: (write: WriteFigure) => string, style: NumberStyle, extraDigits: number) {
  const written = new Set<string>();
  const words = sentence((value, quantity) => {
    const text = value === undefined ? '–' : writeNumber(value, quantity, style, { extraDigits }).text;
    written.add(text);
    return text;
  });
  return { words, apart: written.size };
}
