/** The words on the side view: what each line is called and the number it stands for. */
import { groundTrail } from '../../core/readings/trail.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import type { Construction, Reading } from '../../core/readings/reading.ts';
import { throttleIsClosed } from '../../core/riding/throttle-closed.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { degrees } from '../../core/units/convert.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { instantCentreShown, trailPlaces, wheelbaseHeight } from './construction-drawing.ts';
import type { WantedLabel } from '../shapes/label-placing.ts';
import { litLabels } from './lit-labels.ts';
import { squatConstruction } from './squat-construction.ts';
import { zoneNamePlaces, zonesEnd, type Zone } from './zones.ts';

export const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  squat: 'SQUAT',
  neutral: 'NEUTRAL',
  lift: 'LIFT',
  proSquat: 'PRO-SQUAT',
  rise: 'RISE',
  level: 'NEUTRAL',
  drop: 'DROP',
  riseMore: 'RISE',
};

export interface LabelOptions {
  readonly style: NumberStyle;
  readonly sizePx: number;
  readonly band: number;
  readonly zones: boolean;
  /** For a small window: only what matters most, in fewer words. */
  readonly brief: boolean;
  /** The construction of the chosen reading, drawn beside those that always are; null for none. */
  readonly lit: Construction | null;
  /** What is written behind a figure, about how it changed. */
  readonly change: ChangeText;
  /** The figure itself where its ± is known; null where it is written with its usual digits. */
  readonly figure: FigureText;
}

type Written = 'length' | 'angle' | 'percent';

/** Where on the bike the change of a figure is to be seen: at the front patch, about the instant centre, at the rear axle. */
export type ChangePlace = 'front' | 'rear' | 'axle';

/** A figure of a label. */
export interface LabelFigure {
  readonly key: Reading['key'];
  readonly read: Reading['read'];
  readonly quantity: Written;
  readonly place: ChangePlace;
}

/** Words behind a figure that is `now`; empty where there is nothing to say. */
export type ChangeText = (now: number, figure: LabelFigure) => string;

/** A figure that is `now`, with as many digits as it deserves; null where nothing is known of that. */
export type FigureText = (now: number, figure: LabelFigure) => string | null;

function figureText(on: StandingBike, figure: LabelFigure, options: LabelOptions): string {
  const now = figure.read(on);
  if (typeof now !== 'number') return '';
  const written = options.figure(now, figure) ?? writeNumber(now, figure.quantity, options.style).text;
  return written + options.change(now, figure);
}

/** How far under the ground the middle of the trail's words stands, as a part of the text size. */
const UNDER_GROUND = 0.85;

/** The trail in words, which come before the zones' names: it has one place only, under the ground beside its triangle. */
export function trailLabel(standing: StandingBike, options: LabelOptions): WantedLabel {
  const { sizePx } = options;
  const trail: LabelFigure = {
    key: 'trail',
    read: (on) => groundTrail(on.machine.frontRadius, on.rake, on.offset),
    quantity: 'length',
    place: 'front',
  };
  return {
    role: 'trailLine',
    text: `Trail ${figureText(standing, trail, options)}`,
    at: trailPlaces(standing).axisGround,
    spot: 'right',
    startPx: { x: 0, y: UNDER_GROUND * sizePx },
    sizePx,
  };
}

