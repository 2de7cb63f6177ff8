/** The three themes: which colour, weight and dash each role has on paper, in the garage and in the sun. */
import type { Role } from './shape.ts';

export type ThemeName = 'paper' | 'garage' | 'sun';

export const THEMES: readonly { readonly key: ThemeName; readonly label: string }[] = [
  { key: 'paper', label: 'Paper' },
  { key: 'garage', label: 'Garage' },
  { key: 'sun', label: 'Sun' },
];

/** How a role is drawn. Widths and dashes are px of the screen. */
export interface RoleStyle {
  readonly stroke: string | null;
  readonly fill: string | null;
  readonly widthPx: number;
  readonly dashPx: readonly number[];
}

export interface Theme {
  readonly name: ThemeName;
  readonly background: string;
  /** Behind words, so that lines do not run through them. */
  readonly labelBacking: string;
  /** Words, except the names of areas. */
  readonly labelInk: string;
  readonly roles: Readonly<Record<Role, RoleStyle>>;
}

/** The colour-blind-safe set of Okabe and Ito (2002), by its authors' names. */
const OKABE_ITO = {
  orange: '#e69f00',
  skyBlue: '#56b4e9',
  bluishGreen: '#009e73',
  yellow: '#f0e442',
  blue: '#0072b2',
  vermillion: '#d55e00',
  reddishPurple: '#cc79a7',
} as const;

/** What differs between themes: the paper, the inks, and a colour for each line that matters. */
interface Palette {
  readonly background: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly inkFaint: string;
  readonly rubber: string;
  readonly metal: string;
  readonly metalDark: string;
  readonly body: string;
  readonly bodyLine: string;
  readonly seat: string;
  readonly rider: string;
  readonly engine: string;
  readonly shadow: string;
  readonly shadowFill: string;
  readonly ghost: string;
  readonly squat: string;
  readonly transfer: string;
  readonly trail: string;
  readonly braking: string;
  readonly chain: string;
  readonly straw: string;
  readonly brick: string;
  readonly squatZone: string;
  readonly neutralZone: string;
  readonly liftZone: string;
  readonly proSquatZone: string;
  readonly trailFill: string;
  readonly heavier: number;
}

const PALETTES: Readonly<Record<ThemeName, Palette>> = {
  paper: {
    background: '#faf8f2',
    ink: '#23272c',
    inkSoft: '#5d636a',
    inkFaint: '#b9b4a8',
    rubber: '#3a3e44',
    metal: '#e9e6de',
    metalDark: '#c9c5bb',
    body: '#e3ddd0',
    bodyLine: '#a39c8c',
    seat: '#55585c',
    rider: '#e4d8bf',
    engine: '#d8d3c7',
    shadow: '#6a737c',
    shadowFill: '#56b4e98c',
    ghost: '#5f6871',
    squat: OKABE_ITO.vermillion,
    transfer: OKABE_ITO.blue,
    trail: '#00875f',
    braking: '#8f3d74',
    chain: '#23272c',
    straw: '#7a6200',
    brick: '#b3202e',
    squatZone: '#0072b21c',
    neutralZone: '#009e7329',
    liftZone: '#d55e001f',
    proSquatZone: '#cc79a72e',
    trailFill: '#009e7355',
    heavier: 1,
  },
  garage: {
    background: '#15181c',
    ink: '#e9e7e2',
    inkSoft: '#a3a9b0',
    inkFaint: '#4a5058',
    rubber: '#0b0d0f',
    metal: '#4b535d',
    metalDark: '#39414a',
    body: '#363e49',
    bodyLine: '#8a95a2',
    seat: '#0f1114',
    rider: '#4a473f',
    engine: '#2d343c',
    shadow: '#7f8a96',
    shadowFill: '#56b4e999',
    ghost: '#a9b4bf',
    squat: OKABE_ITO.orange,
    transfer: OKABE_ITO.skyBlue,
    trail: '#1fbf90',
    braking: '#e79ac6',
    chain: '#e9e7e2',
    straw: OKABE_ITO.yellow,
    brick: '#ff8f80',
    squatZone: '#56b4e924',
    neutralZone: '#009e7350',
    liftZone: '#e69f0026',
    proSquatZone: '#cc79a733',
    trailFill: '#009e7366',
    heavier: 1,
  },
  sun: {
    background: '#ffffff',
    ink: '#000000',
    inkSoft: '#2b2b2b',
    inkFaint: '#767676',
    rubber: '#000000',
    metal: '#ffffff',
    metalDark: '#d0d0d0',
    body: '#f0f0f0',
    bodyLine: '#555555',
    seat: '#000000',
    rider: '#e6e6e6',
    engine: '#e4e4e4',
    shadow: '#6b6b6b',
    shadowFill: '#56b4e9b3',
    ghost: '#5a5a5a',
    squat: '#b34700',
    transfer: '#005a8d',
    trail: '#00664a',
    braking: '#7a1f5c',
    chain: '#000000',
    straw: '#5f4b00',
    brick: '#8c0018',
    squatZone: '#0072b22e',
    neutralZone: '#009e7355',
    liftZone: '#d55e0033',
    proSquatZone: '#cc79a744',
    trailFill: '#009e7377',
    heavier: 1.4,
  },
};

