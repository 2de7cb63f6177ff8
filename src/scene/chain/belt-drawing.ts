/** A toothed belt as a smooth band over two flanged pulleys. */
import type { Circle } from '../../core/plane/circle.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { drivePlaces, guideShapes, pitchLine } from './chain-drawing.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Drawn thicknesses, mm; they carry no measurement: the band, the pulley's rim inside it, and its flange outside. */
const BAND = 8;
const FLANGE = 9;
const RIM = 9;
const HUB = 26;
const HOLES = 5;

/** Pulleys, guide and band from back to front. */
export function beltDriveShapes(standing: Stance): Shape[] {
  const places = drivePlaces(standing);
  const line = pitchLine(places);
  const band = pen();
  line.forEach((stretch, i) => {
    if (stretch.kind === 'wrap') {
      const { centre, radius, from, sweep } = stretch;
      band.arc(centre.x, centre.y, radius, from, from + sweep);
      return;
    }
    if (i === 0) band.move(stretch.from.x, stretch.from.y);
    band.line(stretch.to.x, stretch.to.y);
  });
  return [
    ...pulley(places.rear, true),
    ...pulley(places.front, false),
    ...guideShapes(standing, BAND / 2),
    ...(line.length === 0 ? [] : [band.close().shape('belt', { widthMm: BAND })]),
  ];
}

/** A pulley: flange, rim and hub, and round holes between them where there is room. */
function pulley({ centre: { x, y }, radius }: Circle, wide: boolean): Shape[] {
  const rim = radius - RIM;
  const shapes = [
    pen()
      .circle(x, y, radius + FLANGE)
      .circle(x, y, rim)
      .shape('sprocket'),
  ];
  const room = (rim - HUB) / 2;
  const disc = pen().circle(x, y, rim);
  if (wide && room > 8)
    for (let i = 0; i < HOLES; i++) {
      const at = (2 * Math.PI * i) / HOLES + Math.PI / 2;
      const middle = HUB + room;
      disc.circle(x + middle * Math.cos(at), y + middle * Math.sin(at), room * 0.62);
    }
  shapes.push(disc.shape('sprocket'), pen().circle(x, y, 12).shape('axle'));
  return shapes;
}
