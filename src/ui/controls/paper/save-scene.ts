/** Saving a drawing as a picture: lines that scale (SVG) or pixels (PNG). */
import { bikeFileName } from '../../../storage/file/bike-file-name.ts';
import { download } from '../../../storage/file/download.ts';
import { pictureSvg, type ScenePicture } from './picture-svg.ts';

export function saveSceneSvg(picture: ScenePicture): void {
  const data = new Blob([pictureSvg(picture)], { type: 'image/svg+xml' });
  download(bikeFileName(picture.fileName, '.svg'), data);
}

/** False when the browser could not make the picture. */
export async function saveScenePng(picture: ScenePicture): Promise<boolean> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(pictureSvg(picture))}`;
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
