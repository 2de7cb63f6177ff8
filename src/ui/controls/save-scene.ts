/** Saving a drawing as a picture of the size chosen: lines that scale (SVG) or pixels (PNG), with what it is and the caution below it. */
import { sceneSvg } from '../../render/svg/scene-svg.ts';
import { plotLayer } from '../../scene/plot/plot.ts';
import type { Scene } from '../../scene/shapes/shape.ts';
import { findTheme, type ThemeName } from '../../scene/shapes/theme.ts';
import type { View } from '../../scene/shapes/view.ts';
import { bikeFileName } from '../../storage/bike-file-name.ts';
import { download } from '../../storage/download.ts';
import { pictureNote } from './picture-note.ts';

export interface ScenePicture {
  readonly scene: Scene;
  readonly view: View;
  readonly theme: ThemeName;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Pixels of the saved picture to each px. */
  readonly ratio: number;
  /** Shown by viewers as the picture's name and explanation. */
  readonly title: string;
  readonly description: string;
  /** What stands below it: bike, what is shown, day and units. */
  readonly line: string;
  /** What the file is called, before its ending. */
  readonly fileName: string;
}

function svgText(picture: ScenePicture): string {
  const { scene, view, theme, widthPx, heightPx, ratio, title, description, line } = picture;
  return sceneSvg(scene, view, findTheme(theme), plotLayer, {
    widthPx,
    heightPx,
    ratio,
    title,
    description,
    note: pictureNote(widthPx, line),
  });
}

export function saveSceneSvg(picture: ScenePicture): void {
  const data = new Blob([svgText(picture)], { type: 'image/svg+xml' });
  download(bikeFileName(picture.fileName, '.svg'), data);
}

/** False when the browser could not make the picture. */
export async function saveScenePng(picture: ScenePicture): Promise<boolean> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgText(picture))}`;
  try {
    await image.decode();
  } catch {
    // The caller says so where a browser cannot read its own SVG.
    return false;
  }
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(image.naturalWidth);
  canvas.height = Math.round(image.naturalHeight);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return await savePng(canvas, picture.fileName);
}

/** Gives a canvas to the downloads; false when the browser could not make the file. */
export async function savePng(canvas: HTMLCanvasElement, fileName: string): Promise<boolean> {
  const data = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (data === null) return false;
  download(bikeFileName(fileName, '.png'), data);
  return true;
}
