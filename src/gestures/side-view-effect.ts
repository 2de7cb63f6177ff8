/** What a gesture on the side view does. */

export type SideViewEffect =
  /** The handle is being dragged from now on: mark where everything is. */
  | { readonly kind: 'grab'; readonly handle: string }
  /** The grabbed handle is this far from its mark. */
  | {
      readonly kind: 'drag';
      readonly handle: string;
      readonly dxPx: number;
      readonly dyPx: number;
      /** False while Ctrl or Alt is held. */
      readonly snapping: boolean;
    }
  /** The grabbed handle is let go where it is. */
  | { readonly kind: 'drop'; readonly handle: string }
  /** The grabbed handle goes back to its mark. */
  | { readonly kind: 'restore'; readonly handle: string }
  | { readonly kind: 'tapHandle'; readonly handle: string }
  /** A tap on an empty place, or on any place while a handle waits for its place. */
  | { readonly kind: 'tapPlace'; readonly xPx: number; readonly yPx: number }
  /** A tap on several handles, the nearest first, of which the user has to choose one. */
  | {
      readonly kind: 'choose';
      readonly handles: readonly string[];
      readonly xPx: number;
      readonly yPx: number;
    }
  | { readonly kind: 'pan'; readonly dxPx: number; readonly dyPx: number }
  /** The place at xPx, yPx stays where it is. */
  | { readonly kind: 'zoom'; readonly xPx: number; readonly yPx: number; readonly factor: number }
  /** The mouse is over this handle now; null when it is over none. */
  | { readonly kind: 'hover'; readonly handle: string | null };
