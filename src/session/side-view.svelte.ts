/** The window onto the side view: its size, where the bike lies in it, and fitting the bike into it. */
import { fitView, panView, zoomedAbout, type Extent, type View } from '../scene/view.ts';

/** Free space round the bike when it is fitted, px. */
const MARGIN = 14;
const FIRST_VIEW: View = { scale: 0.3, turn: 0, xPx: 100, yPx: 400 };

export class SideView {
  view = $state.raw<View>(FIRST_VIEW);
  widthPx = $state(0);
  heightPx = $state(0);
  /** Until the user pans or zooms, a change of the window's size fits the bike anew. */
  #untouched = true;

  /** Takes the window's size; fits the bike unless the user has chosen a view. */
  resize(widthPx: number, heightPx: number, extent: Extent | null): void {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    if (this.#untouched && extent !== null) this.showWhole(extent);
  }

  showWhole(extent: Extent): void {
    if (!(this.widthPx > 0 && this.heightPx > 0)) return;
    this.view = fitView(extent, this.widthPx, this.heightPx, MARGIN);
    this.#untouched = true;
  }

  pan(dxPx: number, dyPx: number): void {
    this.view = panView(this.view, dxPx, dyPx);
    this.#untouched = false;
  }

  zoom(xPx: number, yPx: number, factor: number): void {
    this.view = zoomedAbout(this.view, { x: xPx, y: yPx }, factor);
    this.#untouched = false;
  }

  zoomMiddle(factor: number): void {
    this.zoom(this.widthPx / 2, this.heightPx / 2, factor);
  }
}
