/** Laying words on the screen: a backing, a bar in the colour of what they name, and a line back to it. */
import type { Point } from '../../core/plane/point.ts';
import { labelBox, type Box } from '../shapes/label-placing.ts';
import { solid } from './plot-path.ts';
import type { Plotter } from './plotter.ts';
import type { LabelShape, LabelSpot } from '../shapes/shape.ts';
import type { Theme } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

/** Rounding of the backing's corners and width of the bar, px. */
const CORNER = 4;
const BAR = 2.5;
/** From the middle of a line of words down to what the letters stand on, as a part of the text size. */
const STANDS_BELOW = 0.35;

/**
 * Names of areas are bold and stand on their area without a backing, unless the label has one; those of a chart's
 * axes stand beside it, plain; other words get a backing.
 */
export function plotLabel(label: LabelShape, theme: Theme, view: View, plotter: Plotter): void {
  const { stroke, fill } = theme.roles[label.role];
  const colour = stroke ?? fill ?? theme.labelInk;
  const screen = toScreen(view, label.at);
  const box = labelBox(label.text, label.sizePx, label.spot, screen, label.shiftPx);
  const ofArea = label.role === 'zoneName';
  const bare = ofArea || label.role === 'axisName';
  if (label.leader) plotLeader(screen, box, colour, plotter);
  if (!bare || label.backed) {
    roundedBox(box, plotter);
    plotter.paint(solid(theme.labelBacking));
  }
  if (!bare) plotBar(box, label.spot, colour, plotter);
  plotter.words({
    text: label.text,
    xPx: (box.left + box.right + (bare ? 0 : label.spot === 'left' ? -BAR : BAR)) / 2,
    yPx: (box.top + box.bottom) / 2 + STANDS_BELOW * label.sizePx,
    sizePx: label.sizePx,
    bold: ofArea,
    colour: bare ? colour : theme.labelInk,
  });
}

function roundedBox({ left, top, right, bottom }: Box, plotter: Plotter): void {
  const r = Math.min(CORNER, (bottom - top) / 2, (right - left) / 2);
  const quarter = Math.PI / 2;
  plotter.begin();
  plotter.move(left + r, top);
  plotter.arc(right - r, top + r, r, -quarter, 0);
  plotter.arc(right - r, bottom - r, r, 0, quarter);
  plotter.arc(left + r, bottom - r, r, quarter, 2 * quarter);
  plotter.arc(left + r, top + r, r, 2 * quarter, 3 * quarter);
  plotter.close();
}

/** The bar stands at the edge that faces the named place, at the left one of words above or below it. */
function plotBar(box: Box, spot: LabelSpot, colour: string, plotter: Plotter): void {
  const left = spot === 'left' ? box.right - BAR : box.left;
  const top = box.top + CORNER;
  const bottom = box.bottom - CORNER;
  plotter.begin();
  plotter.move(left, top);
  plotter.line(left + BAR, top);
  plotter.line(left + BAR, bottom);
  plotter.line(left, bottom);
  plotter.close();
  plotter.paint(solid(colour));
}

/** From the place to the nearest spot on the box. */
function plotLeader(place: Point, box: Box, colour: string, plotter: Plotter): void {
  plotter.begin();
  plotter.move(place.x, place.y);
  plotter.line(
    Math.min(box.right, Math.max(box.left, place.x)),
    Math.min(box.bottom, Math.max(box.top, place.y)),
  );
  plotter.paint({ fill: null, fillRule: 'nonZero', stroke: colour, widthPx: 1, dashPx: [], ends: 'flat' });
}
