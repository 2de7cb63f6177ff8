/** Gestures on the side view, step by step: each input gives the next state of the gesture and what to do. */
import { handlesAt, type HandleSpot } from './handle-hit.ts';
import { pinchEffects, type Finger } from './pinch.ts';
import type { SideViewEffect } from './side-view-effect.ts';
import type { KeyInput, PointerInput, PointerKind, SideViewInput, WheelInput } from './side-view-input.ts';
import { wheelEffect } from './wheel.ts';

/** A press that has not moved this far, px, is a tap. */
const TAP_REACH_PX = 3;

export interface SideViewContext {
  /** The handles that can be taken now. */
  readonly handles: readonly HandleSpot[];
  readonly hitRadiusPx: (pointer: PointerKind) => number;
  /** The handle that was chosen, which a drag takes before others on its spot; null when none is. */
  readonly armed: string | null;
  /** The next tap puts the chosen handle in its place. */
  readonly placing: boolean;
  /** The handles can be tapped and not dragged: a drag on one pans as on an empty place. */
  readonly tapOnly: boolean;
}

/** A pointer that is down: where its press began and where it was last. */
interface Press extends Finger {
  readonly pointer: PointerKind;
  readonly startXPx: number;
  readonly startYPx: number;
}

type Doing =
  | { readonly kind: 'nothing' }
  /** Down, and not yet known whether tap or drag. */
  | { readonly kind: 'pressing'; readonly press: Press; readonly handles: readonly string[] }
  | { readonly kind: 'dragging'; readonly press: Press; readonly handle: string }
  /** The view goes with the pointer. */
  | { readonly kind: 'panning'; readonly press: Press }
  | { readonly kind: 'pinching'; readonly first: Press; readonly second: Press }
  /** Its gesture is over but the pointer is still down. */
  | { readonly kind: 'spent'; readonly press: Press };

export interface SideViewGesture {
  readonly doing: Doing;
  readonly hovered: string | null;
}

export interface SideViewStep {
  readonly gesture: SideViewGesture;
  readonly effects: readonly SideViewEffect[];
}

const NOTHING: Doing = { kind: 'nothing' };

export const AT_REST: SideViewGesture = { doing: NOTHING, hovered: null };

/** The gesture after one more input, and what to do because of it, in order. */
export function sideViewStep(
  gesture: SideViewGesture,
  input: SideViewInput,
  context: SideViewContext,
): SideViewStep {
  switch (input.type) {
    case 'down':
      return down(gesture, input, context);
    case 'move':
      return move(gesture, input, context);
    case 'up':
      return up(gesture, input, context);
    case 'cancel':
      return cancel(gesture, input);
    case 'lostCapture':
      return ended(gesture, input.id, 'drop');
    case 'key':
      return key(gesture, input);
    case 'wheel':
      return wheel(gesture, input);
  }
}

function doing(gesture: SideViewGesture, next: Doing, ...effects: SideViewEffect[]): SideViewStep {
  return { gesture: { ...gesture, doing: next }, effects };
}

function pressOf({ id, pointer, xPx, yPx }: PointerInput): Press {
  return { id, pointer, xPx, yPx, startXPx: xPx, startYPx: yPx };
}

function down(gesture: SideViewGesture, input: PointerInput, context: SideViewContext): SideViewStep {
  const now = gesture.doing;
  const press = pressOf(input);
  if (now.kind !== 'nothing') return secondDown(gesture, now, press);
  if (input.button === 1) return doing(gesture, { kind: 'panning', press });
  if (input.button !== 0) return { gesture, effects: [] };
  const { xPx, yPx } = input;
  const handles = handlesAt(context.handles, xPx, yPx, context.hitRadiusPx(input.pointer));
  return doing(gesture, { kind: 'pressing', press, handles });
}

/** A second finger begins to pinch. A palm beside a pen, or another button, changes nothing. */
function secondDown(gesture: SideViewGesture, now: Doing, press: Press): SideViewStep {
  if (now.kind === 'nothing' || now.kind === 'pinching') return { gesture, effects: [] };
  if (now.press.id === press.id) return { gesture, effects: [] };
  if (now.press.pointer !== 'touch' || press.pointer !== 'touch') return { gesture, effects: [] };
  const pinching: Doing = { kind: 'pinching', first: now.press, second: press };
  if (now.kind === 'dragging') return doing(gesture, pinching, { kind: 'restore', handle: now.handle });
  return doing(gesture, pinching);
}

function move(gesture: SideViewGesture, input: PointerInput, context: SideViewContext): SideViewStep {
  const now = gesture.doing;
  if (now.kind === 'nothing') return hover(gesture, input, context);
  if (now.kind === 'pinching') return pinch(gesture, now.first, now.second, input);
  if (now.press.id !== input.id) return { gesture, effects: [] };
  const { xPx, yPx } = input;
  const press = { ...now.press, xPx, yPx };
  switch (now.kind) {
    case 'pressing': {
      if (isNear(press)) return { gesture, effects: [] };
      const handle = context.tapOnly ? null : draggedOf(now.handles, context.armed);
      if (handle === null) return doing(gesture, { kind: 'panning', press }, panOf(now.press, press));
      const dragging: Doing = { kind: 'dragging', press, handle };
      return doing(gesture, dragging, { kind: 'grab', handle }, dragOf(handle, press, input));
    }
    case 'dragging':
      return doing(gesture, { ...now, press }, dragOf(now.handle, press, input));
    case 'panning':
      return doing(gesture, { ...now, press }, panOf(now.press, press));
    case 'spent':
      return { gesture, effects: [] };
  }
}

