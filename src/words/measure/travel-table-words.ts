/** Says how well a travel table is known, and when it is better to enter the links. */
import type { RowOff } from '../../core/linkage/measured-curve.ts';
import type { Band, TableBand } from '../../core/springs/table-band.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

/** With bolts measured within 1 mm the wheel rate comes out within these parts, in 95 % of cases. */
export const LINKS_KNOWN = { straight: 0.01, rocker: 0.1 };

/** Where the links are entered. */
const LINKS_AT = 'Entering the links serves better where you can reach them (Rear suspension, Layout)';

/** For rows without a ±. */
const EXACT =
  'The rows count as exact, so every slip of the tape is in the curve. Give them a ±: half of the finest mark you can tell apart. The curve then goes where it is most likely, and this says how well it is known. ' +
  `${LINKS_AT}.`;

const percent = (part: number, style: NumberStyle): string =>
  writeNumber(100 * part, 'percent', style, part < 0.0995 ? {} : { extraDigits: -1 }).text;

const inWords = ({ mean, most }: Band, style: NumberStyle): string => {
  const [low, high] = [`±${percent(mean, style)}`, `±${percent(most, style)}`];
  return low === high ? low : `${low} on average over the travel and ${high} at worst`;
};

/** The row that the others contradict, by its number, and by how much. */
export function rowOffWords({ row, off, within }: RowOff, style: NumberStyle): string {
  const [typed, allowed] = [Math.abs(off), within].map(
    (mm) => writeNumber(mm, 'length', style, { extraDigits: 0 }).text,
  );
  const way = off > 0 ? 'more' : 'less';
  return `Row ${row + 1} does not fit the others: its stroke is ${typed} ${way} than they make it, and the ± of the rows explains ${allowed} at most. Measure it again, or give it a wider ±.`;
}

/** What ± motion ratio and wheel rate have; null is a table whose rows are exact. Every ± is for 95 %. */
export function travelTableWords(band: TableBand | null, style: NumberStyle): string {
  if (band === null) return EXACT;
  const { ratio, rate } = band;
  const known = `The motion ratio is known to ${inWords(ratio, style)}.`;
  if (rate === null) return `${known} Every ± is for 95 %. ${adviceFor(null, style)}`;
  return `${known} Rear wheel rate with this spring: ${inWords(rate, style)}. Every ± is for 95 %. ${adviceFor(rate, style)}`;
}

function adviceFor(rate: Band | null, style: NumberStyle): string {
  const { straight, rocker } = LINKS_KNOWN;
  const bolts = `bolts measured to 1 mm give the wheel rate to ±${percent(rocker, style)} with a rocker, to ±${percent(straight, style)} with a straight shock`;
  if (rate === null || rate.mean > rocker) return `More rows make it better. ${LINKS_AT}: ${bolts}.`;
  if (rate.most > rocker)
    return `On average that is as good as the links of a rocker, but not where it is worst. ${LINKS_AT}: ${bolts}.`;
  return `That is as good as the links of a rocker. A straight shock is still better entered by its bolts: ${bolts}.`;
}
