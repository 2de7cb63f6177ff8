/** The rear tyre. */
import type { TyreDefinition } from '../definition/adjuster.ts';

export const rearTyre = {
  key: 'rearTyre',
  kind: 'part',
  group: 'wheels',
  label: 'Rear tyre',
  holds: 'tyre',
  part: 'the rear tyre',
  default: 'essential',
  moves: { end: 'rear', more: 'up' },
  more: 'larger',
  less: 'smaller',
  help: 'Size code from the tyre’s [tire’s] sidewall, or the outside diameter, or the way round the tread, measured with the wheel off the floor. Measured is better.',
} as const satisfies TyreDefinition;
