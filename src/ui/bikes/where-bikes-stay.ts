/** Where bikes stay, and for how long, in plain words. */
import type { Persistence } from '../../storage/persistence.ts';
import { stayWords } from '../../words/kept/keeping-message.ts';

const PROMISE: Readonly<Record<Persistence, string>> = {
  kept: 'In any other window the browser has promised to keep them until you clear them yourself.',
  mayGo: 'The browser may clear them when the device runs short of room: save copies to files.',
  unasked: 'This browser does not say how long it keeps them: save copies to files.',
};

/**
 * `persistence` is null until the browser has been asked, `lasts` false where nothing outlives the page, `offline` true
 * once the page itself lies on the device.
 */
export function whereBikesStay(
  address: string,
  persistence: Persistence | null,
  lasts: boolean,
  offline: boolean,
): string {
  if (!lasts) return 'Bikes last only while this page is open: save them to files.';
  const promise =
    persistence === null
      ? 'After the first save the page asks the browser to keep them.'
      : PROMISE[persistence];
  return `${stayWords(address)} ${promise}${offline ? ' The page opens without a network too.' : ''}`;
}
