/** Which teeth meet which links: how evenly a pair of sprockets wears with a chain. */

function commonFactor(a: number, b: number): number {
  return b === 0 ? a : commonFactor(b, a % b);
}

/** How often the same tooth and the same link meet, for whole teeth and links above zero. */
export interface HuntingTooth {
  /** Turns of the front sprocket until one of its teeth meets the same link again; the rear sprocket's likewise. */
  readonly frontTurns: number;
  readonly rearTurns: number;
  /** Turns of the rear wheel until a front and a rear tooth stand together as before. */
  readonly pairTurns: number;
  /** Factor that the two sprockets share; 1 spreads wear best. */
  readonly sharedByTeeth: number;
  /** Factors that each sprocket shares with the chain: a tooth meets only every n-th link. */
  readonly frontShared: number;
  readonly rearShared: number;
}

/**
 * A tooth of N meets every link of L in turn when N and L share no factor, after L turns; with a shared factor g it
 * meets only every g-th link, after L/g turns. On an even sprocket with an even chain a tooth meets only inner or
 * only outer links. Plain counting. Null for anything but whole numbers above zero.
 */
export function huntingTooth(frontTeeth: number, rearTeeth: number, links: number): HuntingTooth | null {
  if (![frontTeeth, rearTeeth, links].every((n) => Number.isInteger(n) && n > 0)) return null;
  const frontShared = commonFactor(frontTeeth, links);
  const rearShared = commonFactor(rearTeeth, links);
  const sharedByTeeth = commonFactor(frontTeeth, rearTeeth);
  return {
    frontTurns: links / frontShared,
    rearTurns: links / rearShared,
    pairTurns: frontTeeth / sharedByTeeth,
    sharedByTeeth,
    frontShared,
    rearShared,
  };
}
