/** The saved fields of a setup: one for each adjuster, made from its definition. */
import { ADJUSTERS, type Adjuster } from '../../core/adjusters/all-adjusters.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { CHAIN, nameDrive } from '../../core/parts/drive-noun.ts';
import {
  documented,
  essential,
  numberField,
  numberOrNone,
  part,
  type Described,
  type Fields,
  type Leaf,
} from './field.ts';
import { tyreField } from './tyre-field.ts';

/** A file names chain and links whatever the drive: its words are those of a chain. */
function describe({ label, help }: Adjuster): Described {
  const title = nameDrive(label, CHAIN);
  return { title, words: `adjuster “${title}”`, help: nameDrive(help, CHAIN) };
}

function fieldOf(adjuster: Adjuster): Leaf<Setup[Adjuster['key']]> {
  const described = describe(adjuster);
  switch (adjuster.holds) {
    case 'number':
    case 'wholeNumber': {
      const { saved, quantity, holds, default: value, belowLeast } = adjuster;
      const absent = value === 'essential' ? essential : documented(value);
      return numberField(described, absent, {
        ...saved,
        quantity,
        whole: holds === 'wholeNumber',
        belowIsLeast: belowLeast !== undefined,
      });
    }
    case 'wholeNumberOrNone':
      return numberOrNone(described, { ...adjuster.saved, quantity: adjuster.quantity, whole: true });
    case 'tyre':
      return tyreField(described, essential);
  }
}

// The list of adjusters types the setup, so a field for each of the list is a field for each of the setup.
const FIELDS = Object.fromEntries(
  ADJUSTERS.map((adjuster) => [adjuster.key, fieldOf(adjuster)]),
) as unknown as Fields<Setup>;

export const SETUP_PART = part<Setup>('setup', 'Where every adjuster stands.', FIELDS);
