/** How wide words come out, from their letters alone, because words are also placed where no font can be measured. */

/**
 * Widths as parts of the text size, rounded up from DejaVu Sans, the widest of the fonts that systems use for
 * their own words, capitals from its bold, in which areas are named; other fonts leave some space.
 */
const NARROW = /[fijlrtI.,:;'’′!|()[\]\s-]/;
const WIDE = /[mwMW%@+−±→≥≤=]/;
const CAPITAL = /\p{Lu}/u;
const NARROW_WIDTH = 0.37;
const WIDE_WIDTH = 0.96;
const CAPITAL_WIDTH = 0.78;
const OTHER_WIDTH = 0.64;

function letterWidth(letter: string): number {
  if (NARROW.test(letter)) return NARROW_WIDTH;
  if (WIDE.test(letter)) return WIDE_WIDTH;
  return CAPITAL.test(letter) ? CAPITAL_WIDTH : OTHER_WIDTH;
}

/** The most that a line of words takes, px. */
export function textWidthPx(text: string, sizePx: number): number {
  let width = 0;
  for (const letter of text) width += letterWidth(letter);
  return width * sizePx;
}
