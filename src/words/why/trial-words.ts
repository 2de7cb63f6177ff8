/** What a trial found, in words: the figure before and after, and what came of a prediction. */
import { namedAdjusters } from '../../core/adjusters/named-adjusters.ts';
import { isAbsent } from '../../core/readings/absent.ts';
import { waysBetween, wordBySize } from '../../core/readings/change-words.ts';
import type { NoTrial, Trial, Tried, Way } from '../../core/effects/trial.ts';
import type { TrialFigure } from '../../core/effects/trial-figure.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import type { NoWallReason } from '../../core/riding/equilibrium/against-wall.ts';
import { rideStateOf } from '../../core/riding/states/all-ride-states.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { writeChange, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { absentWords } from '../absent-words.ts';
import { noStandWords } from '../trouble/no-stand-words.ts';
import { settingDifferences, differencesInLine } from '../change/setup-difference.ts';

/** The three answers that a prediction chooses from, in the figure's own words. */
export function wayWords(figure: TrialFigure, before: number, after: number): Readonly<Record<Way, string>> {
  return { ...waysBetween(figure, before, after), same: figure.same };
}

/** What was turned, such as "Shock length 0.0 mm → 4.0 mm"; empty where nothing was. */
export function turnedWords({ before, after }: Tried, kind: DriveKind, style: NumberStyle): string {
  return differencesInLine(settingDifferences(before.asSet.setup, after.asSet.setup, kind, style));
}

/** "Shock length 0.0 mm → 4.0 mm, rider on board": what was turned, and the ride state in which the figure is read. */
export function triedWords(trial: Trial, tried: Tried, kind: DriveKind, style: NumberStyle): string {
  const state = rideStateOf(trial.state).label;
  const turns = turnedWords(tried, kind, style);
  return turns === '' ? state : `${turns}, ${state.toLowerCase()}`;
}

/** Where the figure went, such as "Rake: 24.27° before, 23.88° after. Quicker steering." With `staysAlike` the change is too small for a rider, so no direction is named. */
export function figureWords(
  figure: TrialFigure,
  tried: Tried,
  style: NumberStyle,
  staysAlike = false,
): string {
  const { before, after, way } = tried;
  const { label, quantity, isChange, same } = figure;
  const [from, to] = [before, after].map(({ value }) => writeNumber(value, quantity, style).text);
  const word =
    way === 'same' || from === to || staysAlike ? same : wordBySize(figure, before.value, after.value);
  const said = `${word.charAt(0).toUpperCase()}${word.slice(1)}.`;
  if (isChange) return `${label}: ${writeChange(after.value, quantity, style).text}. ${said}`;
  return `${label}: ${from} before, ${to} after. ${said}`;
}

/** What somebody expected: which way, and by about how much in the metric unit where a figure was given. */
export interface Prediction {
  readonly way: Way;
  readonly amount: number | null;
}

/** A prediction beside what happened, such as "You said quicker steering, by about 1.0°. It was quicker steering, by 0.4°." */
export function predictionWords(
  { way, amount }: Prediction,
  figure: TrialFigure,
  tried: Tried,
  style: NumberStyle,
): string {
  const { before, after } = tried;
  const words = wayWords(figure, before.value, after.value);
  const size = (change: number): string =>
    writeChange(Math.abs(change), figure.quantity, style).text.replace('+', '');
  const by = amount === null || way === 'same' ? '' : `, by about ${size(amount)}`;
  const was = tried.way === 'same' ? '' : `, by ${size(after.value - before.value)}`;
  const came = tried.way === 'same' ? words.same : wordBySize(figure, before.value, after.value);
  const right = way === tried.way ? 'Right' : 'Not this time';
  return `${right}. You said: ${words[way]}${by}. It came out: ${came}${was}.`;
}

/** What a lesson says of a step's figure: the way it should go, why, and what may be behind it where it goes another way. */
interface Reasons {
  readonly point: Way | null;
  readonly because: string;
  readonly otherwise: string;
}

/** Why the figure went as it did. `apart` says first that it did not go the lesson's way; empty where it did. */
export function reasonWords(
  { point, because, otherwise }: Reasons,
  way: Way,
): { readonly apart: string; readonly reason: string } {
  if (point === null || point === way) return { apart: '', reason: because };
  return {
    apart:
      way === 'same'
        ? 'On this bike it stays about the same.'
        : 'On this bike it goes another way than usual.',
    reason: otherwise,
  };
}

const WALL: Readonly<Record<NoWallReason, (limit: string) => string>> = {
  wallThrustImpossible: (limit) => `A push lies between nothing and ${limit}.`,
  frontLiftsAtWall: (limit) => `The front wheel would leave the floor. It stays down up to ${limit}.`,
  rearTyreSpins: (limit) => `The rear tyre would spin on the floor. It grips up to ${limit}.`,
};

const isWallReason = (reason: string): reason is NoWallReason => Object.hasOwn(WALL, reason);

/** Why a trial has no figure on this bike, and so is skipped. */
export function noTrialWords(no: NoTrial, kind: DriveKind, style: NumberStyle): string {
  if (no.reason === 'adjusterNotThere' || no.reason === 'readingNotKept') {
    const { label } = namedAdjusters(kind).find(({ key }) => key === no.adjuster) ?? { label: no.adjuster };
    return no.reason === 'adjusterNotThere'
      ? `This bike has no such adjuster: ${label}.`
      : `${label}: within its range nothing brings the reading back to where it was.`;
  }
  if (no.reason === 'unknownAdjuster') return `This program has no adjuster called “${no.name}”.`;
  if (no.reason === 'unknownRideState') return `This program has no ride state called “${no.name}”.`;
  if (no.reason === 'noSuchFigure') return 'This program has no reading of that name.';
  if (isWallReason(no.reason)) {
    const limit = 'limit' in no && no.limit !== undefined ? no.limit : 0;
    return WALL[no.reason](writeNumber(limit, 'force', style).text);
  }
  return isAbsent(no) ? absentWords(no) : noStandWords(no as NoStand, driveNoun(kind), style);
}
