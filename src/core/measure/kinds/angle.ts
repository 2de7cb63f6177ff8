/** The angle of a line of the bike, as an angle gauge shows it. */
import { degrees } from '../../units/convert.ts';
import { lineAngle } from './line-angle.ts';
import type { MeasureKind } from '../held/measure-kind.ts';

export const angle = {
  key: 'angle',
  label: 'Angle',
  quantity: 'angle',
  read: 'number',
  takes: [['line']],
  sd: 0.1,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: -120,
  most: 120,
  drawnAs: 'gauge',
  help: 'Zero the gauge on the floor in line with the bike, then lay it along the part. Fork leg: from vertical, leaning back positive. Swingarm: a straight edge from pivot centre to axle centre, below horizontal positive. Chain run, pulled straight, and frame rail: rising forward positive.',
  figure: (held, [line]) => {
    const found = lineAngle(held, line);
    return found === null ? null : degrees(found);
  },
  fromOther: { label: 'from the other reference (both add up to 90°)', turn: (figure) => 90 - figure },
} as const satisfies MeasureKind;
