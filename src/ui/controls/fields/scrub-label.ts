/** Dragging a label sideways to change the number it names: from the browser's events to the scrub gesture. */
import { scrubStep, type Scrub, type ScrubInput } from '../../../gestures/number-scrub.ts';
import { listening } from '../listening.ts';

export interface ScrubListener {
  /** Steps away from where the drag began; fractions of a step while Alt is held. */
  readonly onscrub: (steps: number) => void;
  readonly onrelease: () => void;
  readonly oncancel: () => void;
  readonly isEnabled: () => boolean;
}

/** An attachment for the label: press and drag scrubs, Escape and a lost pointer cancel, release ends it. */
export function scrubLabel(listener: ScrubListener): (label: HTMLElement) => () => void {
  return (label) => {
    let scrub: Scrub = null;
    let scrubbed = false;

    const send = (input: ScrubInput): void => {
      const step = scrubStep(scrub, input);
      scrub = step.scrub;
      if (scrub === null) window.removeEventListener('keydown', key, true);
      for (const effect of step.effects) {
        if (effect.kind === 'scrub') {
          scrubbed = true;
          listener.onscrub(effect.steps);
        } else if (effect.kind === 'commit') listener.onrelease();
        else if (effect.kind === 'restore') listener.oncancel();
      }
    };
    const pointer =
      (type: 'down' | 'move' | 'up') =>
      ({ pointerId, clientX, shiftKey, altKey }: PointerEvent): void =>
        send({ type, id: pointerId, xPx: clientX, shift: shiftKey, alt: altKey });
    const key = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      send({ type: 'escape' });
    };
    const press = pointer('down');
    const down = (event: PointerEvent): void => {
      if (event.button !== 0 || scrub !== null || !listener.isEnabled()) return;
      scrubbed = false;
      label.setPointerCapture(event.pointerId);
      window.addEventListener('keydown', key, true);
      press(event);
    };
    const move = pointer('move');
    const up = pointer('up');
    const lost = (event: PointerEvent): void => send({ type: 'cancel', id: event.pointerId });
    const click = (event: Event): void => {
      // The click that ends a scrub would move the focus into the field.
      if (scrubbed) event.preventDefault();
      scrubbed = false;
    };

    const end = listening(label, {
      pointerdown: down,
      pointermove: move,
      pointerup: up,
      pointercancel: lost,
      lostpointercapture: lost,
      click,
    });
    return () => {
      if (scrub !== null) send({ type: 'cancel', id: scrub.id });
      end();
    };
  };
}
