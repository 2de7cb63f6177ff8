/** Holds a drawing that went through a list of numbers against the same drawing painted straight away. */
import { describe, expect, it } from 'vitest';
import { CanvasPlotter, type CanvasContext } from '../../src/render/canvas/canvas-plotter.ts';
import { drawingList } from '../../src/render/canvas/drawing-list.ts';
import { paintList, type CanvasSize } from '../../src/render/canvas/paint-list.ts';
import { plotLayer } from '../../src/scene/plot/plot.ts';
import type { Scene } from '../../src/scene/shapes/shape.ts';
import { findTheme, THEMES } from '../../src/scene/shapes/theme.ts';
import { EVERY_SHAPE, TURNED_VIEW } from './every-shape.ts';
import { RecordingContext, type Painted } from './recording-context.ts';

/** Arcs are noted as they come. */
const WHOLE_ARCS = 7;
const SIZE: CanvasSize = { widthPx: 1280, heightPx: 720, pixelRatio: 2 };

/** A canvas that notes what is painted, and which canvases are laid on it with how much ink. */
class Paper extends RecordingContext {
  globalAlpha = 1;
  readonly laid: { readonly paper: unknown; readonly ink: number; readonly box: readonly number[] }[] = [];
  readonly cleared: (readonly number[])[] = [];
  readonly boxes: { readonly colour: string; readonly box: readonly number[] }[] = [];

  constructor() {
    super(WHOLE_ARCS);
  }

  clearRect(...box: readonly number[]): void {
    this.cleared.push(box);
  }

  fillRect(...box: readonly number[]): void {
    this.boxes.push({ colour: this.fillStyle, box });
  }

  drawImage(paper: unknown, ...box: readonly number[]): void {
    this.laid.push({ paper, ink: this.globalAlpha, box });
  }
}

function straight(scene: Scene, theme: ReturnType<typeof findTheme>): Painted[] {
  const paper = new Paper();
  for (const layer of scene)
    plotLayer(layer, TURNED_VIEW, theme, new CanvasPlotter(paper as unknown as CanvasContext));
  return paper.painted;
}

/** The page's own canvas, and those of the dimmed layers in the order in which they were made. */
function throughList(scene: Scene, theme: ReturnType<typeof findTheme>) {
  const paper = new Paper();
  const dimmed: Paper[] = [];
  const list = drawingList({ scene, view: TURNED_VIEW, theme }, plotLayer);
  paintList(list, theme.background, paper as unknown as CanvasContext, SIZE, () => {
    const own = new Paper();
    dimmed.push(own);
    return { canvas: own as unknown as HTMLCanvasElement, context: own as unknown as CanvasContext };
  });
  return { paper, dimmed, list };
}

const inFull: Scene = EVERY_SHAPE.map((layer) => ({ ...layer, ink: 1 }));

describe.each(THEMES)('a drawing as a list, in the theme $key', ({ key }) => {
  const theme = findTheme(key);

  it('paints every outline and every word as it is painted straight away, to the last digit', () => {
    const { paper, dimmed } = throughList(inFull, theme);
    expect(paper.painted.length).toBeGreaterThan(70);
    expect(paper.painted).toEqual(straight(inFull, theme));
    expect(dimmed).toEqual([]);
  });

  it('begins with the background over the whole window, cleared for a background that lets through', () => {
    const whole = [0, 0, SIZE.widthPx, SIZE.heightPx];
    const { paper } = throughList(inFull, theme);
    expect(paper.cleared).toEqual([whole]);
    expect(paper.boxes).toEqual([{ colour: theme.background, box: whole }]);
  });
});

describe('a drawing as a list', () => {
  const theme = findTheme('paper');

  it('dims each layer as a whole, on a canvas that is laid over the others with the layer’s ink', () => {
    const { paper, dimmed } = throughList(EVERY_SHAPE, theme);
    const faint = EVERY_SHAPE.filter(({ ink }) => ink !== 1);
    expect(faint.length).toBeGreaterThan(1);
    expect(paper.laid).toEqual(
      faint.map(({ ink }, i) => ({ paper: dimmed[i], ink, box: [0, 0, SIZE.widthPx, SIZE.heightPx] })),
    );
    expect(paper.globalAlpha).toBe(1);
    faint.forEach((layer, i) => expect(dimmed[i].painted).toEqual(straight([layer], theme)));
    const whole = EVERY_SHAPE.filter(({ ink }) => ink === 1);
    expect(paper.painted).toEqual(straight(whole, theme));
  });

  it('names a colour or a word once, however often it is used', () => {
    const { texts } = throughList(EVERY_SHAPE, theme).list;
    expect(new Set(texts).size).toBe(texts.length);
  });

  it('holds a drawing much larger than usual, and a usual one after it', () => {
    const many: Scene = Array.from({ length: 40 }, () => inFull).flat();
    const { list } = throughList(many, theme);
    expect(list.numbers.length).toBeGreaterThan(40_000);
    expect(throughList(many, theme).paper.painted).toEqual(straight(many, theme));
    const after = throughList(inFull, theme);
    expect(after.list.numbers.length).toBe(list.numbers.length / 40);
    expect(after.paper.painted).toEqual(straight(inFull, theme));
  });

  it('keeps a list as it was when the next one is made', () => {
    const { list } = throughList(inFull, theme);
    const before = list.numbers.slice();
    throughList(EVERY_SHAPE, findTheme('garage'));
    expect(list.numbers).toEqual(before);
  });
});
