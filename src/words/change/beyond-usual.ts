/** What is said of a figure that no motorcycle has: apart from the reasons, which come after the first sight. */
export const BEYOND_USUAL = 'no motorcycle has this';
