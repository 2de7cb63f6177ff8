/** The picture of the curves to save: the chart at its size, and what it says of itself. */
import { chartOf } from '../../curves/chart.ts';
import { chartTitle, courseWords, statesWords } from '../../words/kept/curve-words.ts';
import { visible } from '../../document/json/json.ts';
import type { Curves } from '../../session/tabs/curves.svelte.ts';
import type { Preferences } from '../../session/preferences.svelte.ts';
import { pictureLine } from '../../words/kept/picture-words.ts';
import { today } from '../../words/kept/sheet-words.ts';
import { CHART_PICTURE, type ScenePicture } from '../controls/paper/picture-svg.ts';
import { zonesShown } from './curve-zones.ts';

/** What is saved, and how this person likes to see it. */
export interface CurvesShown {
  readonly curves: Curves;
  readonly preferences: Preferences;
  readonly bikeName: string;
  readonly invented: boolean;
  /** Pixels to each px of a picture that is so many px wide. */
  readonly ratio: (widthPx: number) => number;
}

/** Null where no curve is drawn. */
export function curvesPicture({
  curves,
  preferences,
  bikeName,
  invented,
  ratio,
}: CurvesShown): ScenePicture | null {
  const { set, band, spread } = curves;
  if (set === null) return null;
  const { style, data, theme } = preferences;
  const chart = chartOf({
    set,
    style,
    ...CHART_PICTURE,
    band,
    spread,
    zones: zonesShown(curves, data.band),
  });
  return {
    ...chart,
    theme,
    widthPx: CHART_PICTURE.widthPx,
    heightPx: CHART_PICTURE.heightPx,
    ratio: ratio(CHART_PICTURE.widthPx),
    title: `${bikeName}: ${chartTitle(set, style)}`,
    description: `${courseWords(set, style)} ${statesWords(set, style)}`.trim(),
    line: pictureLine({
      bikeName: visible(bikeName),
      what: chartTitle(set, style),
      day: today(new Date()),
      system: style.system,
      invented,
    }),
    fileName: `${bikeName} ${curves.reading.label}`,
  };
}
