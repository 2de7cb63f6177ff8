/** Why the bike cannot stand and what it is warned of; the longer reasons are fetched after the first sight. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { NoStand } from '../core/riding/no-stand.ts';
import { warningWords, type WarningWords } from '../words/warning-words.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';
import type { WarnedInStates } from './warned-elsewhere.ts';

/** What is said while the reasons are on their way, or could not be fetched. */
export const CANNOT_STAND = 'The bike cannot stand like this.';

export class Advice {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #preferences: Preferences;
  #words = $state.raw<typeof import('../words/no-stand-advice.ts') | null>(null);
  #tightWords = $state.raw<typeof import('./tight-chain.ts') | null>(null);
  #elsewhere = $state.raw<typeof import('./warned-elsewhere.ts') | null>(null);
  /** Of the bike that no hand holds: searching the whole travel with each step of a drag would make it stutter. */
  readonly #barTight: WarningWords | null = $derived.by(
    () => this.#tightWords?.tightChain(this.#session.history.present, this.#preferences.style) ?? null,
  );
  readonly #inStates: WarnedInStates = $derived.by(
    () => this.#elsewhere?.warnedInStates(this.#session.history.present, this.#preferences.style) ?? [],
  );
  /** What a rider must be warned of, in the state shown and then in the others, the gravest first; empty while the bike does not stand. */
  readonly warnings: readonly WarningWords[] = $derived.by(() => {
    const { warned } = this.#standing;
    if (warned === null) return [];
    const others = warningWords(warned, this.#preferences.style);
    const here = this.#tightWords?.withBarTight(others, this.#barTight) ?? others;
    return this.#elsewhere?.withElsewhere(here, this.#inStates) ?? here;
  });
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
      this.#words = await import('../words/no-stand-advice.ts');
      this.#tightWords = await import('./tight-chain.ts');
      this.#elsewhere = await import('./warned-elsewhere.ts');
    } catch {
      // The short sentence stays, which is true without reasons; *Chain* still tells of a tight chain.
    }
  }

  /** `adjuster` is the one whose value is in the way; null where none is known. */
  sentence(problem: NoStand, adjuster: AdjusterKey | null): string {
    const { kind } = this.#session.document.bike.drive;
    return this.#words?.noStandAdvice(problem, adjuster, kind, this.#preferences.style) ?? CANNOT_STAND;
  }
}
