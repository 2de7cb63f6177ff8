/** From the browser's pointer, wheel and key events on the side view to gestures, and from gestures to the workbench. */
import { on } from 'svelte/events';
import { hitRadiusPx } from '../../gestures/handle-hit.ts';
import type { SideViewEffect } from '../../gestures/side-view-effect.ts';
import { AT_REST, sideViewStep, type SideViewGesture } from '../../gestures/side-view-gesture.ts';
import type { PointerInput, SideViewInput } from '../../gestures/side-view-input.ts';
import type { SideViewMode } from '../../session/mode.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';

/** Several handles on one spot, and where they are, px on the side view. */
export interface HandleChoice {
  readonly handles: readonly string[];
  readonly xPx: number;
  readonly yPx: number;
}

export interface SideViewHand {
  readonly hovered: string | null;
  readonly choice: HandleChoice | null;
  /** Hears what hands and keys do anywhere on the side view, until the returned function is called. */
  listen(element: HTMLElement): () => void;
  choose(id: string): void;
  closeChoice(): void;
  /** Gives a point or grip the keys. */
  focus(id: string): void;
}

export function sideViewHand(bench: Workbench): SideViewHand {
  let gesture: SideViewGesture = AT_REST;
  let hovered = $state<string | null>(null);
  // A question asked in one mode means nothing in another.
  let choice = $state.raw<{ readonly of: HandleChoice; readonly mode: SideViewMode } | null>(null);

  function handlesNow() {
    return bench.mode.current === 'measure' ? bench.handles.all.filter(isPoint) : bench.handles.free;
  }

  function send(input: SideViewInput): void {
    const handles = handlesNow().map(({ id, screen }) => ({ id, xPx: screen.x, yPx: screen.y }));
    const armed = bench.armedPoint === null ? null : `point-${bench.armedPoint}`;
    const tapOnly = bench.mode.current === 'measure';
    const stepped = sideViewStep(gesture, input, {
      handles,
      hitRadiusPx,
      armed,
      placing: armed !== null && bench.mode.placing,
      tapOnly,
    });
    gesture = stepped.gesture;
    stepped.effects.forEach(apply);
  }

  function tapped(id: string): void {
    const handle = bench.handles.all.find((each) => each.id === id);
    if (handle === undefined) return;
    bench.tapHandle(handle);
    focusHandle(id);
  }

  function tappedPlace(xPx: number, yPx: number): void {
    const { armedPoint } = bench;
    const { current } = bench.mode;
    if (current === 'measure') bench.measuring.tapPlace(xPx, yPx);
    else if (bench.mode.placing && armedPoint !== null) {
      bench.moving.placeAt(armedPoint, xPx, yPx);
      // One tap places once; the next one would move a part that nobody meant to move.
      bench.mode.placing = false;
    } else {
      bench.mode.choosePoint(null);
      bench.chooseLineAt(xPx, yPx);
    }
  }

  function apply(effect: SideViewEffect): void {
    switch (effect.kind) {
      case 'grab':
        choice = null;
        bench.moving.grab(effect.handle);
        bench.showHandle(effect.handle);
        focusHandle(effect.handle);
        break;
      case 'drag':
        bench.moving.drag(effect.dxPx, effect.dyPx, effect.snapping);
        break;
      case 'drop':
        bench.moving.drop();
        break;
      case 'restore':
        bench.moving.restore();
        break;
      case 'tapHandle':
        choice = null;
        tapped(effect.handle);
        break;
      case 'tapPlace':
        choice = null;
        tappedPlace(effect.xPx, effect.yPx);
        break;
      case 'choose':
        choice = { of: effect, mode: bench.mode.current };
        break;
      case 'pan':
        choice = null;
        bench.sideView.pan(effect.dxPx, effect.dyPx);
        break;
      case 'zoom':
        choice = null;
        bench.sideView.zoom(effect.xPx, effect.yPx, effect.factor);
        break;
      case 'hover':
        hovered = effect.handle;
        break;
    }
  }

  function pointer(type: PointerInput['type']) {
    return (event: OnView<PointerEvent>): void => {
      // A press on a button over the side view is that button's; captured, its click would never reach it.
      if (type === 'down' && event.target instanceof Element && event.target.closest('button') !== null)
        return;
      if (type === 'down') {
        // The press must not begin a text selection or move the focus to the side view's own box.
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
      }
      send(inputOf(type, event));
    };
  }

  /** What is half typed counts for the bike as it was, so it is taken or refused first. */
  function settleTyped(): void {
    const { activeElement } = document;
    if (activeElement instanceof HTMLInputElement) activeElement.blur();
  }

  function leave(event: OnView<PointerEvent>): void {
    // A pointer that is down belongs to the side view wherever it goes.
    if (event.buttons === 0) send(inputOf('cancel', event));
  }

  function key(event: KeyboardEvent): void {
    send({
      type: 'key',
      key: event.key,
      shift: event.shiftKey,
      alt: event.altKey,
      ctrl: event.ctrlKey,
    });
    if (event.key !== 'Escape') return;
    choice = null;
    bench.mode.choosePoint(bench.mode.placing ? bench.armedPoint : null);
    bench.measuring.clear();
  }

  /** A double press goes close to what lies there. */
  function zoomIn(event: OnView<MouseEvent>): void {
    if (event.target instanceof Element && event.target.closest('button') !== null) return;
    const { xPx, yPx } = placeOf(event);
    bench.sideView.zoomTo(xPx, yPx, DOUBLE_PRESS_ZOOM);
  }

  function wheel(event: OnView<WheelEvent>): void {
    event.preventDefault();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE_PX : 1;
    send({
      type: 'wheel',
      ...placeOf(event),
      dxPx: event.deltaX * unit,
      dyPx: event.deltaY * unit,
      ctrl: event.ctrlKey || event.metaKey,
    });
  }

  return {
    get hovered() {
      return hovered;
    },
    get choice() {
      return choice !== null && choice.mode === bench.mode.current ? choice.of : null;
    },
    listen(element) {
      const ends = [
        on(element, 'pointerdown', settleTyped, { capture: true }),
        on(element, 'pointerdown', pointer('down')),
        on(element, 'pointermove', pointer('move')),
        on(element, 'pointerup', pointer('up')),
        on(element, 'pointercancel', pointer('cancel')),
        on(element, 'pointerleave', leave),
        on(element, 'lostpointercapture', (event) => send({ type: 'lostCapture', id: event.pointerId })),
        on(element, 'keydown', key),
        on(element, 'dblclick', zoomIn),
        on(element, 'wheel', wheel, { passive: false }),
      ];
      return () => ends.forEach((end) => end());
    },
    focus: focusHandle,
    choose(id) {
      choice = null;
      tapped(id);
    },
    closeChoice() {
      const [nearest] = choice?.of.handles ?? [];
      choice = null;
      if (nearest !== undefined) focusHandle(nearest);
    },
  };
}

