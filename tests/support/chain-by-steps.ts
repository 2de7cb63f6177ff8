/** A hanging chain integrated step by step along its length, shot from the rear sprocket until it meets the front one. */
import type { Point } from '../../src/core/plane/point.ts';

export interface HungBetween {
  readonly rear: Point;
  readonly front: Point;
  readonly rearRadius: number;
  readonly frontRadius: number;
  readonly rearTeeth: number;
  readonly frontTeeth: number;
  readonly pitch: number;
}

/** Steps along the chain: the fourth-order error is below 1e-11 of it. */
const STEPS = 400;
const ROUNDS = 30;

interface Shot {
  readonly places: readonly Point[];
  /** How far beside the front touching point the chain ends, along and across it, mm. */
  readonly misses: readonly [number, number];
}

/**
 * The chain from the rear sprocket's lower side at `angle`, bending by weight over pull (`bend`, 1/mm): along it the
 * angle grows by bend·cos², from the forces on a small piece in equilibrium. Runge and Kutta's fourth-order steps.
 */
function shot(
  between: HungBetween,
  tautAngle: number,
  tautLength: number,
  spare: number,
  tries: readonly [number, number],
): Shot {
  const [angle, bend] = tries;
  const { rear, front, rearRadius, frontRadius, rearTeeth, frontTeeth, pitch } = between;
  let x = rear.x + rearRadius * Math.sin(angle);
  let y = rear.y - rearRadius * Math.cos(angle);
  let a = angle;
  // The forces at the ends of the free chain give its whole turn; its length depends on what left the wraps.
  let length = tautLength + spare;
  for (let round = 0; round < 60; round++) {
    const end = Math.atan(Math.tan(angle) + bend * length);
    const offWraps = (rearTeeth * (tautAngle - angle) + frontTeeth * (end - tautAngle)) / (2 * Math.PI);
    length = tautLength + spare + pitch * offWraps;
  }
  const h = length / STEPS;
  const places = [{ x, y }];
  const turning = (at: number): number => bend * Math.cos(at) ** 2;
  for (let i = 0; i < STEPS; i++) {
    const k1 = turning(a);
    const k2 = turning(a + (h * k1) / 2);
    const k3 = turning(a + (h * k2) / 2);
    const k4 = turning(a + h * k3);
    const end = a + (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
    const half = a + (h * (5 * k1 + 4 * (k2 + k3) - k4)) / 24;
    x += (h * (Math.cos(a) + 4 * Math.cos(half) + Math.cos(end))) / 6;
    y += (h * (Math.sin(a) + 4 * Math.sin(half) + Math.sin(end))) / 6;
    a = end;
    places.push({ x, y });
  }
  const touch = { x: front.x + frontRadius * Math.sin(a), y: front.y - frontRadius * Math.cos(a) };
  return { places, misses: [x - touch.x, y - touch.y] };
}

/** Places along the chain that hangs with `spare` mm beyond its taut length between two sprockets. */
export function chainBySteps(between: HungBetween, spare: number): readonly Point[] {
  const dx = between.front.x - between.rear.x;
  const dy = between.front.y - between.rear.y;
  const centres = Math.hypot(dx, dy);
  const lean = Math.asin((between.rearRadius - between.frontRadius) / centres);
  const tautAngle = Math.atan2(dy, dx) + lean;
  const tautLength = centres * Math.cos(lean);
  const turn = Math.sqrt((24 * spare) / tautLength);
  let tries: [number, number] = [tautAngle - turn / 2, turn / tautLength];
  for (let round = 0; round < ROUNDS; round++) {
    const { misses } = shot(between, tautAngle, tautLength, spare, tries);
    const [da, db] = [1e-7, 1e-10];
    const byAngle = shot(between, tautAngle, tautLength, spare, [tries[0] + da, tries[1]]).misses;
    const byBend = shot(between, tautAngle, tautLength, spare, [tries[0], tries[1] + db]).misses;
    const j = [
      [(byAngle[0] - misses[0]) / da, (byBend[0] - misses[0]) / db],
      [(byAngle[1] - misses[1]) / da, (byBend[1] - misses[1]) / db],
    ];
    const det = j[0][0] * j[1][1] - j[0][1] * j[1][0];
    tries = [
      tries[0] - (misses[0] * j[1][1] - misses[1] * j[0][1]) / det,
      tries[1] - (misses[1] * j[0][0] - misses[0] * j[1][0]) / det,
    ];
  }
  const found = shot(between, tautAngle, tautLength, spare, tries);
  if (!(Math.hypot(...found.misses) < 1e-6)) throw new Error('The chain does not meet the front sprocket');
  return found.places;
}
