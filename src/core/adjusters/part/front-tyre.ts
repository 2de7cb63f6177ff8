/** The front tyre. */
import type { TyreDefinition } from '../definition/adjuster.ts';

export const frontTyre = {
  key: 'frontTyre',
  kind: 'part',
  group: 'wheels',
  label: 'Front tyre',
  holds: 'tyre',
  part: 'the front tyre',
  default: 'essential',
  moves: { end: 'front', more: 'up' },
  more: 'larger',
  less: 'smaller',
  help: 'Size code from the tyre’s [tire’s] sidewall, or the outside diameter, or the way round the tread, measured with the wheel off the floor. Measured is better.',
} as const satisfies TyreDefinition;
