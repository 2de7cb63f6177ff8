/** Saving what the side view shows as a picture: lines that scale (SVG), or pixels at twice the screen's size (PNG). */
import { konvaCanvas } from '../../render/konva/konva-canvas.ts';
import { sceneSvg } from '../../render/svg/scene-svg.ts';
import { plotLayer } from '../../scene/plot/plot.ts';
import { findTheme } from '../../scene/shapes/theme.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import { bikeFileName } from '../../storage/bike-file-name.ts';
import { pictureNote, withNote } from './picture-note.ts';
import { download } from '../../storage/download.ts';

/** Pixels of a PNG to each px of the screen. */
const PICTURE_RATIO = 2;

export function saveSvg(bench: Workbench): void {
  const { bike } = bench.session.document;
  const text = sceneSvg(
    bench.drawing.scene,
    bench.sideView.view,
    findTheme(bench.preferences.theme),
    plotLayer,
    {
      widthPx: bench.sideView.widthPx,
      heightPx: bench.sideView.heightPx,
      note: pictureNote(bench.sideView.widthPx),
      title: bike.name,
      description: `Side view of ${bike.name} with its chassis geometry. ${bike.about}`,
    },
  );
  download(bikeFileName(bike.name, '.svg'), new Blob([text], { type: 'image/svg+xml' }));
}

/** False when the browser could not make the picture. */
export async function savePng(bench: Workbench): Promise<boolean> {
  const page = konvaCanvas(document.createElement('div'), plotLayer);
  const { view, widthPx, heightPx } = bench.sideView;
  const theme = findTheme(bench.preferences.theme);
  page.draw({ scene: bench.drawing.scene, view, theme }, { widthPx, heightPx, pixelRatio: 1 });
  const canvas = withNote(page.picture(PICTURE_RATIO), PICTURE_RATIO, theme);
  page.destroy();
  if (canvas === null) return false;
  const data = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (data === null) return false;
  download(bikeFileName(bench.session.document.bike.name, '.png'), data);
  return true;
}
