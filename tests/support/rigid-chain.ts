/** A chain of rigid links laid tooth by tooth on two sprockets, with no formula for a wrap or a tangent's length. */
import { pitchRadius } from '../../src/core/drive/sprocket.ts';

/** Two sprockets: front teeth, rear teeth, pitch in mm. */
export interface Teeth {
  readonly front: number;
  readonly rear: number;
  readonly pitch: number;
}

/** A seat of a sprocket: its number counted counter-clockwise and its place. */
interface Seat {
  readonly number: number;
  readonly x: number;
  readonly y: number;
}

/** Seats tried on either side of where a run is expected to leave. */
const NEAR = 4;
/** Room for rounding when a seat lies on the very line of the run, mm. */
const ON_LINE = 1e-9;
const HALVINGS = 55;

/** The seats of a sprocket near an angle; its seat 0 lies at `phase`. */
function seatsNear(centreX: number, teeth: number, radius: number, phase: number, angle: number): Seat[] {
  const middle = Math.round(((angle - phase) * teeth) / (2 * Math.PI));
  return Array.from({ length: 2 * NEAR + 1 }, (_, i) => {
    const number = middle - NEAR + i;
    const at = phase + (2 * Math.PI * number) / teeth;
    return { number, x: centreX + radius * Math.cos(at), y: radius * Math.sin(at) };
  });
}

/** The run from a front to a rear seat that has every other seat on its inner side, and its length in pitches. */
function bridge(front: readonly Seat[], rear: readonly Seat[], pitch: number, side: 1 | -1) {
  for (const from of front)
    for (const to of rear) {
      const dx = to.x - from.x;
      const dy = to.y - from.y;
      const length = Math.hypot(dx, dy);
      const inside = (seat: Seat): boolean =>
        (side * (dx * (seat.y - from.y) - dy * (seat.x - from.x))) / length > -ON_LINE;
      if (front.every(inside) && rear.every(inside))
        return { front: from.number, rear: to.number, pitches: length / pitch };
    }
  throw new Error('No run touches both sprockets from outside');
}

/** Links of the whole loop, and of the way from front seat 0 over the top to rear seat 0. */
function laid(teeth: Teeth, centres: number, frontPhase: number, rearPhase: number) {
  const { front, rear, pitch } = teeth;
  const frontSeats = (angle: number) =>
    seatsNear(centres, front, pitchRadius(front, pitch), frontPhase, angle);
  const rearSeats = (angle: number) => seatsNear(0, rear, pitchRadius(rear, pitch), rearPhase, angle);
  const lean = Math.asin((pitchRadius(rear, pitch) - pitchRadius(front, pitch)) / centres);
  const up = Math.PI / 2 - lean;
  const top = bridge(frontSeats(up), rearSeats(up), pitch, 1);
  const bottom = bridge(frontSeats(-up), rearSeats(2 * Math.PI - up), pitch, -1);
  return {
    overTop: top.front + top.pitches - top.rear,
    whole: top.front - bottom.front + top.pitches + (bottom.rear - top.rear) + bottom.pitches,
  };
}

function halved(low: number, high: number, tooLow: (at: number) => boolean): number {
  let [a, b] = [low, high];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (a + b) / 2;
    if (tooLow(middle)) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/**
 * Centre distance, mm, at which a closed chain of `links` rigid links is taut while the front sprocket stands at
 * `frontPhase` radians: the rear sprocket is turned until the upper run is a whole number of links, and the centres
 * are drawn apart until the loop is.
 */
export function rigidCentres(
  teeth: Teeth,
  links: number,
  frontPhase: number,
  between: readonly [number, number],
): number {
  const step = (2 * Math.PI) / teeth.rear;
  return halved(between[0], between[1], (centres) => {
    const whole = Math.ceil(laid(teeth, centres, frontPhase, 0).overTop);
    // Turning the rear sprocket on by a tooth takes one link more into the way over the top.
    const rearPhase = halved(0, step, (phase) => laid(teeth, centres, frontPhase, phase).overTop < whole);
    return laid(teeth, centres, frontPhase, rearPhase).whole < links;
  });
}
