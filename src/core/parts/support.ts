/** What holds one end of a bike up, as it is sold: a spring with one rate, with two stages or by a table, and air. */

/** One row of a force table: how far the spring is pressed from its free length, mm, and its force then, N. */
export interface ForceRow {
  readonly pressed: number;
  readonly force: number;
}

/**
 * The main spring of one leg or one shock. Its first rate and its preload are adjusters. `inSeries`: two springs end to
 * end, of which each may close; `twoRates`: one spring wound with two rates, as printed; `none`: air alone.
 */
export type MainSpring =
  | { readonly kind: 'oneRate' }
  | {
      readonly kind: 'inSeries';
      /** Rate of the other spring, N/mm. */
      readonly otherRate: number;
      /** How far the first spring and the other can each be pressed before they close, mm; null when not known. */
      readonly firstCloses: number | null;
      readonly otherCloses: number | null;
    }
  | {
      readonly kind: 'twoRates';
      /** Rate from the changeover on, N/mm. */
      readonly secondRate: number;
      /** How far the spring is pressed from its free length where the second rate begins, mm. */
      readonly changeover: number;
    }
  | { readonly kind: 'table'; readonly rows: readonly ForceRow[] }
  | { readonly kind: 'none' };

/** A chamber of air that pulls the end in: it shrinks as the end extends. */
export interface BalanceChamber {
  /** Volume at full extension, ml. */
  readonly volume: number;
  /** Its bore, and the rod that passes through it, mm. */
  readonly bore: number;
  readonly rod: number;
  /** What a gauge shows at full extension, bar. */
  readonly pressure: number;
}

/** Air in one leg or one shock. Its gap and its pressure are adjusters. */
export interface Air {
  /** Inside diameter of the space that the gap is measured in, mm. */
  readonly bore: number;
  /** Outside diameter of what slides into it, mm: the fork’s sliding tube, or the shock’s piston. */
  readonly slidingTube: number;
  /** 1 where the air keeps its temperature, 1.4 where it gives off no heat; one for all ride states. */
  readonly exponent: number;
  /** Steel of the spring that dips into the oil and takes air away at full compression, ml. */
  readonly steelVolume: number;
  readonly balance: BalanceChamber | null;
}

/** What holds one end up in each of its legs or shocks. */
export interface Support {
  readonly spring: MainSpring;
  /** Null where the air is not counted. */
  readonly air: Air | null;
}

/** The other fork leg, where it is not like the first: all of it is of that leg alone. */
export interface OtherLeg extends Support {
  /** N/mm. */
  readonly rate: number;
  /** How far its spring is pressed with the fork topped out, mm. */
  readonly preload: number;
  /** How far its spring can be pressed before its coils touch, mm; null when not known. */
  readonly springTravel: number | null;
  /** mm, with the leg fully compressed and the spring out. */
  readonly airGap: number;
  /** What a gauge shows, topped out, bar. */
  readonly airPressure: number;
}
