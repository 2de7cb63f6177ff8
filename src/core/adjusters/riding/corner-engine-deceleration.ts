/** What the engine alone slows the bike by in the ride state “Mid-corner”, throttle closed. */
import { ANY_ACCELERATION } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const cornerEngineDeceleration = {
  key: 'cornerEngineDeceleration',
  kind: 'riding',
  group: 'riding',
  label: 'Engine braking in mid-corner',
  holds: 'number',
  quantity: 'acceleration',
  saved: ANY_ACCELERATION,
  default: 0,
  range: { least: 0, most: 0.5, step: 0.01 },
  reading: 'rearTravel',
  more: 'harder',
  less: 'gentler',
  help: 'What the engine alone slows the bike by in the ride state “Mid-corner”, throttle closed. Zero with the throttle held.',
} as const satisfies NumberDefinition;
