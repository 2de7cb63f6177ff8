/** Saves at once when the page is hidden or left, because it may not come back. */

/** Listens until the returned function is called. `page` is the window, `sheet` its document. */
export function saveOnLeaving(
  leave: () => Promise<void>,
  page: EventTarget = window,
  sheet: EventTarget & { readonly visibilityState: DocumentVisibilityState } = document,
): () => void {
  const go = (): void => void leave();
  const hide = (): void => {
    if (sheet.visibilityState === 'hidden') void leave();
  };
  page.addEventListener('pagehide', go);
  sheet.addEventListener('visibilitychange', hide);
  return () => {
    page.removeEventListener('pagehide', go);
    sheet.removeEventListener('visibilitychange', hide);
  };
}
