/** Closing what is opened by a button: by Escape, which gives the button the keys again, and by a press anywhere else. */

/** An attachment for what is open; the button names it in `aria-controls`. */
export function dismissal(onclose: () => void): (opened: HTMLElement) => () => void {
  return (opened) => {
    const ended = new AbortController();
    const heard = { capture: true, signal: ended.signal };
    const opener = (): HTMLElement | null =>
      document.querySelector<HTMLElement>(`[aria-controls="${opened.id}"]`);
    const press = ({ target }: Event): void => {
      if (!(target instanceof Node) || opened.contains(target) || opener()?.contains(target) === true) return;
      onclose();
    };
    const key = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      opener()?.focus();
      onclose();
    };
    document.addEventListener('pointerdown', press, heard);
    document.addEventListener('keydown', key, heard);
    return () => ended.abort();
  };
}
