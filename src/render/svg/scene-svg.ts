/** The scene as a standalone SVG document, for files and for print. */
import type { PlotLayer } from '../../scene/plot/plotter.ts';
import type { Scene } from '../../scene/shapes/shape.ts';
import type { Theme } from '../../scene/shapes/theme.ts';
import type { View } from '../../scene/shapes/view.ts';
import { escapeXml } from './escape-xml.ts';
import { SvgPlotter } from './svg-plotter.ts';

export interface SvgPage {
  /** What of the view is on the page; the viewBox. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Read out, and shown by viewers as the picture's name and explanation. */
  readonly title: string;
  readonly description: string;
  /** What its ids begin with, where several pictures stand on one page. */
  readonly idStart?: string;
  /** Lines of small words in a strip below the picture; left out where there are none. */
  readonly note?: readonly string[];
  /** Pixels that the picture takes for each px where its viewer does not choose; 1 when left out. */
  readonly ratio?: number;
  /** Size on paper, mm of paper to each px; without it the picture is as many px large as the view. */
  readonly paperMmPerPx?: number;
}

/** Size of the note's words and height of its lines, px. */
export const NOTE_PX = 11;
export const NOTE_LINE_PX = 15;

/** Height of the strip that a note takes, px. */
export function stripPx(note: readonly string[]): number {
  return note.length === 0 ? 0 : (note.length + 0.5) * NOTE_LINE_PX;
}

/** The same lines and words that the screen shows. `plotLayer` is the scene's; a renderer itself knows lines and words only. */
export function sceneSvg(
  scene: Scene,
  view: View,
  theme: Theme,
  plotLayer: PlotLayer,
  page: SvgPage,
): string {
  const { widthPx, paperMmPerPx, note = [], idStart = '', ratio = 1 } = page;
  const heightPx = page.heightPx + stripPx(note);
  const size = (px: number) => (paperMmPerPx === undefined ? String(ratio * px) : `${px * paperMmPerPx}mm`);
  const parts = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size(widthPx)}" height="${size(heightPx)}"` +
      ` viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-labelledby="${idStart}title ${idStart}description"` +
      ' font-family="system-ui, sans-serif" style="font-variant-numeric: tabular-nums"' +
      ' text-anchor="middle" stroke-linejoin="round">',
    `<title id="${idStart}title">${escapeXml(page.title)}</title>`,
    `<desc id="${idStart}description">${escapeXml(page.description)}</desc>`,
    `<rect width="${widthPx}" height="${heightPx}" fill="${escapeXml(theme.background)}"/>`,
  ];
  for (const layer of scene) {
    if (layer.shapes.length === 0) continue;
    const plotter = new SvgPlotter();
    plotLayer(layer, view, theme, plotter);
    const opacity = layer.ink === 1 ? '' : ` opacity="${layer.ink}"`;
    parts.push(`<g class="${layer.name}"${opacity}>`, ...plotter.elements, '</g>');
  }
  note.forEach((line, i) => {
    const y = page.heightPx + (i + 1) * NOTE_LINE_PX;
    parts.push(
      `<text class="note" x="${NOTE_LINE_PX}" y="${y}" font-size="${NOTE_PX}" text-anchor="start" fill="${escapeXml(theme.labelInk)}">${escapeXml(line)}</text>`,
    );
  });
  parts.push('</svg>', '');
  return parts.join('\n');
}
