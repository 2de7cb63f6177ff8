/** What a chart of curves says in words: its title, its course, where it stops and why, its zones and its band. */
import type { Absent } from '../../core/readings/absent.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { absentWords } from '../absent-words.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';
import { shownSteps, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { shownUnit, type QuantityKey } from '../../core/units/all-quantities.ts';
import type { Curve } from '../../core/effects/sweep.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { listAll } from '../list-all.ts';

/** A curve with where its bike stands on it, in metric units. */
export interface PlacedCurve {
  readonly name: string;
  readonly of: 'now' | 'baseline' | 'kept' | 'state' | 'compared';
  readonly curve: Curve;
  /** The name of an earlier curve that is the same line; null when there is none. */
  readonly under: string | null;
  /** Where on the axis it stands and what it reads there, which on an axis of both travels may lie beside the line. */
  readonly place: number | null;
  readonly value: number | Absent | null;
  /** Why it stands nowhere; null when it stands. */
  readonly noStand: NoStand | null;
}

/** One reading along one axis, the present bike's curve first. */
export interface CurveSet {
  readonly reading: Reading;
  readonly axis: { readonly key: string; readonly label: string; readonly quantity: QuantityKey };
  readonly curves: readonly PlacedCurve[];
}

/** A name with its unit in brackets, such as `Trail [mm]`; a plain number has none. */
export function withUnit(name: string, quantity: QuantityKey, style: NumberStyle): string {
  const { symbol } = shownUnit(quantity, style.system);
  return symbol === '' || symbol === name.toLowerCase() ? name : `${name} [${symbol}]`;
}

/** Such as `Trail [mm] against rear travel [mm]`. */
export function chartTitle({ reading, axis }: CurveSet, style: NumberStyle): string {
  const against = axis.label.charAt(0).toLowerCase() + axis.label.slice(1);
  return `${withUnit(reading.label, reading.quantity, style)} against ${withUnit(against, axis.quantity, style)}`;
}

/** Turns lower than this part of the whole height are no turn worth a word. */
const LEAST_TURN = 0.02;

/** The places where the curve turns, by a part of its height, from its beginning to its end. */
function turnsOf(points: readonly { readonly x: number; readonly y: number }[]): { x: number; y: number }[] {
  const ys = points.map(({ y }) => y);
  const least = LEAST_TURN * (Math.max(...ys) - Math.min(...ys));
  const turns = [points[0]];
  let far = points[0];
  for (const point of points) {
    const from = turns[turns.length - 1];
    const way = Math.sign(far.y - from.y);
    if (Math.abs(point.y - from.y) >= Math.abs(far.y - from.y) && Math.sign(point.y - from.y) !== -way)
      far = point;
    else if (Math.abs(far.y - from.y) > least && Math.abs(point.y - far.y) > least) {
      turns.push(far);
      far = point;
    }
  }
  const last = points[points.length - 1];
  if (far !== turns[turns.length - 1] && far !== last) turns.push(far);
  if (turns[turns.length - 1] !== last) turns.push(last);
  return turns;
}

/** The course of the first curve in one sentence, for someone who does not see it. */
export function courseWords(set: CurveSet, style: NumberStyle): string {
  const { reading, axis } = set;
  const [{ curve, place, value, of }] = set.curves;
  const y = (metric: number): string => writeNumber(metric, reading.quantity, style).text;
  const stepsOfY = (metric: number): number => shownSteps(metric, reading.quantity, style);
  const x = (metric: number): string => writeNumber(metric, axis.quantity, style).text;
  const points = curve.x.flatMap((at, i) => {
    const found = curve.y[i];
    return typeof found === 'number' ? [{ x: at, y: found }] : [];
  });
  const here = of === 'compared' ? 'It stands at' : 'Now';
  const now = typeof value === 'number' && place !== null ? ` ${here} ${y(value)} at ${x(place)}.` : '';
  if (points.length === 0) return `There is no figure along this line.${now}`;
  const turns = turnsOf(points);
  const [begin, ...rest] = turns;
  const ways = rest.map((to, i) => {
    const from = turns[i];
    const steps = stepsOfY(to.y) - stepsOfY(from.y);
    if (steps === 0) return `stays at ${y(to.y)} to ${x(to.x)}`;
    return `${steps > 0 ? 'rises' : 'falls'} to ${y(to.y)} at ${x(to.x)}`;
  });
  return `From ${y(begin.y)} at ${x(begin.x)} it ${ways.length === 0 ? 'does not change' : ways.join(', then ')}.${now}`;
}

/** Where and why curves stop short of the axis or have gaps, and which lie under one another. */
export function chartNotes(set: CurveSet, drive: DriveNoun, style: NumberStyle): string[] {
  const [first, ...others] = set.curves;
  const own = notesOf(first, set, drive, style);
  const notes = first.of === 'compared' ? own.map((note) => `${first.name}: ${note}`) : own;
  if (first.of === 'compared' && first.noStand !== null)
    notes.push(`${first.name}: cannot stand like this. ${noStandWords(first.noStand, drive, style)}`);
  for (const other of others.filter(({ under }) => under === null)) {
    notes.push(
      ...notesOf(other, set, drive, style)
        .filter((note) => !notes.includes(note))
        .map((note) => `${other.name}: ${note}`),
    );
    if (other.noStand !== null)
      notes.push(`${other.name}: cannot stand like this. ${noStandWords(other.noStand, drive, style)}`);
  }
  for (const { name } of set.curves) {
    const same = others.filter(({ under }) => under === name).map((other) => other.name);
    if (same.length > 0)
      notes.push(
        `${listAll(same)}: the same line${first.of === 'now' && name === first.name ? '' : ` as ${name}`}.`,
      );
  }
  return notes;
}

/** Where a line ends with its bike's travel: nobody set a travel, so there is nothing to set otherwise. Null of other stops. */
function travelEnd(no: NoStand, style: NumberStyle): string | null {
  if (no.reason !== 'rearTravelBeyond' && no.reason !== 'forkTravelBeyond') return null;
  const end = no.reason === 'rearTravelBeyond' ? 'rear' : 'fork';
  return `Ends at ${writeNumber(no.limit ?? 0, 'length', style).text}, the end of its ${end} travel.`;
}

function notesOf({ curve }: PlacedCurve, { axis }: CurveSet, drive: DriveNoun, style: NumberStyle): string[] {
  const { lowStop, highStop } = curve;
  if (curve.x.length === 0)
    return lowStop === null ? [] : [`No curve. ${noStandWords(lowStop.noStand, drive, style)}`];
  const x = (value: number): string => writeNumber(value, axis.quantity, style).text;
  const stops = [lowStop, highStop].flatMap((stop) =>
    stop === null
      ? []
      : [
          travelEnd(stop.noStand, style) ??
            `Stops before ${x(stop.x)}. ${noStandWords(stop.noStand, drive, style)}`,
        ],
  );
  const reasons = new Set(curve.y.filter((value) => typeof value !== 'number'));
  return [...stops, ...[...reasons].map((reason) => `Gap: ${absentWords(reason)}.`)];
}

/**
 * Where the bike stands in each ride state that is drawn, and what it reads there; empty without any. Over travel it also
 * says how the lines come apart.
 */
export function statesWords(set: CurveSet, style: NumberStyle): string {
  const { reading, axis, curves } = set;
  const states = curves.filter(({ of }) => of === 'state');
  if (states.length === 0) return '';
  const travel = OTHER_END[axis.key];
  const figures = [curves[0], ...states].flatMap(({ name, place, value }) => {
    if (place === null || value === null) return [];
    const read =
      typeof value === 'number' ? writeNumber(value, reading.quantity, style).text : absentWords(value);
    return [
      travel === undefined
        ? `${name} ${read}`
        : `${name} ${read} at ${writeNumber(place, axis.quantity, style).text}`,
    ];
  });
  return `${figures.join('; ')}.${travel === undefined ? '' : ` ${travel}`}`;
}

/** What becomes of the end that an axis of travel does not vary, by the axis's key. */
const OTHER_END: Readonly<Record<string, string>> = {
  rearTravel: 'Each line has the fork where that state puts it.',
  frontTravel: 'Each line has the rear where that state puts it.',
  bothTravels: 'A mark off its line: fork and rear use different travel.',
};

export type Zone = 'lift' | 'neutral' | 'squat' | 'proSquat';

/** Where neutral lies along an axis: its middle at a place, per cent, and its half-width in points. */
export interface Neutral {
  readonly middle: (x: number) => number;
  readonly band: number;
}

/** The zone of an anti-squat, per cent, at a place of the axis. */
export function zoneOf(antiSquat: number, x: number, { middle, band }: Neutral): Zone {
  if (antiSquat < 0) return 'proSquat';
  const beyond = antiSquat - middle(x);
  if (Math.abs(beyond) <= band) return 'neutral';
  return beyond > 0 ? 'lift' : 'squat';
}

const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  lift: 'in the lift zone',
  neutral: 'in the neutral zone',
  squat: 'in the squat zone',
  proSquat: 'in the pro-squat zone',
};

