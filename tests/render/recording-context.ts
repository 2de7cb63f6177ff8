/** A stand-in for a canvas that notes what is laid and painted on it. */

export interface PathPoint {
  readonly xPx: number;
  readonly yPx: number;
}

export interface PaintedPath {
  readonly kind: 'path';
  /** Every place named: ends and controls of curves, ends of arcs and of their equal parts. */
  readonly points: readonly PathPoint[];
  readonly closes: number;
  readonly fill: string | null;
  readonly fillRule: string;
  readonly stroke: string | null;
  readonly widthPx: number;
  readonly dashPx: readonly number[];
  readonly cap: string;
}

export interface PaintedWords {
  readonly kind: 'words';
  readonly text: string;
  readonly at: PathPoint;
  readonly font: string;
  readonly fill: string;
}

export type Painted = PaintedPath | PaintedWords;

/** Whole turns apart, as a canvas draws an arc: never more than one turn. */
function sweepOf(from: number, to: number, counterclockwise: boolean): number {
  const turn = 2 * Math.PI;
  const forward = counterclockwise ? from - to : to - from;
  const swept = forward >= turn ? turn : ((forward % turn) + turn) % turn;
  return counterclockwise ? -swept : swept;
}

/** The canvas has as many of the real one's members as the plotter uses; each means what it means there. */
export class RecordingContext {
  readonly painted: Painted[] = [];
  lineJoin = 'miter';
  lineCap = 'butt';
  lineWidth = 1;
  textAlign = 'start';
  textBaseline = 'alphabetic';
  fillStyle = '#000000';
  strokeStyle = '#000000';
  font = '10px sans-serif';
  #points: PathPoint[] = [];
  #closes = 0;
  #dash: readonly number[] = [];
  /** The outline's own entry, made by its fill, so that the stroke of the same outline joins it. */
  #entry: number | null = null;
  /** Arcs are cut into parts this long at most, radians. */
  readonly #part: number;

  constructor(arcPart: number) {
    this.#part = arcPart;
  }

  beginPath(): void {
    this.#points = [];
    this.#closes = 0;
    this.#entry = null;
  }

  moveTo(xPx: number, yPx: number): void {
    this.#points.push({ xPx, yPx });
  }

  lineTo(xPx: number, yPx: number): void {
    this.#points.push({ xPx, yPx });
  }

  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.#points.push({ xPx: x1, yPx: y1 }, { xPx: x2, yPx: y2 }, { xPx: x, yPx: y });
  }

  arc(x: number, y: number, r: number, from: number, to: number, counterclockwise = false): void {
    const sweep = sweepOf(from, to, counterclockwise);
    const parts = Math.max(1, Math.ceil(Math.abs(sweep) / this.#part - 1e-9));
    for (let i = 0; i <= parts; i++) {
      const angle = from + (sweep * i) / parts;
      this.#points.push({ xPx: x + r * Math.cos(angle), yPx: y + r * Math.sin(angle) });
    }
  }

  closePath(): void {
    this.#closes++;
  }

  setLineDash(dash: readonly number[]): void {
    this.#dash = dash;
  }

  fill(fillRule: string): void {
    this.#note({ fill: this.fillStyle, fillRule });
  }

  stroke(): void {
    this.#note({
      stroke: this.strokeStyle,
      widthPx: this.lineWidth,
      dashPx: this.#dash,
      cap: this.lineCap,
    });
  }

  fillText(text: string, xPx: number, yPx: number): void {
    this.painted.push({ kind: 'words', text, at: { xPx, yPx }, font: this.font, fill: this.fillStyle });
  }

  #note(part: Partial<PaintedPath>): void {
    const plain: PaintedPath = {
      kind: 'path',
      points: this.#points,
      closes: this.#closes,
      fill: null,
      fillRule: 'nonzero',
      stroke: null,
      widthPx: 0,
      dashPx: [],
      cap: 'butt',
    };
    const known = this.#entry === null ? plain : this.painted[this.#entry];
    if (known.kind !== 'path') throw new Error('an outline cannot become words');
    if (this.#entry === null) this.#entry = this.painted.length;
    this.painted[this.#entry] = { ...known, ...part };
  }
}
