/** A bike in a link: everything it needs stands in the address behind the #, which no browser sends to a server. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { BikeDocument } from '../document/document.ts';
import type { Opened } from '../document/open-json.ts';
import { LONGEST_SHORT_FORM, openShortText, shortText } from '../document/short-form.ts';
import { checkFigure } from './check-figure.ts';
import { packText, unpackText } from './packed-text.ts';

/** The longest link that is made, in characters with its address; messages and codes on paper hold as much. */
export const LONGEST_LINK = 2000;
/** Nothing longer behind the # is looked into: a newer Sidestance may make longer links, but none like this. */
const LONGEST_READ = 10_000;
/** The way of packing that this program writes, and the newest that it reads. */
const VERSION = 1;
const START = '#bike=';

/** Why no link was made: the browser cannot pack, or the link has `length` characters and is too long. */
export type NoLinkReason =
  { readonly kind: 'cannot' } | { readonly kind: 'tooLong'; readonly length: number };

/** The link that opens this bike at `address`, which has no # in it. */
export async function makeLink(
  document: BikeDocument,
  address: string,
): Promise<Result<string, NoLinkReason>> {
  const packed = await packText(shortText(document));
  if (!packed.ok) return fail({ kind: 'cannot' });
  const link = `${address}${START}${VERSION}.${checkFigure(packed.value)}.${packed.value}`;
  return link.length > LONGEST_LINK ? fail({ kind: 'tooLong', length: link.length }) : succeed(link);
}

/** Whether what stands behind an address, # included, is a bike or the rest of one. */
export function isBikeLink(fragment: string): boolean {
  return fragment.startsWith(START);
}

/** Opens the bike behind an address, or says why not, in a sentence. Never rejects. */
export async function openLink(fragment: string): Promise<Result<Opened, string>> {
  if (fragment.length > LONGEST_READ)
    return fail(
      `The link is ${fragment.length} characters long, and a bike takes at most ${LONGEST_LINK}. No bike was looked for in it.`,
    );
  const parts = /^#bike=(\d+)(?:\.([0-9a-z]+)\.([\w-]+))?/.exec(fragment);
  if (parts !== null && Number(parts[1]) > VERSION)
    return fail(
      'A newer Sidestance made this link. Reload the page to bring this one up to date, and open the link again.',
    );
  const [whole, , figure, packed] = parts ?? [''];
  if (whole !== fragment || packed === undefined || checkFigure(packed) !== figure) return fail(DAMAGED);
  const text = await unpackText(packed, LONGEST_SHORT_FORM);
  if (!text.ok) return fail(UNREAD[text.reason]);
  const opened = openShortText(text.value);
  return opened.ok ? opened : fail(opened.reason.sentence);
}

const DAMAGED = 'The link is cut off or damaged. Copy it again from its first letter to its last.';
const UNREAD = {
  cannot: 'This browser is too old to read a link. A file of the bike opens in it.',
  damaged: DAMAGED,
  tooLong: 'The link holds far more than a bike. Nothing of it was used.',
} as const;
