/** Acceleration in the ride state “Mid-corner”; below zero it is braking. */
import { ANY_ACCELERATION } from '../parts/bounds.ts';
import type { NumberDefinition } from './adjuster.ts';

export const cornerAcceleration = {
  key: 'cornerAcceleration',
  formerly: 'cornerGas',
  kind: 'riding',
  group: 'riding',
  label: 'Acceleration in mid-corner',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  default: 0,
  range: { least: -0.8, most: 0.8, step: 0.05 },
  more: 'accelerating harder',
  less: 'accelerating less, or braking',
  help: 'Acceleration (+) or deceleration (−) in the ride state “Mid-corner”. The front brake’s share holds for the braking.',
} as const satisfies NumberDefinition;
