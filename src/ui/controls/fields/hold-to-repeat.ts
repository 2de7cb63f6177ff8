/** A button that steps once when pressed, goes on stepping while held, and reports once when let go. */
import { listening } from '../listening.ts';

export interface HoldListener {
  readonly onstep: () => void;
  readonly onrelease: () => void;
  readonly oncancel: () => void;
}

const FIRST_WAIT_MS = 400;
const NEXT_WAIT_MS = 90;

/** An attachment for the button. Pointer, Enter, Space and a click made by assistive software all step. */
export function holdToRepeat(listener: HoldListener): (button: HTMLElement) => () => void {
  return (button) => {
    let pointer: number | null = null;
    let timer: number | undefined;
    // A press of the pointer also makes a click at its end, which has been answered already.
    let clickIsAnswered = false;

    const repeat = (waitMs: number): void => {
      timer = window.setTimeout(() => {
        listener.onstep();
        repeat(NEXT_WAIT_MS);
      }, waitMs);
    };
    const stop = (): void => {
      window.clearTimeout(timer);
      pointer = null;
      window.removeEventListener('keydown', escape, true);
    };
    const escape = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      stop();
      listener.oncancel();
    };
    const down = (event: PointerEvent): void => {
      if (pointer !== null || event.button !== 0) return;
      pointer = event.pointerId;
      clickIsAnswered = true;
      button.setPointerCapture(event.pointerId);
      window.addEventListener('keydown', escape, true);
      // A field that is left commits what was typed in it; the step goes on from there.
      button.focus({ preventScroll: true });
      queueMicrotask(() => {
        if (pointer !== event.pointerId) return;
        listener.onstep();
        repeat(FIRST_WAIT_MS);
      });
    };
    const up = (event: PointerEvent): void => {
      if (event.pointerId !== pointer) return;
      stop();
      listener.onrelease();
    };
    const lost = (event: PointerEvent): void => {
      if (event.pointerId !== pointer) return;
      stop();
      clickIsAnswered = false;
      listener.oncancel();
    };
    const click = (): void => {
      if (!clickIsAnswered) {
        listener.onstep();
        listener.onrelease();
      }
      clickIsAnswered = false;
    };
    const isPress = (event: KeyboardEvent): boolean => event.key === 'Enter' || event.key === ' ';
    // Answered here and not as clicks, so that a key held down is one undo.
    const key = (event: KeyboardEvent): void => {
      if (!isPress(event) || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      event.stopPropagation();
      clickIsAnswered = false;
      listener.onstep();
    };
    const keyUp = (event: KeyboardEvent): void => {
      if (!isPress(event)) return;
      event.preventDefault();
      listener.onrelease();
    };
    const menu = (event: Event): void => event.preventDefault();

    const end = listening(button, {
      pointerdown: down,
      pointerup: up,
      pointercancel: lost,
      lostpointercapture: lost,
      click,
      keydown: key,
      keyup: keyUp,
      blur: listener.onrelease,
      contextmenu: menu,
    });
    return () => {
      if (pointer !== null) listener.oncancel();
      stop();
      end();
    };
  };
}
