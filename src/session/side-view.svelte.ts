/** The window onto the side view: its size, where the bike lies in it, and fitting the bike into it. */
import { fitView, panView, zoomedAbout, type Extent, type View } from '../scene/shapes/view.ts';

/** Free space round the bike when it is fitted, px. */
const MARGIN = 14;
/** Kept free ahead of the bike, as a part of the width, unless the window is too narrow for it, px. */
const AHEAD = 0.1;
const NARROW = 520;
/** Free space behind the bike in a narrow window, px, and under it for words: all else is left ahead of it and above, for close-ups. */
const NARROW_EDGE = 2;
const NARROW_FOOT = 13;
/** Under this height, px, the close-ups need the room more than the words below. */
const LOW = 230;
const LOW_FOOT = 9;
const FIRST_VIEW: View = { scale: 0.3, turn: 0, xPx: 100, yPx: 400 };

export class SideView {
  view = $state.raw<View>(FIRST_VIEW);
  widthPx = $state(0);
  heightPx = $state(0);
  /** Until the user pans or zooms, a change of the window's size fits the bike anew. */
  #untouched = $state(true);
  /** The window's size when the bike was last fitted, px: at that size it lies where it was put. */
  #fittedTo = { widthPx: 0, heightPx: 0 };

  /** Whether the user has zoomed or panned since the bike was last fitted. */
  get chosen(): boolean {
    return !this.#untouched;
  }

  /** Takes the window's size; fits the bike to a new one unless the user has chosen a view. */
  resize(widthPx: number, heightPx: number, extent: Extent | null): void {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    const fitted = widthPx === this.#fittedTo.widthPx && heightPx === this.#fittedTo.heightPx;
    if (this.#untouched && !fitted && extent !== null) this.showWhole(extent);
  }

  showWhole(extent: Extent): void {
    if (!(this.widthPx > 0 && this.heightPx > 0)) return;
    const narrow = this.widthPx <= NARROW;
    const ahead = narrow ? 0 : AHEAD * this.widthPx;
    const edge = narrow ? NARROW_EDGE : MARGIN;
    const fitted = fitView(extent, this.widthPx - ahead, this.heightPx, MARGIN);
    const drawn = fitted.scale * (extent.right - extent.left);
    const high = fitted.scale * (extent.top - extent.bottom);
    // What width is left lies ahead of the bike, where a close-up of the front patch has its place.
    const left = Math.max(0, (this.widthPx - ahead - drawn) / 2 - edge);
    const foot = this.heightPx < LOW ? LOW_FOOT : NARROW_FOOT;
    const down = narrow ? Math.max(0, (this.heightPx - high) / 2 - foot) : 0;
    this.view = { ...fitted, xPx: fitted.xPx - left, yPx: fitted.yPx + down };
    this.#untouched = true;
    this.#fittedTo = { widthPx: this.widthPx, heightPx: this.heightPx };
  }

  pan(dxPx: number, dyPx: number): void {
    this.view = panView(this.view, dxPx, dyPx);
    this.#untouched = false;
  }

  zoom(xPx: number, yPx: number, factor: number): void {
    this.view = zoomedAbout(this.view, { x: xPx, y: yPx }, factor);
    this.#untouched = false;
  }

  /** Enlarges about a place and brings it to the middle. */
  zoomTo(xPx: number, yPx: number, factor: number): void {
    this.zoom(xPx, yPx, factor);
    this.pan(this.widthPx / 2 - xPx, this.heightPx / 2 - yPx);
  }

  zoomMiddle(factor: number): void {
    this.zoom(this.widthPx / 2, this.heightPx / 2, factor);
  }
}
