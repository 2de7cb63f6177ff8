/** Keeps the field that is being typed in above the keyboard that a screen shows over the page. */

/** Free space between a field and the keyboard, px. */
const ABOVE = 12;

/** Where something lies, px of the window from its top. */
interface Upright {
  readonly top: number;
  readonly bottom: number;
}

/** How far a field has to go up, px, so that what is seen holds it; 0 where it does, and no further than to the top. */
export function liftFor(field: Upright, seen: Upright): number {
  const under = field.bottom + ABOVE - seen.bottom;
  return Math.max(0, Math.min(under, field.top - ABOVE - seen.top));
}

/** Watches until the returned function is called. A browser that tells nothing of its keyboard is left alone. */
export function keepAboveKeyboard(): () => void {
  const seen = window.visualViewport;
  if (seen === null) return () => undefined;
  const lift = (): void => {
    const field = document.activeElement;
    if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
    const top = seen.offsetTop;
    let rest = liftFor(field.getBoundingClientRect(), { top, bottom: top + seen.height });
    for (let around = field.parentElement; around !== null && rest > 0; around = around.parentElement) {
      const before = around.scrollTop;
      around.scrollTop += rest;
      rest -= around.scrollTop - before;
    }
  };
  seen.addEventListener('resize', lift);
  return () => seen.removeEventListener('resize', lift);
}
