/** A drawing to save, and its SVG of the size chosen, with what it is and the caution below it. */
import { sceneSvg } from '../../../render/svg/scene-svg.ts';
import { plotLayer } from '../../../scene/plot/plot.ts';
import type { Scene } from '../../../scene/shapes/shape.ts';
import { findTheme, type ThemeName } from '../../../scene/shapes/theme.ts';
import type { View } from '../../../scene/shapes/view.ts';
import { pictureNote } from './picture-note.ts';

/** Size of a chart that is saved, and of its words, px. */
export const CHART_PICTURE = { widthPx: 960, heightPx: 540, textPx: 14 } as const;

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

export function pictureSvg(picture: ScenePicture): string {
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
