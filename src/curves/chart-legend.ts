/** The legend of a chart: a sample of each line with its sign and its name, in rows above the field. */
import type { NumberStyle } from '../core/units/number-style.ts';
import { textWidthPx } from '../scene/shapes/text-width.ts';
import type { CurveSet } from './curve-set.ts';
import { withUnit } from '../words/kept/curve-words.ts';
import { lookOf, type LineLook } from './line-look.ts';

export interface LegendEntry extends LineLook {
  readonly name: string;
  /** The sample of the line, px from the left; of no length for a curve that lies under another. */
  readonly fromPx: number;
  readonly toPx: number;
  /** Where its sign and its words stand. */
  readonly signPx: number;
  readonly wordsPx: number;
  /** From 0 at the top. */
  readonly row: number;
}

export interface Legend {
  readonly entries: readonly LegendEntry[];
  /** The rows that it takes with the name of the upright axis, which stands at the start of the first. */
  readonly rows: number;
}

const SAMPLE_PX = 34;
const SIGN_PX = 14;
const BESIDE_SAMPLE_PX = 6;
const BETWEEN_PX = 16;
const EDGE_PX = 12;

/** Nothing for a curve that is alone. */
export function legendOf(set: CurveSet, style: NumberStyle, widthPx: number, textPx: number): Legend {
  if (set.curves.length === 1) return { entries: [], rows: 1 };
  const { reading } = set;
  let x = EDGE_PX + textWidthPx(withUnit(reading.label, reading.quantity, style), textPx) + 2 * BETWEEN_PX;
  let row = 0;
  const entries = set.curves.map((placed): LegendEntry => {
    const line = placed.under === null && placed.curve.x.length > 0;
    const sample = line ? SAMPLE_PX : SIGN_PX;
    const whole = sample + BESIDE_SAMPLE_PX + textWidthPx(placed.name, textPx);
    if (x + whole > widthPx - EDGE_PX && x > EDGE_PX) {
      x = EDGE_PX;
      row += 1;
    }
    const fromPx = x;
    x += whole + BETWEEN_PX;
    return {
      ...lookOf(placed),
      name: placed.name,
      fromPx,
      toPx: line ? fromPx + sample : fromPx,
      signPx: fromPx + sample / 2,
      wordsPx: fromPx + sample + BESIDE_SAMPLE_PX,
      row,
    };
  });
  return { entries, rows: row + 1 };
}
