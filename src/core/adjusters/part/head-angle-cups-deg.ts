/** Head-angle cups: the steering axis tilted in the steering head. */
import { ANY_ANGLE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const headAngleCupsDeg = {
  key: 'headAngleCupsDeg',
  formerly: 'headInsertDeg',
  kind: 'part',
  group: 'steering',
  label: 'Head-angle cups',
  holds: 'number',
  part: 'the head-angle cups',
  quantity: 'angle',
  saved: ANY_ANGLE,
  default: 0,
  range: { least: -3, most: 3, step: 0.25 },
  reading: 'rake',
  more: 'leaned further back',
  less: 'stood up',
  help: 'Steering axis leaned further back (+) or stood up (−) by cups in the steering head [headstock]. A cup that sits loose, or bearings out of line, can make the steering stick: a workshop job.',
} as const satisfies NumberDefinition;
