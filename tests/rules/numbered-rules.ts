/** Compares the numbered rules of DEVELOPERS.md with the numbers at the head of test titles. */

/** Rules stand in DEVELOPERS.md as list items such as `- **H3** Escape during a drag leaves history unchanged.` */
export function rulesTold(markdown: string): string[] {
  return [...markdown.matchAll(/^- \*\*([A-Z]\d+)\*\* \S/gm)].map((match) => match[1] ?? '');
}

/** Titles carry the number first, such as `it('H3: Escape during a drag leaves history unchanged', …)`. */
export function rulesTested(testText: string): string[] {
  return [...testText.matchAll(/\b(?:it|test)(?:\.each\([^)]*\))?\(\s*['"`]([A-Z]\d+): /g)].map(
    (match) => match[1] ?? '',
  );
}
