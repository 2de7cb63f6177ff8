/** A lesson in a link: its short form stands in the address behind the #. */
import type { Result } from '../../core/numeric/result.ts';
import { isLinkOf, packLink, unpackLink, type LinkKind, type NoLinkReason } from './packed-link.ts';

/** The longest short form of a lesson that is opened, in bytes; one that fits in a link takes some thousand. */
const LONGEST_LESSON = 300_000;

const LESSON_LINK: LinkKind = { mark: 'lesson', longestText: LONGEST_LESSON };

/** The link that opens the lesson of this short form at `address`, which has no # in it. */
export function makeLessonLink(short: string, address: string): Promise<Result<string, NoLinkReason>> {
  return packLink(LESSON_LINK, short, address);
}

/** Whether what stands behind an address, # included, is a lesson or the rest of one. */
export function isLessonLink(fragment: string): boolean {
  return isLinkOf(LESSON_LINK.mark, fragment);
}

/** The short form of the lesson behind an address, or why there is none, in a sentence. Never rejects. */
export function unpackLessonLink(fragment: string): Promise<Result<string, string>> {
  return unpackLink(LESSON_LINK, fragment);
}
