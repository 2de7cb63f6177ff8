/** What the projector's headline says on the way from before to now, so that it never names as done what is yet to come. */

/** The headline of the whole change, by how far the bike on the picture has come: 0 is before, 1 is now. */
export function headlineOnWay(headline: string, part: number): string {
  if (part >= 1) return `Now: ${headline}`;
  return part <= 0 ? `To come: ${headline}` : `On the way to: ${headline}`;
}
