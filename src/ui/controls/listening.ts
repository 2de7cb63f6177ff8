/** Listening to several of an element's events at once, and ending it at once. */

type Heard = { readonly [Name in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[Name]) => void };

/** Hears the events named until the returned function is called. */
export function listening(element: HTMLElement, heard: Heard): () => void {
  const ended = new AbortController();
  for (const [name, listener] of Object.entries(heard))
    element.addEventListener(name, listener as EventListener, { signal: ended.signal });
  return () => ended.abort();
}
