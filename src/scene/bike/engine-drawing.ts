/** Engine and exhaust, or the battery of a bike with a hub motor: quiet parts that make the silhouette a motorcycle; they carry no measurement. */
import type { Bodywork } from '../../core/parts/bike.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';
import type { Anchors } from './silhouette-anchors.ts';

/** Cooling fins of an air-cooled cylinder. */
const FINS = 7;
/** Ribs of a battery's case. */
const RIBS = 9;

export function engineShapes(anchors: Anchors, bodywork: Bodywork, kind: DriveKind): Shape[] {
  if (kind === 'hub') return battery(anchors);
  const { place, cx, cy, fx, fy } = anchors;
  const width = Math.max(200, fx - cx - 100);
  const top = Math.max(cy + 90, fy - 90);
  const crankcase = pen(place)
    .move(cx - 52, cy - 10)
    .curve(cx - 50, cy + 52, cx - 10, cy + 66, cx + 50, cy + 62)
    .line(cx + width * 0.84, cy + 46)
    .curve(cx + width * 0.96, cy + 20, cx + width * 0.96, cy - 84, cx + width * 0.8, cy - 122)
    .line(cx + 30, cy - 136)
    .curve(cx - 24, cy - 132, cx - 50, cy - 84, cx - 52, cy - 10)
    .close()
    .shape('engine');
  return [
    ...exhaust(anchors, bodywork, width),
    ...cylinder(anchors, bodywork, width, top),
    crankcase,
    pen(place)
      .circle(cx + width * 0.58, cy - 34, 62)
      .circle(cx + width * 0.58, cy - 34, 46)
      .shape('engine'),
    pen(place)
      .circle(cx + width * 0.28, cy - 50, 40)
      .shape('engine'),
  ];
}

/** A ribbed box in the engine's place. */
function battery({ place, cx, cy, fx, fy }: Anchors): Shape[] {
  const left = cx - 40;
  const right = cx - 40 + Math.max(240, (fx - cx) * 0.86);
  const top = Math.max(cy + 110, fy - 60);
  const bottom = cy - 140;
  const ribs = pen(place);
  for (let i = 1; i <= RIBS; i++) {
    const x = left + (i * (right - left)) / (RIBS + 1);
    ribs.move(x, bottom + 26).line(x, top - 26);
  }
  return [
    pen(place)
      .move(left, bottom + 20)
      .curve(left, bottom, left, bottom, left + 20, bottom)
      .line(right - 20, bottom)
      .curve(right, bottom, right, bottom, right, bottom + 20)
      .line(right, top - 20)
      .curve(right, top, right, top, right - 20, top)
      .line(left + 20, top)
      .curve(left, top, left, top, left, top - 20)
      .close()
      .shape('engine'),
    ribs.shape('crease'),
  ];
}

function cylinder({ place, cx, cy }: Anchors, bodywork: Bodywork, width: number, top: number): Shape[] {
  const left = cx + width * 0.4;
  const right = cx + width * 0.8;
  const lean = 18;
  const body = pen(place)
    .move(left, cy + 50)
    .line(left + lean, top, right + lean * 1.6, top - 10, right + 6, cy + 44)
    .close()
    .shape('engine');
  if (bodywork === 'faired') return [body];
  const fins = pen(place);
  for (let i = 1; i <= FINS; i++) {
    const part = i / (FINS + 1);
    const y = cy + 50 + part * (top - cy - 50);
    fins.move(left + lean * part - 10, y).line(right + lean * part + 16, y - 10);
  }
  return [body, fins.shape('crease')];
}

function exhaust({ place, cx, cy, lx, ly }: Anchors, bodywork: Bodywork, width: number): Shape[] {
  const portX = cx + width * 0.86;
  const portY = cy + 90;
  const low = cy - 168;
  const pipe = (end: (draw: ReturnType<typeof pen>) => ReturnType<typeof pen>): Shape[] => {
    const line = end(pen(place).move(portX, portY));
    return [line.shape('tubeEdge', { widthMm: 40 }), line.shape('tube', { widthMm: 34 })];
  };
  if (bodywork === 'offRoad') {
    const back = { x: lx + 40, y: ly - 110 };
    return [
      ...pipe((draw) => draw.curve(portX + 90, portY + 20, portX + 30, portY - 160, cx + 60, cy + 40)),
      pen(place)
        .move(back.x + 190, back.y - 66)
        .line(back.x - 40, back.y - 2, back.x - 46, back.y + 46, back.x + 180, back.y - 6)
        .close()
        .shape('rim'),
    ];
  }
  const rise = bodywork === 'faired' ? 130 : 46;
  const from = { x: -120, y: low + 40 };
  const to = { x: -470, y: low + 40 + rise };
  return [
    ...pipe((draw) =>
      draw
        .curve(portX + 110, portY - 30, portX + 70, low, cx + width * 0.5, low)
        .line(40, low)
        .curve(-40, low, -80, low + 10, from.x, from.y),
    ),
    pen(place)
      .move(from.x + 24, from.y + 26)
      .line(to.x, to.y + 44)
      .curve(to.x - 14, to.y + 20, to.x - 14, to.y - 20, to.x, to.y - 36)
      .line(from.x + 10, from.y - 34)
      .close()
      .shape('rim'),
  ];
}