/** The handle a drag takes: the one that the user has chosen, or the nearest. */
function draggedOf(handles: readonly string[], armed: string | null): string | null {
  return armed !== null && handles.includes(armed) ? armed : (handles.at(0) ?? null);
}

function isNear({ xPx, yPx, startXPx, startYPx }: Press): boolean {
  return Math.hypot(xPx - startXPx, yPx - startYPx) < TAP_REACH_PX;
}

function panOf(from: Press, to: Press): SideViewEffect {
  return { kind: 'pan', dxPx: to.xPx - from.xPx, dyPx: to.yPx - from.yPx };
}

/** Measured from where the press began, so that a press beside the handle's middle moves it by nothing. */
function dragOf(handle: string, press: Press, { ctrl, alt }: PointerInput): SideViewEffect {
  const { xPx, yPx, startXPx, startYPx } = press;
  return { kind: 'drag', handle, dxPx: xPx - startXPx, dyPx: yPx - startYPx, snapping: !ctrl && !alt };
}

function hover(gesture: SideViewGesture, input: PointerInput, context: SideViewContext): SideViewStep {
  if (input.pointer === 'touch') return hovering(gesture, null);
  const { xPx, yPx, pointer } = input;
  return hovering(gesture, handlesAt(context.handles, xPx, yPx, context.hitRadiusPx(pointer)).at(0) ?? null);
}

function hovering(gesture: SideViewGesture, hovered: string | null): SideViewStep {
  if (hovered === gesture.hovered) return { gesture, effects: [] };
  return { gesture: { ...gesture, hovered }, effects: [{ kind: 'hover', handle: hovered }] };
}

function pinch(gesture: SideViewGesture, first: Press, second: Press, input: PointerInput): SideViewStep {
  const { id, xPx, yPx } = input;
  const after = [first, second].map((press) => (press.id === id ? { ...press, xPx, yPx } : press));
  const next: Doing = { kind: 'pinching', first: after[0], second: after[1] };
  return doing(gesture, next, ...pinchEffects([first, second], [after[0], after[1]]));
}

function up(gesture: SideViewGesture, input: PointerInput, context: SideViewContext): SideViewStep {
  // The release may lie past the last move.
  const last = isWhereItWas(gesture.doing, input) ? { gesture, effects: [] } : move(gesture, input, context);
  const now = last.gesture.doing;
  const end =
    now.kind === 'pressing' && now.press.id === input.id
      ? doing(last.gesture, NOTHING, tapOf(now.press, now.handles, context.placing))
      : ended(last.gesture, input.id, 'drop');
  return { gesture: end.gesture, effects: [...last.effects, ...end.effects] };
}

function isWhereItWas(now: Doing, { id, xPx, yPx }: PointerInput): boolean {
  const presses =
    now.kind === 'nothing' ? [] : now.kind === 'pinching' ? [now.first, now.second] : [now.press];
  return presses.some((press) => press.id === id && press.xPx === xPx && press.yPx === yPx);
}

function tapOf({ startXPx, startYPx }: Press, handles: readonly string[], placing: boolean): SideViewEffect {
  const [nearest] = handles;
  // However near the handle itself is: its hit area is far larger than a step that a mechanic may want.
  if (placing || nearest === undefined) return { kind: 'tapPlace', xPx: startXPx, yPx: startYPx };
  if (handles.length === 1) return { kind: 'tapHandle', handle: nearest };
  return { kind: 'choose', handles, xPx: startXPx, yPx: startYPx };
}

function cancel(gesture: SideViewGesture, input: PointerInput): SideViewStep {
  if (gesture.doing.kind === 'nothing') return hovering(gesture, null);
  return ended(gesture, input.id, 'restore');
}

/** The pointer is no longer down. Of two pinching fingers the other one goes on panning. */
function ended(gesture: SideViewGesture, id: number, dragged: 'drop' | 'restore'): SideViewStep {
  const now = gesture.doing;
  if (now.kind === 'nothing') return { gesture, effects: [] };
  if (now.kind === 'pinching') {
    const { first, second } = now;
    if (id !== first.id && id !== second.id) return { gesture, effects: [] };
    return doing(gesture, { kind: 'panning', press: id === first.id ? second : first });
  }
  if (now.press.id !== id) return { gesture, effects: [] };
  if (now.kind === 'dragging') return doing(gesture, NOTHING, { kind: dragged, handle: now.handle });
  return doing(gesture, NOTHING);
}

/** Escape takes a drag back and spends the press; other keys are no gesture. */
function key(gesture: SideViewGesture, input: KeyInput): SideViewStep {
  const now = gesture.doing;
  if (input.key !== 'Escape') return { gesture, effects: [] };
  if (now.kind === 'pressing') return doing(gesture, { kind: 'spent', press: now.press });
  if (now.kind !== 'dragging') return { gesture, effects: [] };
  return doing(gesture, { kind: 'spent', press: now.press }, { kind: 'restore', handle: now.handle });
}

/** While a pointer is down the wheel rests: a view that moves would pull a held handle from the hand. */
function wheel(gesture: SideViewGesture, input: WheelInput): SideViewStep {
  if (gesture.doing.kind !== 'nothing') return { gesture, effects: [] };
  return { gesture, effects: [wheelEffect(input)] };
}
