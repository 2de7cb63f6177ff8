/** How sure springs are that nobody has measured. */

/**
 * They are taken to move the bike as far as is computed, to this part of it (1 σ): rates of springs on one type of bike
 * differ by about a fifth, and masses by less. From memory.
 */
export const SPRING_DOUBT = 0.15;
