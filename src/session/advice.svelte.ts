/** Why the bike cannot stand and what it is warned of; the longer reasons are fetched after the first sight. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { NoStand } from '../core/riding/no-stand.ts';
import type { WarningWords } from '../words/trouble/warning-words.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';
import type { WarnedInStates } from './warned-elsewhere.ts';

/** What is said while the reasons are on their way, or could not be fetched. */
export const CANNOT_STAND = 'The bike cannot stand like this.';

const NOT_FETCHED: WarningWords = {
  key: 'notFetched',
  lead: 'Warnings',
  text: 'What to warn of could not be fetched. Connect again and reload the page before you ride this setup.',
  short: 'could not be fetched.',
};

export class Advice {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #preferences: Preferences;
  #late = $state.raw<typeof import('./late-advice.ts') | null>(null);
  #hasFailed = $state(false);
  /** Of the bike as committed: a search through the whole travel at each step of a drag would make the drag stutter. */
  readonly #barTight: WarningWords | null = $derived.by(
    () => this.#late?.tightChain(this.#session.history.present, this.#preferences.style) ?? null,
  );
  readonly #inStates: WarnedInStates = $derived.by(
    () => this.#late?.warnedInStates(this.#session.history.present, this.#preferences.style) ?? [],
  );
  /**
   * What a rider must be warned of, in the state shown and then in the others, the gravest first; empty while the bike
   * does not stand and until what warns has been fetched. That it could not be is a warning.
   */
  readonly warnings: readonly WarningWords[] = $derived.by(() => {
    const { warned } = this.#standing;
    if (this.#hasFailed) return [NOT_FETCHED];
    if (warned === null || this.#late === null) return [];
    const { warningWords, withBarTight, withElsewhere } = this.#late;
    const here = withBarTight(warningWords(warned, this.#preferences.style), this.#barTight);
    return withElsewhere(here, this.#inStates);
  });
  /** The gravest warnings in one line, the worst first; null where there is none. */
  readonly line: string | null = $derived.by(() => this.#late?.warningLine(this.warnings) ?? null);
  /** Null when the bike stands. */
  readonly advice: string | null = $derived.by(() => {
    const { problem, adjusterInTheWay } = this.#standing;
    return problem === null ? null : this.sentence(problem, adjusterInTheWay);
  });

  constructor(session: BikeSession, standing: Standing, preferences: Preferences) {
    this.#session = session;
    this.#standing = standing;
    this.#preferences = preferences;
  }

  async fetch(): Promise<void> {
    try {
      this.#late = await import('./late-advice.ts');
      this.#hasFailed = false;
    } catch {
      this.#hasFailed = true;
    }
  }

  /** `adjuster` is the one whose value is in the way; null where none is known. */
  sentence(problem: NoStand, adjuster: AdjusterKey | null): string {
    const { kind } = this.#session.document.bike.drive;
    return this.#late?.noStandAdvice(problem, adjuster, kind, this.#preferences.style) ?? CANNOT_STAND;
  }
}
