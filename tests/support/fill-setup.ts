/** Setups for tests: what is given, with every other adjuster at its default. */
import { ADJUSTERS, type Row } from '../../src/core/adjusters/all-adjusters.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';

type EssentialKey = Extract<Row, { readonly default: 'essential' }>['key'];

const DEFAULTS = Object.fromEntries(
  ADJUSTERS.flatMap(({ key, default: value }) => (value === 'essential' ? [] : [[key, value]])),
) as Omit<Setup, EssentialKey>;

/** Only what has no default must be given. */
export function fillSetup(given: Pick<Setup, EssentialKey> & Partial<Setup>): Setup {
  return { ...DEFAULTS, ...given };
}