/** The stretches of one kind along a curve, with where each begins and ends, metric. */
export function stretchesOf<Kind>(
  { curve }: PlacedCurve,
  kindOf: (y: number, x: number) => Kind,
): { readonly kind: Kind; readonly from: number; readonly to: number }[] {
  const found: { kind: Kind; from: number; to: number }[] = [];
  curve.x.forEach((x, i) => {
    const y = curve.y[i];
    if (typeof y !== 'number') return;
    const kind = kindOf(y, x);
    const last = found.at(-1);
    if (last?.kind === kind) last.to = x;
    else {
      const between = last === undefined ? x : (last.to + x) / 2;
      if (last !== undefined) last.to = between;
      found.push({ kind, from: between, to: x });
    }
  });
  return found;
}

/** The same zones of the line of engine braking: load leaves the rear, so each side has the opposite meaning. */
const CLOSED_WORDS: Readonly<Record<Zone, string>> = {
  lift: 'above the load-transfer line',
  neutral: 'about the load-transfer line',
  squat: 'below the load-transfer line',
  proSquat: 'below the ground',
};

/** Whether a reading stands for a line that is held against the load-transfer line. */
export function hasZones({ key }: Pick<Reading, 'key'>): boolean {
  return key === 'antiSquat' || isTurned({ key });
}

