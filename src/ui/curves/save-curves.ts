/** Saving the curves: as lines that scale (SVG), as pixels (PNG), and as figures (CSV). */
import { curveCsv } from '../../curves/curve-table.ts';
import { bikeFileName } from '../../storage/file/bike-file-name.ts';
import { download } from '../../storage/file/download.ts';
import { saveScenePng, saveSceneSvg } from '../controls/paper/save-scene.ts';
import { curvesPicture, type CurvesShown } from './curves-picture.ts';

export function saveCurvesSvg(shown: CurvesShown): void {
  const picture = curvesPicture(shown);
  if (picture !== null) saveSceneSvg(picture);
}

/** False when the browser could not make the picture. */
export async function saveCurvesPng(shown: CurvesShown): Promise<boolean> {
  const picture = curvesPicture(shown);
  return picture !== null && (await saveScenePng(picture));
}

export function saveCurvesCsv(shown: CurvesShown): void {
  const { set, spread } = shown.curves;
  if (set === null) return;
  const text = curveCsv(set, shown.preferences.style, spread);
  download(
    bikeFileName(`${shown.bikeName} ${shown.curves.reading.label}`, '.csv'),
    new Blob([text], { type: 'text/csv' }),
  );
}
