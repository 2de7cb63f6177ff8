/** A bike in a link: everything it needs stands in the address behind the #. */
import { fail, type Result } from '../../core/numeric/result.ts';
import type { BikeDocument } from '../../document/document.ts';
import type { Opened } from '../../document/open-json.ts';
import { LONGEST_SHORT_FORM, openShortText, shortText } from '../../document/short-form.ts';
import { isLinkOf, packLink, unpackLink, type LinkKind, type NoLinkReason } from './packed-link.ts';

const BIKE_LINK: LinkKind = { mark: 'bike', longestText: LONGEST_SHORT_FORM };

/** The link that opens this bike at `address`, which has no # in it. */
export function makeLink(document: BikeDocument, address: string): Promise<Result<string, NoLinkReason>> {
  return packLink(BIKE_LINK, shortText(document), address);
}

/** Whether what stands behind an address, # included, is a bike or the rest of one. */
export function isBikeLink(fragment: string): boolean {
  return isLinkOf(BIKE_LINK.mark, fragment);
}

/** Opens the bike behind an address, or says why not, in a sentence. Never rejects. */
export async function openLink(fragment: string): Promise<Result<Opened, string>> {
  const text = await unpackLink(BIKE_LINK, fragment);
  if (!text.ok) return text;
  const opened = openShortText(text.value);
  return opened.ok ? opened : fail(opened.reason.sentence);
}
