/** Saving the curves: as lines that scale (SVG), as pixels (PNG), and as figures (CSV). */
import { chartOf } from '../../curves/chart.ts';
import { curveCsv } from '../../curves/curve-table.ts';
import { chartTitle, courseWords, statesWords } from '../../words/curve-words.ts';
import { sceneSvg } from '../../render/svg/scene-svg.ts';
import { plotLayer } from '../../scene/plot/plot.ts';
import { findTheme } from '../../scene/shapes/theme.ts';
import type { Curves } from '../../session/tabs/curves.svelte.ts';
import type { Preferences } from '../../session/preferences.svelte.ts';
import { bikeFileName } from '../../storage/bike-file-name.ts';
import { download } from '../../storage/download.ts';
import { zonesShown } from './curve-zones.ts';

/** Size of the saved picture, px, and pixels of a PNG to each of them. */
const WIDTH = 960;
const HEIGHT = 540;
const TEXT = 14;
const PICTURE_RATIO = 2;

/** What is saved, and how this person likes to see it. */
export interface CurvesShown {
  readonly curves: Curves;
  readonly preferences: Preferences;
  readonly bikeName: string;
}

function fileName({ curves, bikeName }: CurvesShown, ending: string): string {
  return bikeFileName(`${bikeName} ${curves.reading.label}`, ending);
}

function svgText({ curves, preferences, bikeName }: CurvesShown): string | null {
  const { set, band } = curves;
  if (set === null) return null;
  const { style, data, theme } = preferences;
  const { scene, view } = chartOf({
    set,
    style,
    widthPx: WIDTH,
    heightPx: HEIGHT,
    textPx: TEXT,
    band,
    zones: zonesShown(curves, data.band),
  });
  return sceneSvg(scene, view, findTheme(theme), plotLayer, {
    widthPx: WIDTH,
    heightPx: HEIGHT,
    title: `${bikeName}: ${chartTitle(set, style)}`,
    description: `${courseWords(set, style)} ${statesWords(set, style)}`.trim(),
  });
}

export function saveCurvesSvg(shown: CurvesShown): void {
  const text = svgText(shown);
  if (text !== null) download(fileName(shown, '.svg'), new Blob([text], { type: 'image/svg+xml' }));
}

export function saveCurvesCsv(shown: CurvesShown): void {
  const { set } = shown.curves;
  if (set === null) return;
  const text = curveCsv(set, shown.preferences.style);
  download(fileName(shown, '.csv'), new Blob([text], { type: 'text/csv' }));
}

/** False when the browser could not make the picture. */
export async function saveCurvesPng(shown: CurvesShown): Promise<boolean> {
  const text = svgText(shown);
  if (text === null) return false;
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  try {
    await image.decode();
  } catch {
    // The caller says so where a browser cannot read its own SVG.
    return false;
  }
  const canvas = document.createElement('canvas');
  canvas.width = WIDTH * PICTURE_RATIO;
  canvas.height = HEIGHT * PICTURE_RATIO;
  const context = canvas.getContext('2d');
  if (context === null) return false;
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  const data = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (data === null) return false;
  download(fileName(shown, '.png'), data);
  return true;
}
