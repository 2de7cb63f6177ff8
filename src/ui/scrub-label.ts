/** Dragging a label sideways to change the number it names. */

export interface ScrubListener {
  /** Steps away from where the drag began; fractions of a step while Alt is held. */
  readonly onscrub: (steps: number) => void;
  readonly onrelease: () => void;
  readonly oncancel: () => void;
  readonly isEnabled: () => boolean;
}

/** Movement, px, that is still a click. */
const DEAD_ZONE_PX = 3;
/** Movement, px, for one step. */
const STEP_PX = 4;

/** Steps after moving `movedPx` to the right: Shift makes each ten, Alt a tenth. Null within the dead zone. */
export function stepsOfScrub(movedPx: number, shiftKey: boolean, altKey: boolean): number | null {
  const beyond = Math.abs(movedPx) - DEAD_ZONE_PX;
  if (beyond <= 0) return null;
  const steps = Math.sign(movedPx) * Math.floor(beyond / STEP_PX);
  return steps * (shiftKey ? 10 : altKey ? 0.1 : 1);
}

/** An attachment for the label: press and drag scrubs, Escape and a lost pointer cancel, release ends it. */
export function scrubLabel(listener: ScrubListener): (label: HTMLElement) => () => void {
  return (label) => {
    let pointer: number | null = null;
    let startPx = 0;
    let scrubbed = false;

    const end = (): void => {
      pointer = null;
      window.removeEventListener('keydown', key, true);
    };
    const key = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      end();
      listener.oncancel();
    };
    const down = (event: PointerEvent): void => {
      scrubbed = false;
      if (pointer !== null || event.button !== 0 || !listener.isEnabled()) return;
      pointer = event.pointerId;
      startPx = event.clientX;
      label.setPointerCapture(event.pointerId);
      window.addEventListener('keydown', key, true);
    };
    const move = (event: PointerEvent): void => {
      if (event.pointerId !== pointer) return;
      const steps = stepsOfScrub(event.clientX - startPx, event.shiftKey, event.altKey);
      if (steps === null && !scrubbed) return;
      scrubbed = true;
      listener.onscrub(steps ?? 0);
    };
    const up = (event: PointerEvent): void => {
      if (event.pointerId !== pointer) return;
      end();
      listener.onrelease();
    };
    const lost = (event: PointerEvent): void => {
      if (event.pointerId !== pointer) return;
      end();
      listener.oncancel();
    };
    const click = (event: Event): void => {
      // The click that ends a scrub would move the focus into the field.
      if (scrubbed) event.preventDefault();
      scrubbed = false;
    };

    label.addEventListener('pointerdown', down);
    label.addEventListener('pointermove', move);
    label.addEventListener('pointerup', up);
    label.addEventListener('pointercancel', lost);
    label.addEventListener('lostpointercapture', lost);
    label.addEventListener('click', click);
    return () => {
      if (pointer !== null) listener.oncancel();
      end();
      label.removeEventListener('pointerdown', down);
      label.removeEventListener('pointermove', move);
      label.removeEventListener('pointerup', up);
      label.removeEventListener('pointercancel', lost);
      label.removeEventListener('lostpointercapture', lost);
      label.removeEventListener('click', click);
    };
  };
}
