/** Tests of what stands under a saved picture. */
import { expect, it } from 'vitest';
import { NOTE_LINE_PX, NOTE_PX, sceneSvg, stripPx } from '../../../render/svg/scene-svg.ts';
import { plotLayer } from '../../../scene/plot/plot.ts';
import { textWidthPx } from '../../../scene/shapes/text-width.ts';
import { findTheme } from '../../../scene/shapes/theme.ts';
import { CAUTION_ON_PICTURES } from '../cautions.ts';
import { pictureNote } from './picture-note.ts';

const LINE =
  'Road sport, as delivered. Side view, rider on board. 27 Nov 2026. Lengths in mm, angles in degrees.';

it.each([320, 656, 1600])('fits a picture %i px wide and leaves no word out', (widthPx) => {
  const lines = pictureNote(widthPx, LINE);
  expect(lines.join(' ')).toBe(`${LINE} ${CAUTION_ON_PICTURES}`);
  for (const line of lines)
    expect(textWidthPx(line, NOTE_PX)).toBeLessThanOrEqual(widthPx - 2 * NOTE_LINE_PX);
});

it('stands in a strip below the picture, which keeps its own size', () => {
  const note = pictureNote(400, LINE);
  const page = { widthPx: 400, heightPx: 200, title: 'A', description: 'B' };
  const view = { scale: 1, xPx: 0, yPx: 0, turn: 0 };
  const svg = (more: object): string =>
    sceneSvg([], view, findTheme('paper'), plotLayer, { ...page, ...more });
  expect(svg({ note })).toContain(`viewBox="0 0 400 ${200 + stripPx(note)}"`);
  for (const line of note) expect(svg({ note })).toContain(`>${line}</text>`);
  expect(svg({ ratio: 3 })).toContain('width="1200" height="600" viewBox="0 0 400 200"');
  expect(svg({})).toContain('viewBox="0 0 400 200"');
  expect(svg({})).not.toContain('class="note"');
});
