/** Why a link is not made, in a sentence with the figures, and what to send instead. */

/** A link that would have `length` characters where at most `longest` are made. */
export function longLinkWords(noun: 'bike' | 'lesson', length: number, longest: number): string {
  return `The link of this ${noun} would have ${length} characters, and many messages cut a link after ${longest}. Send a file instead.`;
}
