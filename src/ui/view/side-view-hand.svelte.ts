/** From the browser's pointer, wheel and key events on the side view to gestures, and from gestures to the workbench. */
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
  /** Before the press itself: what is half typed counts for the bike as it was, so it is taken or refused first. */
  settleTyped(): void;
  down(event: PointerEvent & { currentTarget: HTMLElement }): void;
  move(event: PointerEvent & { currentTarget: HTMLElement }): void;
  up(event: PointerEvent & { currentTarget: HTMLElement }): void;
  cancel(event: PointerEvent & { currentTarget: HTMLElement }): void;
  leave(event: PointerEvent & { currentTarget: HTMLElement }): void;
  lost(event: PointerEvent & { currentTarget: HTMLElement }): void;
  key(event: KeyboardEvent): void;
  wheel(element: HTMLElement): () => void;
  choose(id: string): void;
  closeChoice(): void;
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
    const stepped = sideViewStep(gesture, input, { handles, hitRadiusPx, armed, tapOnly });
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
    else if (current === 'edit' && armedPoint !== null) {
      bench.moving.placeAt(armedPoint, xPx, yPx);
      // One tap places once; the next one would throw a part that nobody meant any more.
      bench.mode.chosenPoint = null;
    } else bench.chooseLineAt(xPx, yPx);
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
        bench.stand.pan(effect.dxPx, effect.dyPx);
        break;
      case 'zoom':
        choice = null;
        bench.stand.zoom(effect.xPx, effect.yPx, effect.factor);
        break;
      case 'hover':
        hovered = effect.handle;
        break;
    }
  }

  function pointer(type: PointerInput['type']) {
    return (event: PointerEvent & { currentTarget: HTMLElement }): void => {
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

  return {
    get hovered() {
      return hovered;
    },
    get choice() {
      return choice !== null && choice.mode === bench.mode.current ? choice.of : null;
    },
    settleTyped() {
      const { activeElement } = document;
      if (activeElement instanceof HTMLInputElement) activeElement.blur();
    },
    down: pointer('down'),
    move: pointer('move'),
    up: pointer('up'),
    cancel: pointer('cancel'),
    leave(event) {
      // A pointer that is down belongs to the side view wherever it goes.
      if (event.buttons === 0) send(inputOf('cancel', event));
    },
    lost: (event) => send({ type: 'lostCapture', id: event.pointerId }),
    key(event) {
      send({
        type: 'key',
        key: event.key,
        shift: event.shiftKey,
        alt: event.altKey,
        ctrl: event.ctrlKey,
      });
      if (event.key !== 'Escape') return;
      choice = null;
      bench.mode.chosenPoint = null;
      bench.measuring.clear();
    },
    wheel(element) {
      const turned = (event: WheelEvent): void => {
        event.preventDefault();
        const box = element.getBoundingClientRect();
        const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE_PX : 1;
        send({
          type: 'wheel',
          xPx: event.clientX - box.left,
          yPx: event.clientY - box.top,
          dxPx: event.deltaX * unit,
          dyPx: event.deltaY * unit,
          ctrl: event.ctrlKey || event.metaKey,
        });
      };
      element.addEventListener('wheel', turned, { passive: false });
      return () => element.removeEventListener('wheel', turned);
    },
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

/** Height of a line in browsers that count the wheel in lines, px. */
const LINE_PX = 16;

function inputOf(
  type: PointerInput['type'],
  event: PointerEvent & { currentTarget: HTMLElement },
): PointerInput {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    type,
    id: event.pointerId,
    pointer: event.pointerType === 'touch' ? 'touch' : event.pointerType === 'pen' ? 'pen' : 'mouse',
    xPx: event.clientX - box.left,
    yPx: event.clientY - box.top,
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
