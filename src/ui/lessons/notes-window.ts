/** The presenter's notes in a second window: it shares the page's own state, so it needs no network and is never behind. */
import { mount, unmount, type Component } from 'svelte';
import type { ShownWindow } from '../../session/tabs/second-window.svelte.ts';

/** Size it opens at, px. */
const SIZE = 'width=720,height=820';

/**
 * Opens the window and puts the notes into it; null where the browser blocks it. `onclosed` is called when somebody
 * closes it.
 */
export function openNotes<Props extends Record<string, unknown>>(
  Notes: Component<Props>,
  props: Props,
  title: string,
  onclosed: () => void,
): ShownWindow | null {
  const opened = window.open('', 'sidestance-notes', `popup,${SIZE}`);
  if (opened === null) return null;
  const page = opened.document;
  page.title = title;
  page.documentElement.lang = document.documentElement.lang;
  page.head.replaceChildren(...stylesFor(page));
  page.body.replaceChildren();
  const shown = mount(Notes, { target: page.body, props });
  const end = (): void => {
    opened.removeEventListener('pagehide', gone);
    void unmount(shown);
  };
  const gone = (): void => {
    end();
    onclosed();
  };
  opened.addEventListener('pagehide', gone);
  return {
    close: () => {
      end();
      opened.close();
    },
  };
}

/** The styles of this page, by full addresses, as the new window has none. */
function stylesFor(page: Document): Node[] {
  const title = page.createElement('title');
  title.textContent = page.title;
  const styles = [...document.head.querySelectorAll<HTMLElement>('link[rel="stylesheet"], style')].map(
    (each) => {
      const copy = page.importNode(each, true);
      if (each instanceof HTMLLinkElement) copy.setAttribute('href', each.href);
      return copy;
    },
  );
  return [title, ...styles];
}
