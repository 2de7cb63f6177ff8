/** Saving what the side view shows as a picture: lines that scale (SVG), or pixels (PNG). */
import { rideStateOf } from '../../core/riding/states/all-ride-states.ts';
import { visible } from '../../document/json/json.ts';
import { konvaCanvas } from '../../render/konva/konva-canvas.ts';
import { plotLayer } from '../../scene/plot/plot.ts';
import { findTheme } from '../../scene/shapes/theme.ts';
import { Pictures } from '../../session/pictures.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import { pictureLine } from '../../words/kept/picture-words.ts';
import { today } from '../../words/kept/sheet-words.ts';
import { withNote } from '../controls/paper/picture-note.ts';
import { savePng as saveCanvas, saveSceneSvg } from '../controls/paper/save-scene.ts';

function lineOf(bench: Workbench): string {
  const { name, invented } = bench.session.document.bike;
  return pictureLine({
    bikeName: visible(name),
    what: `Side view, ${rideStateOf(bench.standing.state).label.toLowerCase()}`,
    day: today(new Date()),
    system: bench.preferences.style.system,
    invented,
  });
}

export function saveSvg(bench: Workbench): void {
  const { bike } = bench.session.document;
  const { view, widthPx, heightPx } = bench.sideView;
  saveSceneSvg({
    scene: bench.drawing.scene,
    view,
    theme: bench.preferences.theme,
    widthPx,
    heightPx,
    ratio: bench.stateOf(Pictures).ratio(widthPx),
    title: bike.name,
    description: `Side view of ${bike.name} with its chassis geometry. ${bike.about}`,
    line: lineOf(bench),
    fileName: bike.name,
  });
}

/** False when the browser could not make the picture. */
export async function savePng(bench: Workbench): Promise<boolean> {
  const page = konvaCanvas(document.createElement('div'), plotLayer);
  const { view, widthPx, heightPx } = bench.sideView;
  const ratio = bench.stateOf(Pictures).ratio(widthPx);
  const theme = findTheme(bench.preferences.theme);
  page.draw({ scene: bench.drawing.scene, view, theme }, { widthPx, heightPx, pixelRatio: 1 });
  const canvas = withNote(page.picture(ratio), ratio, lineOf(bench), theme);
  page.destroy();
  return canvas !== null && (await saveCanvas(canvas, bench.session.document.bike.name));
}
