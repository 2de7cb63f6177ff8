/** A chain's side plates along its pins: every second link an outer plate, joined by lines along the inner ones. */
import type { Point } from '../../core/plane/point.ts';
import { pen } from '../shapes/outline.ts';
import type { PathShape } from '../shapes/shape.ts';

/** Half the height of a chain's side plate, as a part of the pitch (ISO 606 plates are about 0.9 of it high). */
export const PLATE_HALF = 0.32;
/** Inner plates are lower, as a part of the outer ones. */
const INNER = 0.72;

/** The plates between neighbouring pins; `closed` joins the last pin to the first. */
export function chainPlates(pins: readonly Point[], closed: boolean, pitch: number): PathShape {
  const half = PLATE_HALF * pitch;
  const draw = pen();
  const links = closed ? pins.length : pins.length - 1;
  for (let i = 0; i < links; i++) {
    const a = pins[i];
    const b = pins[(i + 1) % pins.length];
    const h = i % 2 === 0 ? half : half * INNER;
    const angle = Math.atan2(b.y - a.y, b.x - a.x);
    const nx = -Math.sin(angle) * h;
    const ny = Math.cos(angle) * h;
    if (i % 2 === 0) {
      draw.move(a.x + nx, a.y + ny).line(b.x + nx, b.y + ny);
      draw.arc(b.x, b.y, h, angle + Math.PI / 2, angle - Math.PI / 2);
      draw.line(a.x - nx, a.y - ny);
      draw.arc(a.x, a.y, h, angle - Math.PI / 2, angle - (3 * Math.PI) / 2);
    } else {
      draw.move(a.x + nx, a.y + ny).line(b.x + nx, b.y + ny);
      draw.move(a.x - nx, a.y - ny).line(b.x - nx, b.y - ny);
    }
  }
  return draw.shape('chain');
}
