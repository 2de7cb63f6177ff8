/** Tyres in words: the three ways to state one, common sizes to pick from, and why one is refused. */
import { tyreDiameter, type Tyre, type TyreReason } from '../../../core/parts/tyre.ts';

export type TyreWay = 'code' | 'diameter' | 'circumference';

export const TYRE_WAYS: readonly { readonly key: TyreWay; readonly label: string }[] = [
  { key: 'code', label: 'Size code' },
  { key: 'diameter', label: 'Outside diameter' },
  { key: 'circumference', label: 'Circumference' },
];

export function wayOf(tyre: Tyre): TyreWay {
  return 'code' in tyre ? 'code' : 'diameter' in tyre ? 'diameter' : 'circumference';
}

/** Two tyres stated alike have the same words. */
export function tyreWords(tyre: Tyre): string {
  return 'code' in tyre
    ? tyre.code
    : 'diameter' in tyre
      ? `diameter ${tyre.diameter}`
      : `circumference ${tyre.circumference}`;
}

const REFUSALS: Readonly<Record<TyreReason, string>> = {
  tyreCodeUnreadable:
    'This size code cannot be read; write it as on the sidewall, such as 120/70-17, or measure the tyre.',
  tyreSizeImpossible: 'No motorcycle has a tyre of that size; check the number and its unit.',
};

/** A sentence against a tyre; null when it can be used. */
export function tyreRefusal(tyre: Tyre): string | null {
  const diameter = tyreDiameter(tyre);
  return diameter.ok ? null : REFUSALS[diameter.reason];
}