/** Whether its zones mean the opposite, because load leaves the rear. */
export function isTurned({ key }: Pick<Reading, 'key'>): boolean {
  return key === 'engineBraking';
}

/**
 * "The squat line runs in the lift zone from 0 to 23 mm, in the neutral zone from 23 to 61 mm." Where the line runs and no
 * more: what the rear does on the gas is the balance's to say, in the state that accelerates.
 */
export function zoneWords(set: CurveSet, neutral: Neutral, style: NumberStyle): string {
  const x = (value: number) => writeNumber(value, set.axis.quantity, style);
  const closed = isTurned(set.reading);
  const words = closed ? CLOSED_WORDS : ZONE_WORDS;
  const parts = stretchesOf(set.curves[0], (y, x) => zoneOf(y, x, neutral)).map(
    ({ kind, from, to }) => `${words[kind]} from ${x(from).digits} to ${x(to).text}`,
  );
  return parts.length === 0
    ? ''
    : `The ${closed ? 'engine-braking' : 'squat'} line runs ${parts.join(', ')}.`;
}

/** A band the user wants the reading to stay in, metric. */
export interface Band {
  readonly least: number;
  readonly most: number;
}

/** Over which part of the axis the present curve lies within the band. */
export function bandWords(set: CurveSet, { least, most }: Band, style: NumberStyle): string {
  const x = (value: number) => writeNumber(value, set.axis.quantity, style);
  const within = stretchesOf(set.curves[0], (y) => y >= least && y <= most).filter(({ kind }) => kind);
  if (within.length === 0) return 'Nowhere within the target band.';
  return `Within the target band ${within.map(({ from, to }) => `from ${x(from).digits} to ${x(to).text}`).join(' and ')}.`;
}
