/** Answers questions about a measured bike; the fit of a sheet is kept for the next one about the same. */
import { drawnRange } from '../core/measure/spread/drawn-bikes.ts';
import { fitSheet } from '../core/measure/fit-sheet.ts';
import type { Fit } from '../core/measure/fit-values.ts';
import { measuredBand } from '../core/measure/spread/measured-band.ts';
import { changeSpreads } from '../core/measure/spread/measured-change.ts';
import { measuredPlaces } from '../core/measure/spread/measured-places.ts';
import { nextMeasurements } from '../core/measure/next-measurements.ts';
import { spreadsByState } from '../core/measure/spread/spreads-by-state.ts';
import { normalNumbers } from '../core/numeric/normal-numbers.ts';
import type { MeasureAnswer, MeasuredBy, MeasureQuestion } from './measure-messages.ts';

/** The same bikes are drawn each time, so that a figure on the page stays while nothing is changed. */
const SEED = 20_261;

let kept: { readonly by: string; readonly fit: Fit | null } | null = null;

function fitOf({ start, sheet }: MeasuredBy): Fit | null {
  const by = JSON.stringify([start, sheet]);
  if (kept?.by !== by) {
    const found = fitSheet(start, sheet);
    kept = { by, fit: found.ok ? found.fit : null };
  }
  return kept.fit;
}

export function runMeasuring({ start, sheet }: MeasuredBy, question: MeasureQuestion): MeasureAnswer {
  const fit = fitOf({ start, sheet });
  const { what } = question;
  if (fit === null) return { what, found: null };
  switch (question.what) {
    case 'spreads': {
      const { from } = question;
      const own = changeSpreads(fit, { ...question, start, from: null });
      const change = from === null ? null : changeSpreads(fit, { ...question, start, from });
      return { what: 'spreads', found: { own, change } };
    }
    case 'byState':
      return { what: 'byState', found: spreadsByState(fit, start, question.to) };
    case 'next':
      return { what: 'next', found: nextMeasurements(fit, question.reading) };
    case 'places':
      return { what: 'places', found: measuredPlaces(fit) };
    case 'band':
      return { what: 'band', found: measuredBand(fit, { ...question, start }) };
    case 'draws':
      return { what: 'draws', found: drawnRange(fit, question, normalNumbers(SEED)) };
  }
}
