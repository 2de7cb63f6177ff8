/** The warning about a chain that is bar tight in its travel, by what hands did to it; fetched after the first sight. */
import { machine } from '../core/standing/machine.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { isChainAsBefore } from '../document/chain-as-before.ts';
import type { BikeDocument } from '../document/document.ts';
import { barTightWords } from '../words/trouble/bar-tight-words.ts';
import type { WarningWords } from '../words/trouble/warning-words.ts';

export { withBarTight } from '../words/trouble/bar-tight-words.ts';

/** Null while the chain keeps some slack everywhere. A chain left as it was is judged as it was. */
export function tightChain(present: BikeDocument, style: NumberStyle): WarningWords | null {
  const { bike, setup } = isChainAsBefore(present) ? present.baseline : present;
  const made = machine(bike, setup);
  return made.ok ? barTightWords(bike, made, style) : null;
}
