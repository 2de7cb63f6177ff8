/** The circle that a leaned bike rides at a set angle of its bar, from its geometry alone. */
import { absent } from '../readings/absent.ts';
import { radians } from '../units/convert.ts';
import type { TrialFigure } from './trial-figure.ts';

/** The bar of the sketch is turned by so much, degrees: about what a bend at road speed takes. A choice, no source. */
export const SKETCH_BAR_DEG = 2;

/** What makes the circle: mm and radians. */
export interface Circling {
  readonly wheelbase: number;
  readonly rake: number;
  readonly lean: number;
  readonly bar: number;
}

/**
 * Radius of the circle, mm: wheelbase · cos(lean) / (bar angle · cos(rake)). Kinematic: wheels that roll where they point, small
 * bar angles, no slip of the tyres. At equal bar angle and lean a degree of rake is worth about 0.8 %. No answer without
 * bar angle, where the bike rides straight on: then it is infinite, so ask with a bar angle above zero.
 * Example: wheelbase 1400 mm, rake 24°, lean 40°, bar 2° → 33631.4 mm.
 */
export function circleRadius({ wheelbase, rake, lean, bar }: Circling): number {
  return (wheelbase * Math.cos(lean)) / (bar * Math.cos(rake));
}

/** Radius of the circle at the mid-corner lean with the sketch's bar angle, mm. */
export const cornerRadius: TrialFigure = {
  key: 'cornerRadius',
  label: 'Circle at the same bar and lean',
  quantity: 'circle',
  isChange: false,
  more: 'wider line',
  less: 'tighter line',
  same: 'same line',
  of: ({ setup }, { pose, rake }) => {
    const lean = radians(setup.leanDeg);
    if (!(Math.cos(lean) > 0)) return absent('notCarried');
    return circleRadius({ wheelbase: pose.wheelbase, rake, lean, bar: radians(SKETCH_BAR_DEG) });
  },
};
