/** Length of an open chain round two sprockets: centre distance to links and back, exact and by the handbook's form. */
import type { ChainLoop } from './chain-loop.ts';

/** Least distance of the centres at which the pitch circles do not overlap, mm. */
export function leastCentres(loop: ChainLoop): number {
  return loop.rearRadius + loop.frontRadius;
}

/**
 * Links of a taut chain round two sprockets whose centres are `centres` mm apart; in general no whole number. Two
 * straight runs along the common outer tangents, in pitches; wrapped links are counted in teeth, N·wrap/2π, because
 * a link on a sprocket is a chord and not an arc. For centres beyond leastCentres.
 */
export function linksAround(loop: ChainLoop, centres: number): number {
  const { pitch, frontTeeth, rearTeeth, frontRadius, rearRadius } = loop;
  const difference = rearRadius - frontRadius;
  const run = Math.sqrt(centres * centres - difference * difference);
  const wedge = Math.asin(difference / centres);
  return (2 * run) / pitch + (rearTeeth + frontTeeth) / 2 + ((rearTeeth - frontTeeth) * wedge) / Math.PI;
}

/** Links gained per mm of centre distance; above zero wherever the sprockets do not overlap. */
export function linksPerMm(loop: ChainLoop, centres: number): number {
  const { pitch, frontTeeth, rearTeeth, frontRadius, rearRadius } = loop;
  const difference = rearRadius - frontRadius;
  const run = Math.sqrt(centres * centres - difference * difference);
  const turned = ((rearTeeth - frontTeeth) * difference) / (Math.PI * centres);
  return ((2 * centres) / pitch - turned) / run;
}

/** The centre distance at which a chain is taut, with how well and how quickly it was found. */
export interface Centres {
  readonly ok: true;
  readonly centres: number;
  /** Links still missing at this distance: rounding. */
  readonly residual: number;
  readonly rounds: number;
}

/** Why a chain of so many links cannot be laid taut, with what would be the least. */
export interface NoCentres {
  readonly ok: false;
  readonly reason: 'tooShortToClose' | 'notANumber' | 'notConverged';
  /** Links of the shortest chain that goes round with the pitch circles touching; in general no whole number. */
  readonly leastLinks: number;
  readonly residual: number;
}

/** Step of the centre distance, in parts of it, at which Newton has reached the rounding of the numbers. */
const LEAST_STEP = 1e-15;
const MOST_ROUNDS = 60;

/**
 * Centre distance, mm, at which a chain of `links` links (whole or not) is taut: linksAround turned round, by
 * Newton's method held between two places that enclose the answer. Refused when the chain is too short to go
 * round two sprockets that just do not overlap.
 */
export function centresFor(loop: ChainLoop, links: number): Centres | NoCentres {
  const closest = leastCentres(loop);
  const leastLinks = linksAround(loop, closest);
  if (!Number.isFinite(links) || !Number.isFinite(leastLinks))
    return { ok: false, reason: 'notANumber', leastLinks: 0, residual: 0 };
  const short = leastLinks - links;
  if (short >= 0) return { ok: false, reason: 'tooShortToClose', leastLinks, residual: short };
  // Half the chain laid straight is further than any loop over wheels can reach.
  let low = closest;
  let high = (links * loop.pitch) / 2;
  let at = Math.max(low, Math.min(high, handbookCentres(loop, links) ?? (low + high) / 2));
  let residual = 0;
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    residual = links - linksAround(loop, at);
    if (residual > 0) low = at;
    else high = at;
    const newton = at + residual / linksPerMm(loop, at);
    const next = newton >= low && newton <= high ? newton : (low + high) / 2;
    if (Math.abs(next - at) <= LEAST_STEP * at || residual === 0)
      return { ok: true, centres: at, residual, rounds };
    at = next;
  }
  // Two neighbouring numbers can take turns for ever; then either is the answer.
  if (Math.abs(residual) <= ROUNDING_LINKS * links)
    return { ok: true, centres: at, residual, rounds: MOST_ROUNDS };
  return { ok: false, reason: 'notConverged', leastLinks, residual };
}

/** Residual that is rounding, in parts of the links asked for. */
const ROUNDING_LINKS = 1e-13;

/**
 * The handbook's length in links, for comparison: 2C + (N + n)/2 + ((N − n)/2π)²/C with C the centre distance in
 * pitches. An approximation: the runs are taken short by a series and the wraps as if the pitch circle were N·p
 * round. Source: V. B. Bhandari, Design of Machine Elements, chain drives.
 */
export function handbookLinks(loop: ChainLoop, centres: number): number {
  const { pitch, frontTeeth, rearTeeth } = loop;
  const inPitches = centres / pitch;
  const spread = (rearTeeth - frontTeeth) / (2 * Math.PI);
  return 2 * inPitches + (rearTeeth + frontTeeth) / 2 + (spread * spread) / inPitches;
}

/**
 * The handbook's centre distance in mm for a number of links, handbookLinks turned round in closed form; null when
 * the chain is too short for that form. Same source.
 */
export function handbookCentres(loop: ChainLoop, links: number): number | null {
  const { pitch, frontTeeth, rearTeeth } = loop;
  const straight = links - (rearTeeth + frontTeeth) / 2;
  const spread = (rearTeeth - frontTeeth) / (2 * Math.PI);
  const square = straight * straight - 8 * spread * spread;
  return square >= 0 && straight > 0 ? (pitch * (straight + Math.sqrt(square))) / 4 : null;
}
