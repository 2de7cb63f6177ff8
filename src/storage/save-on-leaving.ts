/** Saves at once when the page is hidden or left, because it may not come back. */

/** Listens until the returned function is called. `page` is the window, `sheet` its document. */
export function saveOnLeaving(
  flush: () => Promise<void>,
  page: EventTarget = window,
  sheet: EventTarget & { readonly visibilityState: DocumentVisibilityState } = document,
): () => void {
  const leave = (): void => void flush();
  const hide = (): void => {
    if (sheet.visibilityState === 'hidden') void flush();
  };
  page.addEventListener('pagehide', leave);
  sheet.addEventListener('visibilitychange', hide);
  return () => {
    page.removeEventListener('pagehide', leave);
    sheet.removeEventListener('visibilitychange', hide);
  };
}
