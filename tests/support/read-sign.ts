/** The change that a sentence about a figure shows, read back from its own digits. */

/** After less before as written; of a figure that is a change, the figure itself. */
export function readSign(sentence: string, isChange: boolean): number {
  const [first, second] = numbersIn(sentence.slice(sentence.indexOf(':')));
  return isChange ? first : second - first;
}

function numbersIn(text: string): number[] {
  return [...text.matchAll(/([+−-]?)(\d+(?:\.\d+)?)/g)].map(
    ([, sign, digits]) => (sign === '−' || sign === '-' ? -1 : 1) * Number(digits),
  );
}
