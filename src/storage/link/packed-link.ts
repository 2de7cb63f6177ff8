/** What is sent in a link: a text packed behind the # of an address, which no browser sends to a server, under a mark that says what it is. */
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import { checkFigure } from './check-figure.ts';
import { packText, unpackText } from './packed-text.ts';

/** The longest link that is made, in characters with its address; messages and codes on paper hold as much. */
export const LONGEST_LINK = 2000;
/** Nothing longer behind the # is looked into: a newer Sidestance may make longer links, but none like this. */
const LONGEST_READ = 10_000;
/** The way of packing that this program writes, and the newest that it reads. */
const VERSION = 1;

/** What a link holds. */
export interface LinkKind {
  /** The letters between # and =, also the noun in sentences about it. */
  readonly mark: 'bike' | 'lesson';
  /** The longest text that is unpacked, bytes. */
  readonly longestText: number;
}

/** Why no link was made: the browser cannot pack, or the link has `length` characters and is too long. */
export type NoLinkReason =
  { readonly kind: 'cannot' } | { readonly kind: 'tooLong'; readonly length: number };

/** The link that holds this text at `address`, which has no # in it. */
export async function packLink(
  { mark }: LinkKind,
  text: string,
  address: string,
): Promise<Result<string, NoLinkReason>> {
  const packed = await packText(text);
  if (!packed.ok) return fail({ kind: 'cannot' });
  const link = `${address}#${mark}=${VERSION}.${checkFigure(packed.value)}.${packed.value}`;
  return link.length > LONGEST_LINK ? fail({ kind: 'tooLong', length: link.length }) : succeed(link);
}

/** Whether what stands behind an address, # included, is a link of this mark or the rest of one. */
export function isLinkOf(mark: LinkKind['mark'], fragment: string): boolean {
  return fragment.startsWith(`#${mark}=`);
}

/** The text behind an address, or why there is none, in a sentence. Never rejects. */
export async function unpackLink(
  { mark, longestText }: LinkKind,
  fragment: string,
): Promise<Result<string, string>> {
  if (fragment.length > LONGEST_READ)
    return fail(
      `The link is ${fragment.length} characters long, and a ${mark} takes at most ${LONGEST_LINK}. No ${mark} was looked for in it.`,
    );
  const parts = new RegExp(`^#${mark}=(\\d+)(?:\\.([0-9a-z]+)\\.([\\w-]+))?`).exec(fragment);
  if (parts !== null && Number(parts[1]) > VERSION)
    return fail(
      'A newer Sidestance made this link. Reload the page to bring this one up to date, and open the link again.',
    );
  const [whole, , figure, packed] = parts ?? [''];
  if (whole !== fragment || packed === undefined || checkFigure(packed) !== figure) return fail(DAMAGED);
  const text = await unpackText(packed, longestText);
  if (text.ok) return text;
  const unread = {
    cannot: `This browser is too old to read a link. A file of the ${mark} opens in it.`,
    damaged: DAMAGED,
    tooLong: `The link holds far more than a ${mark}. Nothing of it was used.`,
  };
  return fail(unread[text.reason]);
}

const DAMAGED = 'The link is cut off or damaged. Copy it again from its first letter to its last.';
