/** How near points may come to one another that define a direction. */

/** Points that define a direction must stay at least this far apart, mm. */
export const LEAST_APART = 5;
