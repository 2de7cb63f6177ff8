/** What else has to be known of an adjuster's figure, beside its field; fetched after the first sight. */
import type { AdjusterKey } from '../../core/adjusters/setup.ts';
import { hasRuns } from '../../core/parts/drive-kind.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { Chain } from '../../session/tabs/chain.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import { slackNowNote } from '../../words/drive/chain-words.ts';

/** Null where the figure says it all. */
export function adjusterNote(key: AdjusterKey, bench: Workbench): string | null {
  const { bike, setup, baseline } = bench.session.document;
  const { kind } = bike.drive;
  const { loop, units } = driveNoun(kind);
  const links = hasRuns(kind) ? setup.chainLinks : null;
  switch (key) {
    case 'axlePosition':
      return links === null
        ? null
        : `Follows the ${loop} of ${links} ${units}. When you set it here, the axle no longer follows the ${loop}.`;
    case 'frontTeeth':
    case 'rearTeeth':
      return links === null && setup.axlePosition === baseline.setup.axlePosition
        ? `The axle stays in its place. In Sprockets it follows the ${loop}.`
        : null;
    case 'chainSlack': {
      const { slackNow, slackSet } = bench.stateOf(Chain);
      return slackNowNote(slackNow, slackSet, bench.preferences.style);
    }
    case 'forkSpringRate':
      return 'The rate of one spring, not of both legs together.';
    default:
      return null;
  }
}
