/** Why the bike cannot stand and what to change, in words that are fetched after the first sight. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { NoStand } from '../core/riding/no-stand.ts';
import type { BikeSession } from './bike-session.svelte.ts';
import type { Preferences } from './preferences.svelte.ts';
import type { Standing } from './standing.svelte.ts';

/** What is said while the reasons are on their way, or could not be fetched. */
export const CANNOT_STAND = 'The bike cannot stand like this.';

export class Advice {
  readonly #session: BikeSession;
  readonly #standing: Standing;
  readonly #preferences: Preferences;
  #words = $state.raw<typeof import('../words/no-stand-advice.ts') | null>(null);
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
    } catch {
      // The short sentence stays, which is true without reasons.
      this.#words = null;
    }
  }

  /** `adjuster` is the one whose value is in the way; null where none is known. */
  sentence(problem: NoStand, adjuster: AdjusterKey | null): string {
    const { kind } = this.#session.document.bike.drive;
    return this.#words?.noStandAdvice(problem, adjuster, kind, this.#preferences.style) ?? CANNOT_STAND;
  }
}
