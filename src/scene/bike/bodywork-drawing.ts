/** Frame, engine, tank, seat and bodywork: the quiet silhouette that pitches with the frame. */
import type { Bike } from '../../core/parts/bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { engineShapes } from './engine-drawing.ts';
import { pen, type Pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';
import { anchors, type Anchors } from './silhouette-anchors.ts';

/** What lies behind the fork: frame and engine. */
export function frameShapes(standing: Stance, bike: Bike): Shape[] {
  const a = anchors(standing, bike);
  const engine = engineShapes(a, bike.bodywork, standing.machine.driveKind);
  return bike.bodywork === 'faired' ? [...engine, sparFrame(a)] : [...tubeFrame(a), ...engine];
}

/** What lies in front of it: tank, seat, fairing, bars, lamp and mudguards. */
export function bodyShapes(standing: Stance, bike: Bike): Shape[] {
  const a = anchors(standing, bike);
  if (bike.bodywork === 'faired') return fairedBody(a);
  return bike.bodywork === 'naked' ? nakedBody(a) : offRoadBody(a);
}

/** A broad spar from the head to the pivot plate. */
function sparFrame({ place, hx, hy, fx, fy }: Anchors): Shape {
  return pen(place)
    .move(hx - 16, hy - 18)
    .curve(hx - 120, hy - 80, 190, hy * 0.62, 62, 92)
    .curve(46, 40, 44, -20, 38, -78)
    .line(-30, -84)
    .curve(-42, -20, -40, 60, -26, 128)
    .curve(40, hy * 0.6, hx * 0.5, hy * 0.72 + 96, hx - 66, hy - 4)
    .close()
    .move(fx, fy)
    .line(fx - 26, fy + 6)
    .curve(fx - 110, fy - 30, 250, 190, 150, 150)
    .curve(240, 250, hx - 130, hy - 110, hx - 16, hy - 18)
    .close()
    .shape('frame');
}

/** Backbone, down tube, cradle and seat rails as tubes. */
function tubeFrame({ place, hx, hy, fx, fy, sx, sy, cx, cy, lx, ly }: Anchors): Shape[] {
  const bottom = cy - 158;
  return [
    ...tube(
      18,
      pen(place)
        .move(-4, 60)
        .line(sx - 130, sy - 70),
    ),
    ...tube(
      22,
      pen(place)
        .move(60, sy - 66)
        .line(sx - 60, sy - 46, lx - 40, ly - 60),
    ),
    ...tube(
      30,
      pen(place)
        .move(hx - 10, hy - 30)
        .curve(hx - 160, hy - 60, 120, sy - 30, 20, sy - 120)
        .curve(-10, sy - 200, 0, 120, 0, -60),
    ),
    ...tube(
      30,
      pen(place)
        .move(fx - 4, fy + 10)
        .curve(fx - 60, fy - 160, cx + 290, bottom + 60, cx + 210, bottom)
        .line(40, bottom)
        .curve(0, bottom, -6, -120, 0, -60),
    ),
  ];
}

/** Thickness of a tube's drawn edge, mm. */
const TUBE_EDGE = 5;

/** A round tube along a drawn line: its edge, and its metal within. */
function tube(diameter: number, line: Pen): Shape[] {
  return [
    line.shape('tubeEdge', { widthMm: diameter }),
    line.shape('tube', { widthMm: diameter - TUBE_EDGE }),
  ];
}

function fairedBody({ place, hx, hy, sx, sy, cx, cy, lx, ly, fx, fy }: Anchors): Shape[] {
  return [
    // Tail over the rear wheel.
    pen(place)
      .move(sx + 60, sy - 16)
      .line(sx - 60, sy - 8)
      .curve(sx - 120, sy + 10, lx + 60, ly - 20, lx - 10, ly + 14)
      .curve(lx - 80, ly + 34, lx - 150, ly + 36, lx - 176, ly + 30)
      .curve(lx - 120, ly - 10, lx - 20, ly - 60, sx - 20, sy - 118)
      .close()
      .shape('bodywork'),
    pen(place)
      .move(sx + 178, sy + 2)
      .curve(sx + 120, sy - 10, sx + 60, sy - 8, sx, sy)
      .curve(sx - 60, sy + 8, sx - 100, sy + 20, sx - 140, sy + 48)
      .line(sx - 120, sy + 20)
      .curve(sx - 60, sy - 30, sx + 60, sy - 44, sx + 170, sy - 40)
      .close()
      .shape('seat'),
    // Tank.
    pen(place)
      .move(hx - 92, hy + 22)
      .curve(hx - 150, hy + 74, hx - 250, hy + 82, hx - 318, hy + 46)
      .curve(sx + 250, sy + 56, sx + 220, sy + 14, sx + 178, sy + 2)
      .curve(sx + 160, sy - 40, sx + 170, sy - 90, sx + 206, sy - 110)
      .curve(hx - 250, hy - 110, hx - 150, hy - 70, hx - 84, hy - 46)
      .close()
      .shape('bodywork'),
    // Fairing from screen to belly.
    pen(place)
      .move(hx - 62, hy - 26)
      .curve(hx - 40, hy + 60, hx - 10, hy + 130, hx + 26, hy + 190)
      .curve(hx + 110, hy + 150, hx + 190, hy + 60, hx + 232, hy - 44)
      .curve(hx + 180, hy - 104, hx + 110, hy - 140, fx - 10, fy - 10)
      .curve(fx - 60, fy - 130, fx - 120, fy - 220, fx - 140, fy - 330)
      .curve(fx - 170, fy - 440, cx + 330, cy - 232, cx + 190, cy - 236)
      .curve(cx + 90, cy - 240, cx, cy - 236, cx - 70, cy - 214)
      .curve(cx - 40, cy - 170, cx + 30, cy - 150, cx + 100, cy - 132)
      .curve(cx + 190, cy - 104, cx + 200, cy - 20, cx + 186, cy + 60)
      .curve(cx + 180, cy + 190, hx - 200, hy - 150, hx - 62, hy - 26)
      .close()
      .shape('bodywork'),
    // Two vents in its side.
    pen(place)
      .move(cx + 226, cy + 130)
      .curve(cx + 270, cy + 90, cx + 300, cy + 40, cx + 306, cy - 20)
      .move(cx + 262, cy + 160)
      .curve(cx + 310, cy + 120, cx + 344, cy + 60, cx + 352, cy - 6)
      .shape('crease'),
    // Screen, lamp and bar end.
    pen(place)
      .move(hx - 6, hy + 150)
      .curve(hx + 10, hy + 196, hx + 30, hy + 214, hx + 42, hy + 222)
      .curve(hx + 90, hy + 170, hx + 120, hy + 130, hx + 140, hy + 96)
      .close()
      .shape('bodywork'),
    pen(place)
      .move(hx + 150, hy + 18)
      .curve(hx + 176, hy + 6, hx + 204, hy - 10, hx + 222, hy - 36)
      .curve(hx + 190, hy - 40, hx + 160, hy - 30, hx + 136, hy - 12)
      .close()
      .shape('rim'),
    pen(place)
      .move(hx - 4, hy + 14)
      .line(hx - 92, hy + 2)
      .shape('bar', { widthMm: 24 }),
  ];
}

function nakedBody({ place, hx, hy, sx, sy, lx, ly }: Anchors): Shape[] {
  return [
    pen(place)
      .move(sx + 200, sy - 6)
      .curve(sx + 130, sy - 14, sx + 60, sy - 8, sx, sy)
      .curve(sx - 90, sy + 12, lx + 60, ly - 4, lx - 60, ly + 4)
      .curve(lx - 96, ly + 6, lx - 100, ly - 34, lx - 60, ly - 42)
      .line(sx + 30, sy - 56, sx + 196, sy - 44)
      .close()
      .shape('seat'),
    // Tank, a drop with a knee dent.
    pen(place)
      .move(hx - 62, hy - 8)
      .curve(hx - 90, hy + 72, hx - 260, hy + 84, sx + 300, sy + 66)
      .curve(sx + 240, sy + 40, sx + 206, sy + 14, sx + 192, sy - 22)
      .curve(sx + 240, sy - 48, hx - 200, hy - 96, hx - 96, hy - 84)
      .curve(hx - 66, hy - 70, hx - 58, hy - 40, hx - 62, hy - 8)
      .close()
      .shape('bodywork'),
    // Lamp, bar, rear lamp.
    pen(place)
      .circle(hx + 116, hy - 62, 82)
      .shape('bodywork'),
    pen(place)
      .move(hx + 160, hy + 6)
      .curve(hx + 214, hy - 40, hx + 214, hy - 86, hx + 160, hy - 130)
      .close()
      .shape('rim'),
    pen(place)
      .move(hx + 6, hy + 16)
      .curve(hx + 0, hy + 90, hx - 40, hy + 104, hx - 130, hy + 92)
      .shape('bar', { widthMm: 20 }),
    pen(place)
      .move(lx - 84, ly - 30)
      .line(lx - 128, ly - 44, lx - 124, ly - 74, lx - 76, ly - 64)
      .close()
      .shape('bodywork'),
  ];
}

function offRoadBody({ place, hx, hy, sx, sy, cx, cy, lx, ly, fx, fy }: Anchors): Shape[] {
  return [
    // Long flat seat up onto the tank.
    pen(place)
      .move(hx - 190, hy + 20)
      .curve(sx + 160, sy + 20, sx + 60, sy - 2, sx, sy)
      .curve(sx - 90, sy + 4, lx + 60, ly + 2, lx - 20, ly + 12)
      .line(lx - 30, ly - 26)
      .curve(sx - 60, sy - 62, sx + 120, sy - 60, hx - 210, hy - 40)
      .close()
      .shape('seat'),
    // Rear mudguard, long and high.
    pen(place)
      .move(sx - 40, sy - 54)
      .line(lx - 30, ly - 26)
      .curve(lx - 140, ly + 4, lx - 220, ly + 20, lx - 290, ly + 14)
      .curve(lx - 200, ly - 16, lx - 120, ly - 50, lx + 20, ly - 96)
      .close()
      .shape('bodywork'),
    // Tank shroud.
    pen(place)
      .move(hx - 78, hy + 6)
      .curve(hx - 130, hy + 40, hx - 180, hy + 40, hx - 200, hy + 14)
      .curve(sx + 170, sy - 30, sx + 200, sy - 110, sx + 220, sy - 160)
      .line(cx + 270, cy + 160, fx + 40, fy - 70)
      .curve(fx + 20, fy + 30, hx - 50, hy - 60, hx - 78, hy + 6)
      .close()
      .shape('bodywork'),
    // Side panel and number board.
    pen(place)
      .move(sx + 60, sy - 60)
      .line(lx + 30, ly - 50, lx + 70, ly - 170, sx + 10, sy - 210)
      .close()
      .shape('bodywork'),
    pen(place)
      .move(hx + 44, hy + 60)
      .curve(hx + 90, hy + 50, hx + 120, hy - 40, hx + 116, hy - 130)
      .line(hx + 70, hy - 120)
      .curve(hx + 66, hy - 40, hx + 50, hy + 20, hx + 44, hy + 60)
      .close()
      .shape('bodywork'),
    // Bars.
    pen(place)
      .move(hx + 4, hy + 18)
      .curve(hx + 10, hy + 90, hx - 20, hy + 120, hx - 120, hy + 118)
      .shape('bar', { widthMm: 20 }),
    // Skid plate.
    pen(place)
      .move(cx - 40, cy - 150)
      .curve(cx + 140, cy - 190, cx + 240, cy - 150, cx + 290, cy - 60)
      .shape('tubeEdge', { widthMm: 14 }),
  ];
}
