/** Tests of the picture of the curves: read again as strict XML, whatever the bike is called, and it says what it is. */
import { expect, it } from 'vitest';
import { HOSTILE_NAMES } from '../../../tests/support/hostile-names.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import { leaves, readSvg } from '../../../tests/support/read-svg.ts';
import { visible } from '../../document/json/json.ts';
import { Curves } from '../../session/tabs/curves.svelte.ts';
import { Workbench } from '../../session/workbench.svelte.ts';
import { dayWords, today } from '../../words/kept/sheet-words.ts';
import { CAUTION_ON_PICTURES } from '../controls/cautions.ts';
import { pictureSvg } from '../controls/paper/picture-svg.ts';
import { curvesPicture } from './curves-picture.ts';

it.each(Object.entries(HOSTILE_NAMES))('a bike whose name holds %s is drawn and named as text', (_, name) => {
  const bench = new Workbench(newDocument({ ...linkedBike, name, invented: true }, sprungSetup));
  const picture = curvesPicture({
    curves: bench.stateOf(Curves),
    preferences: bench.preferences,
    bikeName: name,
    invented: true,
    ratio: (widthPx) => 1920 / widthPx,
  });
  if (picture === null) throw new Error('no curves');
  const root = readSvg(pictureSvg(picture));
  expect(Number(root.attributes.width)).toBeCloseTo(1920, 6);
  const all = leaves(root);
  expect(all.map((each) => each.name)).not.toContain('script');
  expect(all.filter((each) => each.name === 'path').length).toBeGreaterThan(1);
  const note = all
    .filter(({ attributes }) => attributes.class === 'note')
    .map(({ text }) => text)
    .join(' ');
  // Lines break at spaces, of which a name may have several; half a letter cannot stand in XML.
  const close = (text: string): string => text.replace(/\s+/g, ' ').replace(/[\ud800-\udfff]/gu, '');
  expect(close(note)).toContain(close(visible(name)).trim());
  expect(note).toContain('Anti-squat [%] against rear travel [mm].');
  expect(note).toContain(
    `${dayWords(today(new Date()))}. Lengths in mm, angles in degrees. Invented figures.`,
  );
  expect(note).toContain(CAUTION_ON_PICTURES);
});
