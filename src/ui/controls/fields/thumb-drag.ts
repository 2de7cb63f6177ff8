/** A finger on a slider's thumb: from the browser's events to the gesture. */
import { thumbStep, type Thumb, type ThumbInput } from '../../../gestures/thumb-drag.ts';
import { listening } from '../listening.ts';

export interface ThumbListener {
  /** Where the thumb stands on its way, 0 to 1, and where that way lies in the window, px. */
  readonly place: () => { readonly part: number; readonly leftPx: number; readonly runPx: number };
  readonly onslide: (part: number) => void;
  readonly onrelease: () => void;
  readonly oncancel: () => void;
}

/** An attachment for what the thumb is on. Mouse and pen are left to others; a swipe across is left to scroll. */
export function thumbDrag(listener: ThumbListener): (element: HTMLElement) => () => void {
  return (element) => {
    let thumb: Thumb = null;

    const send = (input: ThumbInput): void => {
      const step = thumbStep(thumb, input);
      thumb = step.thumb;
      for (const effect of step.effects) {
        if (effect.kind === 'slide') listener.onslide(effect.part);
        else if (effect.kind === 'commit') listener.onrelease();
        else listener.oncancel();
      }
    };
    const down = ({
      pointerType,
      isPrimary,
      pointerId: id,
      clientX: xPx,
      clientY: yPx,
    }: PointerEvent): void => {
      if (pointerType !== 'touch' || !isPrimary) return;
      const { part, leftPx, runPx } = listener.place();
      send({ type: 'down', id, xPx, yPx, thumbPx: leftPx + part * runPx, runPx, part });
    };
    const pointer =
      (type: 'move' | 'up') =>
      ({ pointerId: id, clientX: xPx, clientY: yPx }: PointerEvent): void =>
        send({ type, id, xPx, yPx });
    const lost = (event: PointerEvent): void => send({ type: 'cancel', id: event.pointerId });

    const end = listening(element, {
      pointerdown: down,
      pointermove: pointer('move'),
      pointerup: pointer('up'),
      pointercancel: lost,
      lostpointercapture: lost,
    });
    return () => {
      if (thumb !== null) send({ type: 'cancel', id: thumb.id });
      end();
    };
  };
}
