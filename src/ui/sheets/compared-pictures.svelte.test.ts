/** Tests of the pictures of a comparison: read again as XML, they hold each setup, the bike, day, units and caution. */
import { expect, it } from 'vitest';
import { HOSTILE_NAMES } from '../../../tests/support/hostile-names.ts';
import { leaves, readSvg } from '../../../tests/support/read-svg.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { CURVE_AXES } from '../../curves/curve-axes.ts';
import { lookOf } from '../../curves/line-look.ts';
import { setAdjusters } from '../../document/edits.ts';
import { bikeExtent } from '../../scene/extent.ts';
import { findTheme } from '../../scene/shapes/theme.ts';
import { Pictures } from '../../session/pictures.svelte.ts';
import { comparedCurves } from '../../session/tabs/compared-curves.ts';
import { Comparison } from '../../session/tabs/comparison.svelte.ts';
import { Workbench } from '../../session/workbench.svelte.ts';
import { dayWords, today } from '../../words/kept/sheet-words.ts';
import { CAUTION_ON_PICTURES } from '../controls/cautions.ts';
import { pictureSvg, type ScenePicture } from '../controls/paper/picture-svg.ts';
import { comparedChart, comparedSideView } from './compared-pictures.ts';

const TURNS_TEXT = String.fromCodePoint(0x202e);
const HOSTILE = `"><script>1</script>&amp;${TURNS_TEXT}`;

function opened(name = HOSTILE) {
  const bench = new Workbench(newDocument({ ...linkedBike, name, invented: true }, sprungSetup));
  bench.session.commit((from) => setAdjusters(from, { shockLength: 4 }), 'Turned');
  const { live } = bench.standing;
  if (live === null) throw new Error('the bike does not stand');
  bench.sideView.resize(1000, 600, bikeExtent(live.stance));
  const comparison = bench.stateOf(Comparison);
  comparison.showOutlines();
  bench.stateOf(Pictures).width = '3840';
  return { bench, comparison };
}

/** The picture as a viewer of SVG reads it. */
function read(picture: ScenePicture | null) {
  if (picture === null) throw new Error('no picture');
  const root = readSvg(pictureSvg(picture));
  const all = leaves(root);
  const texts = all.filter(({ name }) => name === 'text');
  const note = texts.filter(({ attributes }) => attributes.class === 'note').map(({ text }) => text);
  return {
    root,
    texts: texts.map(({ text }) => text),
    note: note.join(' '),
    names: all.map(({ name }) => name),
    all,
  };
}

it.each(['side view', 'curves'])(
  'of %s hold every setup at the width chosen, and say what they are',
  (which) => {
    const { bench, comparison } = opened();
    const { compared } = comparison;
    const set = comparedCurves(compared, antiSquat, CURVE_AXES[0], 'riderUp');
    if (set === null) throw new Error('no curves');
    const { root, texts, note, names, all } = read(
      which === 'curves'
        ? comparedChart(bench, compared, set, 'rider on board')
        : comparedSideView(bench, compared, 'rider on board'),
    );
    expect(Number(root.attributes.width)).toBeCloseTo(3840, 6);
    expect(texts).toEqual(expect.arrayContaining(['A', 'B']));
    for (const slot of [0, 1]) {
      const { stroke } = findTheme(bench.preferences.theme).roles[lookOf({ of: 'compared', slot }).role];
      expect(
        all.some(({ attributes }) => attributes.stroke === stroke),
        `line ${slot}`,
      ).toBe(true);
    }
    expect(names).not.toContain('script');
    expect(root.children[0]?.text).toContain('"><script>1</script>&amp;');
    expect(note).toContain('rider on board: A Baseline and B Now.');
    expect(note).toContain('"><script>1</script>&amp;‹U+202E›. ');
    expect(note).toContain(
      `${dayWords(today(new Date()))}. Lengths in mm, angles in degrees. Invented figures.`,
    );
    expect(note).toContain(CAUTION_ON_PICTURES);
    expect(note).toContain(
      which === 'curves' ? 'Anti-squat [%] against rear travel [mm], ' : 'Setups compared, ',
    );
  },
);

it('leave out a setup that does not stand, and there is none of the side view without any', () => {
  const { bench, comparison } = opened();
  const [first, second] = comparison.compared;
  const fallen = { ...first, stood: { reason: 'noFork' } } as unknown as typeof first;
  expect(read(comparedSideView(bench, [fallen, second], 'braking')).note).toContain(
    'compared, braking: B Now.',
  );
  expect(comparedSideView(bench, [fallen], 'braking')).toBeNull();
});

it.each(Object.entries(HOSTILE_NAMES))('are whole XML where bike and setups are called %s', (_, name) => {
  const { bench, comparison } = opened(name);
  const compared = comparison.compared.map((each) => ({ ...each, name }));
  const set = comparedCurves(compared, antiSquat, CURVE_AXES[0], 'riderUp');
  if (set === null) throw new Error('no curves');
  for (const picture of [
    comparedSideView(bench, compared, 'rider on board'),
    comparedChart(bench, compared, set, 'rider on board'),
  ]) {
    const { names, note } = read(picture);
    expect(names).not.toContain('script');
    expect(note).toContain(CAUTION_ON_PICTURES);
  }
});
