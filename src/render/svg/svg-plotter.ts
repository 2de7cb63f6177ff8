/** Plots as the text of SVG elements. */
import type { Paint, Plotter, Words } from '../../scene/plot/plotter.ts';
import { escapeXml } from './escape-xml.ts';

/** Parts of an arc this long at most need no flag for the long way round; radians. */
const LONGEST_ARC = (2 * Math.PI) / 3;
/** Places nearer to each other than this are one, px. */
const SAME_PLACE = 1e-6;

export class SvgPlotter implements Plotter {
  /** The elements so far, from back to front. */
  readonly elements: string[] = [];
  #d = '';
  #x = NaN;
  #y = NaN;
  #startX = NaN;
  #startY = NaN;

  begin(): void {
    this.#d = '';
    this.#x = this.#y = NaN;
  }

  move(xPx: number, yPx: number): void {
    this.#d += `M${digits(xPx)} ${digits(yPx)}`;
    this.#startX = xPx;
    this.#startY = yPx;
    this.#at(xPx, yPx);
  }

  line(xPx: number, yPx: number): void {
    this.#d += `L${digits(xPx)} ${digits(yPx)}`;
    this.#at(xPx, yPx);
  }

  curve(x1Px: number, y1Px: number, x2Px: number, y2Px: number, xPx: number, yPx: number): void {
    this.#d += `C${[x1Px, y1Px, x2Px, y2Px, xPx, yPx].map(digits).join(' ')}`;
    this.#at(xPx, yPx);
  }

  arc(xPx: number, yPx: number, radiusPx: number, from: number, to: number): void {
    const startX = xPx + radiusPx * Math.cos(from);
    const startY = yPx + radiusPx * Math.sin(from);
    if (Number.isNaN(this.#x)) this.move(startX, startY);
    else if (Math.hypot(startX - this.#x, startY - this.#y) > SAME_PLACE) this.line(startX, startY);
    const parts = Math.max(1, Math.ceil(Math.abs(to - from) / LONGEST_ARC));
    const clockwise = to >= from ? 1 : 0;
    for (let i = 1; i <= parts; i++) {
      const angle = from + ((to - from) * i) / parts;
      const x = xPx + radiusPx * Math.cos(angle);
      const y = yPx + radiusPx * Math.sin(angle);
      this.#d += `A${digits(radiusPx)} ${digits(radiusPx)} 0 0 ${clockwise} ${digits(x)} ${digits(y)}`;
      this.#at(x, y);
    }
  }

  close(): void {
    this.#d += 'Z';
    this.#at(this.#startX, this.#startY);
  }

  paint({ fill, fillRule, stroke, widthPx, dashPx, ends }: Paint): void {
    if (this.#d === '') return;
    const attributes = [`d="${this.#d}"`, colour('fill', fill ?? 'none')];
    if (fill !== null && fillRule === 'evenOdd') attributes.push('fill-rule="evenodd"');
    if (stroke !== null) {
      attributes.push(colour('stroke', stroke), `stroke-width="${digits(widthPx)}"`);
      if (dashPx.length > 0) attributes.push(`stroke-dasharray="${dashPx.map(digits).join(' ')}"`);
      if (ends === 'round') attributes.push('stroke-linecap="round"');
    }
    this.elements.push(`<path ${attributes.join(' ')}/>`);
  }

  words({ text, xPx, yPx, sizePx, bold, colour: ink }: Words): void {
    const weight = bold ? ' font-weight="700"' : '';
    this.elements.push(
      `<text x="${digits(xPx)}" y="${digits(yPx)}" font-size="${digits(sizePx)}"${weight} ${colour('fill', ink)}>` +
        `${escapeXml(text)}</text>`,
    );
  }

  #at(x: number, y: number): void {
    this.#x = x;
    this.#y = y;
  }
}

/** A number to a thousandth of a px, without zeros at its end. */
function digits(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

const WITH_ALPHA = /^(#[0-9a-f]{6})([0-9a-f]{2})$/i;

/** A colour as an attribute; its transparency apart, which not every viewer of SVG reads in a hexadecimal colour. */
function colour(attribute: 'fill' | 'stroke', value: string): string {
  const parts = WITH_ALPHA.exec(value);
  if (parts === null) return `${attribute}="${escapeXml(value)}"`;
  const opacity = digits(parseInt(parts[2], 16) / 255);
  return `${attribute}="${parts[1]}" ${attribute}-opacity="${opacity}"`;
}
