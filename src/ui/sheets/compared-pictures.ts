/** Pictures of a comparison to save: the side view with the outline of each setup, and one reading of all as curves. */
import { chartOf } from '../../curves/chart.ts';
import type { CurveSet } from '../../curves/curve-set.ts';
import { visible } from '../../document/json/json.ts';
import { Pictures } from '../../session/pictures.svelte.ts';
import type { Compared } from '../../session/tabs/comparison.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import { comparedNames } from '../../words/kept/compare-words.ts';
import { chartTitle } from '../../words/kept/curve-words.ts';
import { pictureLine } from '../../words/kept/picture-words.ts';
import { today } from '../../words/kept/sheet-words.ts';
import { CHART_PICTURE, type ScenePicture } from '../controls/paper/picture-svg.ts';

/** What both pictures say of themselves; `what` is shown and `state` is how the bikes are ridden. */
function wordsOf(bench: Workbench, compared: readonly Compared[], what: string, state: string) {
  const { name, invented } = bench.session.document.bike;
  const names = comparedNames(compared.map(({ letter, name }) => ({ letter, name: visible(name) })));
  const shown = `${what}, ${state}: ${names}`;
  return {
    theme: bench.preferences.theme,
    title: `${name}: ${what}`,
    description: shown,
    line: pictureLine({
      bikeName: visible(name),
      what: shown,
      day: today(new Date()),
      system: bench.preferences.style.system,
      invented,
    }),
    fileName: `${name} ${what}`,
  };
}

/** The side view as it is on the page, with the outline of each setup that stands; null where none does. */
export function comparedSideView(
  bench: Workbench,
  compared: readonly Compared[],
  state: string,
): ScenePicture | null {
  const drawn = compared.filter(({ stood }) => 'stance' in stood);
  if (drawn.length === 0) return null;
  const { view, widthPx, heightPx } = bench.sideView;
  return {
    ...wordsOf(bench, drawn, 'Setups compared', state),
    scene: bench.drawing.scene,
    view,
    widthPx,
    heightPx,
    ratio: bench.stateOf(Pictures).ratio(widthPx),
  };
}

/** The curves of all over one another. */
export function comparedChart(
  bench: Workbench,
  compared: readonly Compared[],
  set: CurveSet,
  state: string,
): ScenePicture {
  const { style } = bench.preferences;
  const { widthPx, heightPx } = CHART_PICTURE;
  return {
    ...wordsOf(bench, compared, chartTitle(set, style), state),
    ...chartOf({ set, style, ...CHART_PICTURE, band: null, zones: null }),
    widthPx,
    heightPx,
    ratio: bench.stateOf(Pictures).ratio(widthPx),
  };
}
