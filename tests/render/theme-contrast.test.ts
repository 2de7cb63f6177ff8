/** Whether every line can be seen on every theme's paper, measured as WCAG 2.2 does. */
import { describe, expect, it } from 'vitest';
import type { Role } from '../../src/scene/shapes/shape.ts';
import { findTheme, THEMES } from '../../src/scene/shapes/theme.ts';
import { ROLES } from './every-shape.ts';

/** WCAG 2.2, 1.4.11 for lines and 1.4.3 for words. */
const LEAST_FOR_LINES = 3;
const LEAST_FOR_WORDS = 4.5;
/** Quiet parts of the silhouette, which show by their fill beside the lines around them; a chart's grid is as quiet. */
const QUIET: readonly Role[] = [
  'bodywork',
  'engine',
  'crease',
  'tube',
  'grid',
  'rider',
  'riderEdge',
  'riderHead',
];
const LEAST_FOR_QUIET = 1.2;

type Colour = readonly [number, number, number];

/** `#rrggbb`, or `#rrggbbaa` laid over `under`. */
function colourOf(hex: string, under: Colour): Colour {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})?$/i.exec(hex);
  if (parts === null) throw new Error(`${hex} is not a colour`);
  const alpha = parts[4] === undefined ? 1 : parseInt(parts[4], 16) / 255;
  const mixed = (i: number) => alpha * parseInt(parts[i + 1], 16) + (1 - alpha) * under[i];
  return [mixed(0), mixed(1), mixed(2)];
}

/** Relative luminance of an sRGB colour. */
function luminance(colour: Colour): number {
  const [r, g, b] = colour.map((part) => {
    const s = part / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: Colour, b: Colour): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

const WHITE: Colour = [255, 255, 255];

it('black on white is 21 to 1, and a half-transparent black on white a middle grey', () => {
  expect(contrast([0, 0, 0], WHITE)).toBeCloseTo(21, 9);
  expect(contrast(colourOf('#767676', WHITE), WHITE)).toBeCloseTo(4.54, 2);
  expect(colourOf('#00000080', WHITE)[0]).toBeCloseTo(127, 0);
});

describe.each(THEMES)('the theme $key', ({ key }) => {
  const theme = findTheme(key);
  const paper = colourOf(theme.background, WHITE);
  const against = (hex: string) => contrast(colourOf(hex, paper), paper);

  it('has a style for every role that leaves something to see', () => {
    for (const role of ROLES) {
      const { stroke, fill, widthPx } = theme.roles[role];
      expect(stroke ?? fill, role).not.toBeNull();
      expect(widthPx, role).toBeGreaterThan(0);
    }
  });

  it('S8: every line stands out from the paper by 3 to 1', () => {
    const faint = ROLES.filter((role) => {
      const { stroke } = theme.roles[role];
      return stroke !== null && against(stroke) < (QUIET.includes(role) ? LEAST_FOR_QUIET : LEAST_FOR_LINES);
    });
    expect(faint).toEqual([]);
  });

  it('S8: words stand out from their backing, and the names of areas from every area, by 4.5 to 1', () => {
    expect(contrast(colourOf(theme.labelInk, paper), colourOf(theme.labelBacking, paper))).toBeGreaterThan(
      LEAST_FOR_WORDS,
    );
    const name = theme.roles.zoneName.stroke ?? theme.labelInk;
    for (const role of ['squatZone', 'neutralZone', 'liftZone', 'proSquatZone'] as const) {
      const area = colourOf(theme.roles[role].fill ?? theme.background, paper);
      expect(contrast(colourOf(name, area), area), role).toBeGreaterThan(LEAST_FOR_WORDS);
    }
  });

  it('S8: the lines of the construction and of charts stand out from every area they cross by 3 to 1', () => {
    const lines = [
      'squatLine',
      'loadTransferLine',
      'engineBrakingLine',
      'brakeLine',
      'stayLine',
      'brakeCrossing',
      'trailLine',
      'steeringAxis',
      'chainLine',
      'shadow',
      'zoneEdge',
      'zoneHatch',
      'ghost',
      'curveNow',
      'curveBaseline',
      'curveBeside1',
      'curveBeside2',
      'curveBeside3',
      'curveBeside4',
      'curveBeside5',
      'curveBeside6',
      'compared1',
      'compared2',
      'curveFloor',
    ] as const;
    const areas = ['squatZone', 'neutralZone', 'liftZone', 'proSquatZone'] as const;
    const faint = lines.flatMap((line) =>
      areas
        .map((area) => {
          const ground = colourOf(theme.roles[area].fill ?? theme.background, paper);
          return { line, area, by: contrast(colourOf(theme.roles[line].stroke ?? '', ground), ground) };
        })
        .filter(({ by }) => by < LEAST_FOR_LINES),
    );
    expect(faint).toEqual([]);
  });

  it('S8: ghosts and setups side by side, which are drawn in front of the bike, stand out from its parts by 3 to 1', () => {
    // Rubber and seat are as dark as the lines themselves; there the rest of the outline shows it.
    const parts: readonly Role[] = ['rim', 'frame', 'bodywork', 'engine', 'fork', 'swingarm'];
    const lines: readonly Role[] = ['ghost', 'compared1', 'compared2', 'curveBeside5', 'curveBeside4'];
    const faint = lines
      .flatMap((line) =>
        parts.map((part) => {
          const ground = colourOf(theme.roles[part].fill ?? theme.background, paper);
          return { line, part, by: contrast(colourOf(theme.roles[line].stroke ?? '', ground), ground) };
        }),
      )
      .filter(({ by }) => by < LEAST_FOR_LINES);
    expect(faint).toEqual([]);
  });
});
