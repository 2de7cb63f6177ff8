/** What a hand or a key does on the side view, as the page reports it, in px of the side view from its upper left corner. */

export type PointerKind = 'mouse' | 'touch' | 'pen';

export interface PointerInput {
  /** `cancel` also says that a pointer that only hovers has left. */
  readonly type: 'down' | 'move' | 'up' | 'cancel';
  /** Tells fingers apart. */
  readonly id: number;
  readonly pointer: PointerKind;
  readonly xPx: number;
  readonly yPx: number;
  /** 0 the first button or a touch, 1 the middle one, 2 the second. */
  readonly button: number;
  readonly ctrl: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
}

/** A turn of the wheel; positive toward the lower right. A trackpad's pinch comes as a wheel with `ctrl`. */
export interface WheelInput {
  readonly type: 'wheel';
  readonly xPx: number;
  readonly yPx: number;
  readonly dxPx: number;
  readonly dyPx: number;
  readonly ctrl: boolean;
}

/** A key pressed; `key` as browsers name it. */
export interface KeyInput {
  readonly type: 'key';
  readonly key: string;
  readonly shift: boolean;
  readonly alt: boolean;
  readonly ctrl: boolean;
}

/** The page gets no more events of this pointer, and may have missed its release. */
export interface LostCaptureInput {
  readonly type: 'lostCapture';
  readonly id: number;
}

export type SideViewInput = PointerInput | WheelInput | KeyInput | LostCaptureInput;
