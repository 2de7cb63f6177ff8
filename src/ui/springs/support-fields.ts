/** The figures of a spring and of air as lists from which a form is made. */
import { ANY_PRESSURE, ANY_RATE, ANY_VOLUME, type SavedBounds } from '../../core/parts/bounds.ts';
import type { MainSpring, Support } from '../../core/parts/support.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { length, rate } from '../../document/fields/bounds.ts';

export interface SupportField {
  /** From the support down, such as `spring.otherRate`. */
  readonly path: string;
  readonly label: string;
  readonly value: number | null;
  readonly bounds: SavedBounds & { readonly quantity: QuantityKey };
  readonly step: number;
  /** The figure that stands in as it comes to be known; left out where it is always known. */
  readonly ifKnown?: number;
}

const pressure = { ...ANY_PRESSURE, quantity: 'pressure' } as const;
const volume = { ...ANY_VOLUME, quantity: 'volume' } as const;
const exponent = { least: 1, most: 2, quantity: 'ratio' } as const;

const mm = (path: string, label: string, value: number): SupportField => ({
  path,
  label,
  value,
  bounds: length,
  step: 1,
});
const perMm = (path: string, label: string, value: number): SupportField => ({
  path,
  label,
  value,
  bounds: { ...ANY_RATE, ...rate },
  step: 0.5,
});

/** A spring in series begins to be known to close here, and one alone to be coil-bound here, mm. */
const CLOSES = 60;
const COIL_BOUND = 150;

/** Of the other fork leg alone, since the first leg has its own under Edit: how far its spring can be compressed. */
export function coilBoundField(springTravel: number | null): SupportField {
  return {
    ...mm('springTravel', 'Spring is coil-bound after', 0),
    value: springTravel,
    ifKnown: COIL_BOUND,
  };
}

export function springFields(spring: MainSpring): readonly SupportField[] {
  switch (spring.kind) {
    case 'inSeries':
      return [
        perMm('spring.otherRate', 'Rate of the second spring', spring.otherRate),
        {
          ...mm('spring.firstCloses', 'First spring coil-bound after', 0),
          value: spring.firstCloses,
          ifKnown: CLOSES,
        },
        {
          ...mm('spring.otherCloses', 'Second spring coil-bound after', 0),
          value: spring.otherCloses,
          ifKnown: CLOSES,
        },
      ];
    case 'twoRates':
      return [
        perMm('spring.secondRate', 'Second rate', spring.secondRate),
        mm('spring.changeover', 'Second rate begins after', spring.changeover),
      ];
    default:
      return [];
  }
}

/** Sizes that everyone has to give. */
export function airFields({ air }: Support, of: 'fork' | 'shock'): readonly SupportField[] {
  if (air === null) return [];
  const slides = of === 'fork' ? 'Sliding tube, outside diameter' : 'Piston, outside diameter';
  return [
    mm('air.bore', 'Air space, inside diameter', air.bore),
    mm('air.slidingTube', slides, air.slidingTube),
  ];
}

/** What most leave as it is. */
export function furtherAirFields({ air }: Support): readonly SupportField[] {
  if (air === null) return [];
  const { balance } = air;
  const own: SupportField[] = [
    { path: 'air.exponent', label: 'Air exponent', value: air.exponent, bounds: exponent, step: 0.05 },
    {
      path: 'air.steelVolume',
      label: 'Steel of the spring in it',
      value: air.steelVolume,
      bounds: volume,
      step: 5,
    },
  ];
  if (balance === null) return own;
  return [
    ...own,
    {
      path: 'air.balance.volume',
      label: 'Balance chamber, topped out',
      value: balance.volume,
      bounds: volume,
      step: 5,
    },
    mm('air.balance.bore', 'Balance chamber, inside diameter', balance.bore),
    mm('air.balance.rod', 'Rod through it', balance.rod),
    {
      path: 'air.balance.pressure',
      label: 'Balance pressure',
      value: balance.pressure,
      bounds: pressure,
      step: 0.1,
    },
  ];
}
