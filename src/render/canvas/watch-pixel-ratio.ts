/** Hears when a px has another number of pixels: the window is zoomed, or moved to another screen. */

/** Calls `changed` each time; the function returned ends that. */
export function watchPixelRatio(changed: () => void): () => void {
  let query = queryNow();

  function queryNow(): MediaQueryList {
    // A query hears that its own ratio no longer holds, and nothing of those that follow.
    const made = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    made.addEventListener('change', hear, { once: true });
    return made;
  }

  function hear(): void {
    query = queryNow();
    changed();
  }

  return () => query.removeEventListener('change', hear);
}
