/** A text as a QR code (ISO/IEC 18004), drawn as SVG in mm of paper. */
import { encode } from 'uqr';
import { escapeXml } from './escape-xml.ts';

/** The side of one square, mm: four dots of a printer with 300 to the inch are the least that a phone reads well. */
const LEAST_SQUARE_MM = 0.33;
const LARGEST_SQUARE_MM = 0.4;
/** The white border that the standard wants around the code, in squares. */
const QUIET_SQUARES = 4;

/**
 * The code of a text of at most 2,953 characters of ASCII in at most `widestMm` of paper; null where its squares would
 * be too small. `title` is read out. The least error correction keeps its
 * squares large: a code on paper is seldom dirty, and a link's own check figure finds what slips through.
 */
export function qrSvg(text: string, title: string, widestMm: number): string | null {
  const { data, size } = encode(text, { ecc: 'L', border: QUIET_SQUARES });
  const squareMm = Math.min(LARGEST_SQUARE_MM, widestMm / size);
  if (squareMm < LEAST_SQUARE_MM) return null;
  const side = `${Math.round(size * squareMm * 100) / 100}mm`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${side}" height="${side}" viewBox="0 0 ${size} ${size}"`,
    ' role="img" shape-rendering="crispEdges">',
    `<title>${escapeXml(title)}</title>`,
    `<rect width="${size}" height="${size}" fill="#ffffff"/>`,
    `<path fill="#000000" d="${data.map(rowOfSquares).join('')}"/>`,
    '</svg>',
  ].join('');
}

/** The dark squares of a row, those side by side in one piece. */
function rowOfSquares(dark: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < dark.length; x++) {
    if (!dark[x]) continue;
    const from = x;
    while (dark[x + 1]) x += 1;
    const width = x + 1 - from;
    path += `M${from} ${y}h${width}v1h-${width}z`;
  }
  return path;
}
