/** A wheel seen from the side: tyre and rim rings, spokes, brake disc and hub. */
import type { Bodywork } from '../../core/parts/bike.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** How deep the rim looks from the side, mm, and how many spokes of which kind each style of bike has. */
const RIM_DEPTH = 26;
const CAST_SPOKES = 5;
const WIRE_SPOKES = 18;
const HUB_RADIUS = 34;
const AXLE_RADIUS = 11;

export interface WheelDrawing {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly rimRadius: number;
  readonly discRadius: number;
  readonly bodywork: Bodywork;
}

/** The wheel's shapes from back to front, ground frame. */
export function wheelShapes({ x, y, radius, rimRadius, discRadius, bodywork }: WheelDrawing): Shape[] {
  const rim = Math.min(rimRadius, radius * 0.92);
  const inner = Math.max(HUB_RADIUS + 20, rim - RIM_DEPTH);
  const disc = Math.min(discRadius, inner - 8);
  return [
    pen().circle(x, y, radius).circle(x, y, rim).shape('tyre'),
    pen().circle(x, y, rim).circle(x, y, inner).shape('rim'),
    bodywork === 'faired' ? castSpokes(x, y, inner) : wireSpokes(x, y, inner),
    pen().circle(x, y, disc).shape('disc'),
    pen()
      .circle(x, y, disc * 0.72)
      .shape('disc'),
    pen().circle(x, y, HUB_RADIUS).shape('rim'),
    pen().circle(x, y, AXLE_RADIUS).shape('axle'),
  ];
}

function castSpokes(x: number, y: number, inner: number): Shape {
  const draw = pen();
  for (let i = 0; i < CAST_SPOKES; i++) {
    const middle = Math.PI / 2 + (2 * Math.PI * i) / CAST_SPOKES;
    const at = (radius: number, angle: number): [number, number] => [
      x + radius * Math.cos(middle + angle),
      y + radius * Math.sin(middle + angle),
    ];
    draw
      .move(...at(HUB_RADIUS, -0.4))
      .line(...at(inner, -0.1), ...at(inner, 0.1), ...at(HUB_RADIUS, 0.4))
      .close();
  }
  return draw.shape('rim');
}

function wireSpokes(x: number, y: number, inner: number): Shape {
  const draw = pen();
  for (let i = 0; i < WIRE_SPOKES; i++) {
    const at = (2 * Math.PI * i) / WIRE_SPOKES;
    const root = at + (i % 2 === 0 ? 0.9 : -0.9);
    draw
      .move(x + HUB_RADIUS * Math.cos(root), y + HUB_RADIUS * Math.sin(root))
      .line(x + inner * Math.cos(at), y + inner * Math.sin(at));
  }
  return draw.shape('spoke');
}
