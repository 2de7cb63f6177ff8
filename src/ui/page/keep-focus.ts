/** Keeps the keyboard's place: where the thing that has the focus goes or is disabled, its nearest neighbour takes it. */
import { listening } from '../controls/listening.ts';

const FOCUSABLE = ':is(button, input, select, textarea, summary, a[href], [tabindex]):not(:disabled)';

/** An attachment for the page. Without it the next key would begin at the top of the page, or do nothing. */
export function keepFocus(page: HTMLElement): () => void {
  /** What has the focus and all that it lies in, from the inside out. */
  let way: readonly HTMLElement[] = [];

  const remember = ({ target }: Event): void => {
    way = target instanceof HTMLElement ? wayUp(target, page) : [];
  };
  const restore = (): void => {
    const [last, ...around] = way;
    if (last === undefined || document.activeElement !== document.body) return;
    // Whoever presses an empty place takes the focus away, and may.
    if (last.isConnected && !last.matches(':disabled')) return;
    way = [];
    for (const one of around)
      if (one.isConnected) {
        const next = [...one.querySelectorAll<HTMLElement>(FOCUSABLE)].find(takesFocus);
        if (next === undefined) continue;
        next.focus({ preventScroll: true });
        return;
      }
  };
  // Only once the page has made all that the same change brings is it known what is left.
  const later = (): void => void requestAnimationFrame(restore);

  // Not every browser says that the focus has gone, so each act that may take it is followed by a look.
  const end = listening(page, { focusin: remember, focusout: later, click: later, keydown: later });
  window.addEventListener('keydown', restore, true);
  return () => {
    end();
    window.removeEventListener('keydown', restore, true);
  };
}

function wayUp(from: HTMLElement, page: HTMLElement): readonly HTMLElement[] {
  const way = [from];
  for (let one = from.parentElement; one !== null && page.contains(one); one = one.parentElement)
    way.push(one);
  return way;
}

function takesFocus(element: HTMLElement): boolean {
  return element.tabIndex >= 0 && element.checkVisibility({ visibilityProperty: true });
}
