/** Link rod: the rod of the rear links made longer or shorter than as drawn. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const linkLength = {
  key: 'linkLength',
  kind: 'part',
  group: 'links',
  label: 'Link rod length',
  holds: 'number',
  part: 'the link rod',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: -15, most: 15, step: 0.5 },
  applies: ({ swingarm: { links } }) => links !== null && links.kind !== 'direct',
  reading: 'seatHeight',
  more: 'longer',
  less: 'shorter',
  help: 'Rod of the rear links longer (+) or shorter (−) than as drawn. Which way raises the rear depends on the links. Only rods made for this bike, both sides alike.',
} as const satisfies NumberDefinition;