/** The other labels in order of importance. */
export function sideViewLabels(standing: StandingBike, options: LabelOptions): WantedLabel[] {
  const { sizePx } = options;
  const { pose, rake } = standing;
  const { squatSlope, loadPoint, swingarm } = squatConstruction(standing);
  const { head } = trailPlaces(standing);
  const figure = (key: Reading['key'], read: Reading['read'], quantity: Written, place: ChangePlace) =>
    figureText(standing, { key, read, quantity, place }, options);
  const labels: WantedLabel[] = [
    // The chosen reading's words come before those that are always there.
    ...litLabels(standing, options),
    {
      role: 'steeringAxis',
      text: `Rake ${figure('rake', (on) => degrees(on.rake), 'angle', 'front')}`,
      at: { x: head.x - 150 * Math.sin(rake), y: head.y + 150 * Math.cos(rake) },
      spot: 'right',
      sizePx,
    },
  ];
  const end = zonesEnd(standing);
  labels.push(...driveLineLabels(standing, options));
  labels.push({
    role: 'swingarmLine',
    text: `Swingarm ${figure('swingarmAngle', (on) => degrees(on.swingarmAngle), 'angle', 'rear')}`,
    at: { x: swingarm.to.x * 0.4, y: swingarm.from.y + (swingarm.to.y - swingarm.from.y) * 0.4 + 40 },
    spot: 'above',
    sizePx,
  });
  labels.push({
    role: 'wheelbaseLine',
    text: `Wheelbase ${figure('wheelbase', (on) => on.pose.wheelbase, 'length', 'axle')}`,
    at: { x: pose.wheelbase / 2, y: wheelbaseHeight() },
    spot: 'below',
    sizePx,
  });
  if (options.brief) return labels;
  if (loadPoint !== null)
    labels.push({
      role: 'loadTransferLine',
      text: 'Load-transfer line',
      at: { x: end * 0.8, y: (loadPoint.y / loadPoint.x) * end * 0.8 },
      spot: squatSlope * loadPoint.x > loadPoint.y ? 'right' : 'left',
      startPx: { x: 0, y: squatSlope * loadPoint.x > loadPoint.y ? sizePx : -sizePx },
      near: true,
      sizePx,
    });
  const centre = instantCentreShown(standing);
  if (centre !== null)
    labels.push({ role: 'instantCentre', text: 'Instant centre', at: centre, spot: 'above', sizePx });
  if (standing.mass > 0)
    labels.push({
      role: 'centreOfGravity',
      text: 'Centre of gravity',
      at: standing.centre,
      spot: 'left',
      sizePx,
    });
  return labels;
}

/** The zones that are no wider than their band. */
const NARROW: readonly Zone[] = ['neutral', 'level'];

/** Names of the zones, at their right ends; larger than the other words. */
export function zoneLabels(standing: StandingBike, options: LabelOptions): WantedLabel[] {
  if (!options.zones) return [];
  const places = zoneNamePlaces(standing, options.band);
  // In a small window the narrow band's own colour and line have to do.
  const named = options.brief ? places.filter(({ zone }) => !NARROW.includes(zone)) : places;
  return named.map(({ zone, x, y, above }) => ({
    role: 'zoneName',
    text: ZONE_WORDS[zone],
    at: { x, y },
    spot: 'left',
    along: NARROW.includes(zone) ? y / x : 0,
    above: NARROW.includes(zone) ? 0 : above,
    backed: true,
    sizePx: NARROW.includes(zone) || options.brief ? options.sizePx : options.sizePx * 1.2,
  }));
}

/** What the line of the drive is called: the squat line, or with the throttle closed the engine-braking line. */
function driveLineLabels(standing: StandingBike, options: LabelOptions): WantedLabel[] {
  if (throttleIsClosed(standing))
    return options.lit === 'engineBrakingLine'
      ? []
      : litLabels(standing, { ...options, lit: 'engineBrakingLine' });
  const { sizePx } = options;
  const { squatSlope } = squatConstruction(standing);
  const percent = figureText(
    standing,
    { key: 'antiSquat', read: antiSquat.read, quantity: 'percent', place: 'rear' },
    options,
  );
  const squatAt = standing.pose.wheelbase * 0.28;
  return [
    {
      role: 'squatLine',
      text:
        percent === ''
          ? 'Squat line'
          : `${options.brief ? 'Anti-squat' : 'Squat line, anti-squat'} ${percent}`,
      at: { x: squatAt, y: squatSlope * squatAt },
      spot: 'right',
      startPx: { x: 0, y: sizePx },
      sizePx,
    },
  ];
}
