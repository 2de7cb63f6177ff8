/** How the page is laid out in the window it has now, by the same widths as the page's styles. */
import { MediaQuery } from 'svelte/reactivity';
import type { PageLayout } from '../../session/preferences.svelte.ts';

export function watchLayout(): { readonly current: PageLayout } {
  const small = new MediaQuery('max-width: 72rem');
  const lying = new MediaQuery(
    '(min-width: 48rem) and (orientation: landscape), (min-width: 40rem) and (max-height: 34.99rem)',
  );
  return {
    get current() {
      return !small.current ? 'wide' : lying.current ? 'beside' : 'narrow';
    },
  };
}
