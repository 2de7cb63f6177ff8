/** What stands under a saved picture, in lines that fit its width: what it is, and the caution. */
import { NOTE_LINE_PX, NOTE_PX, stripPx } from '../../../render/svg/scene-svg.ts';
import type { Theme } from '../../../scene/shapes/theme.ts';
import { textWidthPx } from '../../../scene/shapes/text-width.ts';
import { CAUTION_ON_PICTURES } from '../cautions.ts';

/** The lines for a picture so many px wide; `line` says what it is. */
export function pictureNote(widthPx: number, line: string): string[] {
  const room = widthPx - 2 * NOTE_LINE_PX;
  return [...inLines(line, room), ...inLines(CAUTION_ON_PICTURES, room)];
}

function inLines(text: string, room: number): string[] {
  return text.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    return last === undefined || textWidthPx(longer, NOTE_PX) > room
      ? [...lines, word]
      : [...lines.slice(0, -1), longer];
  }, []);
}

/** A canvas with those lines in a strip below it; null when the browser gives no second canvas. `ratio`: pixels to each px. */
export function withNote(
  picture: HTMLCanvasElement,
  ratio: number,
  line: string,
  { background, labelInk }: Theme,
): HTMLCanvasElement | null {
  const note = pictureNote(picture.width / ratio, line);
  const whole = document.createElement('canvas');
  whole.width = picture.width;
  whole.height = picture.height + Math.round(ratio * stripPx(note));
  const context = whole.getContext('2d');
  if (context === null) return null;
  context.fillStyle = background;
  context.fillRect(0, 0, whole.width, whole.height);
  context.drawImage(picture, 0, 0);
  context.fillStyle = labelInk;
  context.font = `${ratio * NOTE_PX}px system-ui, sans-serif`;
  note.forEach((line, i) =>
    context.fillText(line, ratio * NOTE_LINE_PX, picture.height + ratio * (i + 1) * NOTE_LINE_PX),
  );
  return whole;
}
