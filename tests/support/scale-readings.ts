/** What scales under a bike's wheels show, level and with one axle raised: its parts turned as points, moments summed. */
import type { Point } from '../../src/core/plane/point.ts';
import type { CarriedMass } from '../../src/core/standing/carried-masses.ts';
import type { Stance } from '../../src/core/standing/stance.ts';

export interface Raising {
  readonly first: 'wheelsLevel' | 'axlesLevel';
  readonly raised: 'front' | 'rear';
  readonly read: 'front' | 'rear';
  readonly turnDeg: number;
}

export interface ScaleReadings {
  readonly front: number;
  readonly rear: number;
  readonly lift: number;
  readonly raisedReading: number;
}

interface Part extends Point {
  readonly mass: number;
}

/** The parts of a bike with nobody and nothing on it, the fuel of its machine included; ground frame, wheels level. */
function partsOf(on: Stance): Part[] {
  const { machine, pose } = on;
  const inFrame = ({ mass, at: { x, y } }: CarriedMass): Part => ({
    mass,
    x: pose.pivot.x + x * pose.cos - y * pose.sin,
    y: pose.pivot.y + x * pose.sin + y * pose.cos,
  });
  return [
    ...machine.carried.filter(({ aboard }) => !aboard).map(inFrame),
    { mass: machine.frontUnsprung, x: on.frontAxle.x, y: on.frontAxle.y },
    { mass: machine.rearUnsprung, x: on.rearAxle.x, y: on.rearAxle.y },
  ];
}

/** Scale readings in kg and the lift in mm of a bike held as it stands. */
export function scaleReadings(on: Stance, { first, raised, read, turnDeg }: Raising): ScaleReadings {
  const parts = partsOf(on);
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const rise = on.frontAxle.y - on.rearAxle.y;
  const turned = (p: Point, turn: number): Point => {
    const dx = p.x - on.rearAxle.x;
    const dy = p.y - on.rearAxle.y;
    return { x: dx * Math.cos(turn) - dy * Math.sin(turn), y: dx * Math.sin(turn) + dy * Math.cos(turn) };
  };
  const frontAxle = on.frontAxle;
  // Each wheel presses straight below its axle.
  const frontLoad = (turn: number): number =>
    parts.reduce((sum, part) => sum + part.mass * turned(part, turn).x, 0) / turned(frontAxle, turn).x;
  const level = first === 'axlesLevel' ? -Math.atan2(rise, on.frontAxle.x - on.rearAxle.x) : 0;
  const tilted = level + ((raised === 'front' ? 1 : -1) * turnDeg * Math.PI) / 180;
  const front = frontLoad(level);
  const then = frontLoad(tilted);
  return {
    front,
    rear: mass - front,
    lift: Math.abs(turned(frontAxle, tilted).y - turned(frontAxle, level).y),
    raisedReading: read === 'front' ? then : mass - then,
  };
}

/** The mass of a bike with nobody and nothing on it, and its centre by the same parts, ground frame. */
export function wholeOf(on: Stance): { readonly mass: number; readonly x: number; readonly y: number } {
  const parts = partsOf(on);
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const mean = (of: (part: Part) => number): number =>
    parts.reduce((sum, part) => sum + part.mass * of(part), 0) / mass;
  return { mass, x: mean((part) => part.x), y: mean((part) => part.y) };
}