function themeOf(name: ThemeName): Theme {
  const p = PALETTES[name];
  const line = (stroke: string, widthPx: number, dashPx: readonly number[] = []): RoleStyle => ({
    stroke,
    fill: null,
    widthPx: widthPx * p.heavier,
    dashPx,
  });
  const solid = (fill: string, stroke: string | null, widthPx = 1.25): RoleStyle => ({
    stroke,
    fill,
    widthPx: widthPx * p.heavier,
    dashPx: [],
  });
  return {
    name,
    background: p.background,
    labelBacking: `${p.background}e0`,
    labelInk: p.ink,
    roles: {
      ground: line(p.ink, 1.75),
      tyre: solid(p.rubber, p.ink, 1),
      rim: solid(p.metalDark, p.ink, 1),
      spoke: line(p.inkSoft, 1.25),
      disc: solid('#00000000', p.inkSoft, 1.25),
      tube: line(p.metalDark, 1),
      tubeEdge: line(p.ink, 1),
      bar: line(p.inkSoft, 1),
      crease: line(p.bodyLine, 1.25),
      frame: solid(p.metalDark, p.ink, 1.25),
      bodywork: solid(p.body, p.bodyLine, 1.25),
      seat: solid(p.seat, p.ink, 1),
      rider: line(p.rider, 1),
      riderEdge: line(p.bodyLine, 1),
      riderHead: solid(p.rider, p.bodyLine, 1.25),
      engine: solid(p.engine, p.bodyLine, 1),
      fork: solid(p.metal, p.ink, 1.25),
      forkTube: solid(p.metalDark, p.ink, 1.25),
      clamp: solid(p.metal, p.ink, 1.5),
      swingarm: solid(p.metal, p.ink, 1.5),
      shock: solid(p.metal, p.ink, 1.25),
      spring: line(p.inkSoft, 2),
      sprocket: solid(p.metalDark, p.ink, 1),
      chain: line(p.chain, 1.25),
      belt: line(p.chain, 1),
      stay: solid(p.metal, p.ink, 1.5),
      guide: solid(p.inkFaint, p.inkSoft, 1),
      rubbing: line(p.squat, 5),
      reach: line(p.inkSoft, 1.25, [6, 3]),
      axle: solid(p.background, p.ink, 1.5),
      shadow: line(p.shadow, 2, [6, 3]),
      shadowBody: { ...line(p.shadow, 2, [6, 3]), fill: p.shadowFill },
      ghost: line(p.ghost, 1, [1, 3]),
      squatZone: solid(p.squatZone, null),
      neutralZone: solid(p.neutralZone, null),
      liftZone: solid(p.liftZone, null),
      proSquatZone: solid(p.proSquatZone, null),
      zoneEdge: line(p.inkSoft, 1),
      zoneHatch: line(p.inkSoft, 1),
      zoneName: line(p.inkSoft, 1),
      chainLine: line(p.ink, 1, [2, 3]),
      swingarmLine: line(p.ink, 1, [10, 4, 2, 4]),
      squatLine: line(p.squat, 3),
      loadTransferLine: line(p.transfer, 2.25, [9, 5]),
      engineBrakingLine: line(p.braking, 2.5, [16, 4, 3, 4]),
      brakeLine: line(p.braking, 2.5, [5, 4]),
      stayLine: line(p.ink, 1.25, [8, 3, 2, 3, 2, 3]),
      brakeCrossing: solid(p.background, p.braking, 2),
      steeringAxis: line(p.ink, 1, [12, 4, 2, 4]),
      trailTriangle: solid(p.trailFill, p.trail, 1.5),
      trailLine: line(p.trail, 3),
      wheelbaseLine: line(p.inkSoft, 1),
      heightLine: line(p.inkSoft, 1, [3, 3]),
      instantCentre: solid(p.background, p.squat, 2),
      centreOfGravity: solid(p.background, p.ink, 1.5),
      dimension: line(p.transfer, 1.5),
      closeUp: solid(p.background, p.inkSoft, 1.5),
      snapGuide: line(p.transfer, 1, [2, 2]),
      grid: line(p.inkFaint, 1),
      axisLine: line(p.inkSoft, 1.5),
      axisName: line(p.inkSoft, 1),
      curveNow: line(p.squat, 3),
      curveBaseline: line(p.shadow, 2, [7, 5]),
      curveBeside1: line(p.transfer, 2.25, [2, 3]),
      curveBeside2: line(p.trail, 2.25, [13, 4]),
      curveBeside3: line(p.braking, 2.25, [12, 3, 2, 3]),
      curveBeside4: line(p.ink, 2, [12, 3, 2, 3, 2, 3]),
      curveBeside5: line(p.straw, 2.25, [4, 2, 4, 7]),
      curveBeside6: line(p.brick, 2.25, [1, 5]),
      compared1: line(p.braking, 2),
      compared2: line(p.brick, 2, [9, 4]),
      curveCursor: line(p.inkSoft, 1, [3, 3]),
      curveMark: solid(p.background, p.squat, 2.5),
      curveFloor: line(p.brick, 1.5, [5, 4]),
      // Dotted at the edge too, so that it shows where the fill of a zone hides its own.
      spread: { ...line(p.ink, 1.25, [3, 2]), fill: `${p.background}99` },
      curveBand: { ...line(p.squat, 1, [2, 3]), fill: `${p.squat}2b` },
      highlight: line(p.squat, 5),
    },
  };
}

const ALL: Readonly<Record<ThemeName, Theme>> = {
  paper: themeOf('paper'),
  garage: themeOf('garage'),
  sun: themeOf('sun'),
};

export function findTheme(name: ThemeName): Theme {
  return ALL[name];
}