/** How much a double press enlarges. */
const DOUBLE_PRESS_ZOOM = 2.5;

/** Height of a line in browsers that count the wheel in lines, px. */
const LINE_PX = 16;

type OnView<Kind extends Event> = Kind & { readonly currentTarget: HTMLElement };

/** Where the mouse or finger is, px from the side view's upper left corner. */
function placeOf(event: OnView<MouseEvent>): { readonly xPx: number; readonly yPx: number } {
  const box = event.currentTarget.getBoundingClientRect();
  return { xPx: event.clientX - box.left, yPx: event.clientY - box.top };
}

function inputOf(type: PointerInput['type'], event: OnView<PointerEvent>): PointerInput {
  return {
    type,
    id: event.pointerId,
    pointer: event.pointerType === 'touch' ? 'touch' : event.pointerType === 'pen' ? 'pen' : 'mouse',
    ...placeOf(event),
    button: event.button,
    ctrl: event.ctrlKey || event.metaKey,
    shift: event.shiftKey,
    alt: event.altKey,
  };
}

function isPoint(handle: { readonly target: { readonly kind: string } }): boolean {
  return handle.target.kind === 'point';
}

function focusHandle(id: string): void {
  document.querySelector<HTMLElement>(`[data-handle="${id}"]`)?.focus({ preventScroll: true });
}
