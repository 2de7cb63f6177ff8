/** Whole links: which chains can be joined, and which of them lie near a length. */

/** Whether a half link may join an odd number of links; without one only even numbers close. */
export interface LinkRule {
  readonly halfLink: boolean;
}

/** Most links of a chain that a motorcycle can carry; a longer one is a typing error. */
export const MOST_LINKS = 400;

const stepOf = (rule: LinkRule): number => (rule.halfLink ? 1 : 2);

/** Parts of a link within which a length counts as whole: rounding, far below any chain's tolerance. */
const WHOLE = 1e-9;

/** Whether a chain of this many links can be joined. */
export function linksPossible(links: number, rule: LinkRule): boolean {
  return Number.isInteger(links) && links > 0 && links <= MOST_LINKS && links % stepOf(rule) === 0;
}

/** The shortest chain that can be joined and is no shorter than `length` links. */
export function linksFrom(length: number, rule: LinkRule): number {
  const step = stepOf(rule);
  return step * Math.ceil((length - WHOLE) / step);
}

/** The longest chain that can be joined and is no longer than `length` links. */
export function linksUpTo(length: number, rule: LinkRule): number {
  const step = stepOf(rule);
  return step * Math.floor((length + WHOLE) / step);
}

/** Every chain that can be joined between two lengths, shortest first; none when no whole one lies between. */
export function linksBetween(least: number, most: number, rule: LinkRule): number[] {
  const found: number[] = [];
  if (!Number.isFinite(least) || !Number.isFinite(most)) return found;
  const last = Math.min(linksUpTo(most, rule), MOST_LINKS);
  for (let links = linksFrom(least, rule); links <= last; links += stepOf(rule)) found.push(links);
  return found;
}
