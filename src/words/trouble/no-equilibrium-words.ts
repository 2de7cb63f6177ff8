/** Tells a person why a bike does not come to rest on its springs, and what to change. */
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoLinkageReason } from '../../core/linkage/no-linkage.ts';
import { noLinkageWords } from './no-linkage-words.ts';
import { NEWTON_A_SQUARE_MM_PER_BAR } from '../../core/units/convert.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import type { NoEquilibrium, NoEquilibriumReason } from '../../core/standing/no-equilibrium.ts';
import { inDegrees, writeApart, type WriteFigure } from '../write-apart.ts';

/** A pressure of the core as a gauge shows it, bar. */
const inBar = (core: number | undefined): number | undefined =>
  core === undefined ? undefined : core / NEWTON_A_SQUARE_MM_PER_BAR;

type Say = (no: NoEquilibrium, write: WriteFigure) => string;

/** The springs of the end it concerns. */
const springsOf = ({ end, leg }: NoEquilibrium): string =>
  leg === 'other'
    ? 'other fork leg’s spring'
    : end === 'front'
      ? 'fork spring'
      : end === 'rear'
        ? 'shock spring'
        : 'spring';
const airOf = (no: NoEquilibrium): string =>
  no.leg === 'other' ? 'in the other fork leg' : `at the ${endOf(no)}end`;
const endOf = ({ end }: NoEquilibrium): string => (end === undefined ? '' : `${end} `);

const WORDS: Readonly<Record<Exclude<NoEquilibriumReason, NoLinkageReason>, Say>> = {
  rateNotAboveZero: (no) =>
    `A rate at the ${endOf(no)}end is zero or less, which holds nothing up. Give the rate printed on the ${springsOf(no)}, bump stop or top-out spring.`,
  springCountImpossible: () =>
    'A bike has one or two fork springs and one or two shocks. Check how many are given.',
  preloadBeyondSpring: (no, write) =>
    `A preload of ${write(no.found, 'length')} makes the ${springsOf(no)} coil-bound, which can be compressed ${write(no.limit, 'length')}. Take preload off, or fit a longer spring.`,
  noStroke: (no) =>
    `The ${endOf(no)}suspension has no travel. Check the travel, and the shock’s length extended and closed.`,
  bumpStopImpossible: (no) =>
    `The ${endOf(no)}bump stop [bump rubber] does not fit into the travel, or its stiffening is impossible. Check where it begins and its power.`,
  topOutImpossible: (no) =>
    `The ${endOf(no)}top-out spring is longer than the travel, or pulls the wheel right through it. Check its length and rate.`,
  stageImpossible: (no) =>
    `A stage of the ${springsOf(no)} has no length. Give how far each spring can be compressed, or where the second rate begins; leave out what you do not know.`,
  forceTableTooShort: (no) =>
    `The ${endOf(no)}force table needs two rows or more. Add the force at a second place.`,
  forceTableNotFromZero: (no) =>
    `The ${endOf(no)}force table has to begin at 0 mm and no force. Make that its first row.`,
  forceTableFalls: (no) =>
    `Row ${no.found ?? '–'} of the ${endOf(no)}force table does not rise: each row needs more travel and more force than the one before. Measure that row again.`,
  nothingHolds: (no) =>
    `Neither a spring nor air holds the ${endOf(no)}end up. Choose what holds it under Springs.`,
  airSizeImpossible: (no) =>
    `The ${endOf(no)}air space has no size. Give its bore, and the diameter of what slides into it, above zero.`,
  airExponentImpossible: (no) =>
    `The exponent of the ${endOf(no)}air lies between 1 and 2: near 1 for slow movement such as sag, 1.3 if you do not know it.`,
  balanceChamberImpossible: (no) =>
    `The ${endOf(no)}balance chamber has no size. Its volume has to be above zero, and its bore wider than its rod.`,
  airPressureImpossible: (no, write) =>
    `A pressure of ${write(inBar(no.found), 'pressure')} ${airOf(no)} is less than no air at all. Set more than ${write(inBar(no.limit), 'pressure')}.`,
  noAirLeft: (no, write) =>
    `The air ${airOf(no)} is used up at ${write(no.found, 'length')} of ${write(no.limit, 'length')}: it locks there. Make the air gap larger, or check the steel volume.`,
  balanceTooStrong: (no) =>
    `The ${endOf(no)}balance chamber pulls the wheel right through its travel. Lower its pressure, or raise that of the air it works against.`,
  tyreFlat: (no, write) =>
    `The ${endOf(no)}tyre would sink ${write(no.found, 'length')}, more than its sidewall of ${write(no.limit, 'length')}. Check its rate, its size and the weight on it.`,
  noMass: () =>
    'Nothing on the bike has a weight, so the springs have nothing to carry. Give the bike its weight.',
  massBehindRearAxle: () =>
    'The centre of gravity is at or behind the rear axle, so the front wheel carries nothing. Check the weights and where they are.',
  massAheadOfFrontAxle: () =>
    'The centre of gravity is at or ahead of the front axle, so the rear wheel carries nothing. Check the weights and where they are.',
  unsprungTooHeavy: (no, write) =>
    `The unsprung parts weigh ${write(no.found, 'mass')}, as much as the whole bike or more. Check both.`,
  frontLifts: (no, write) =>
    `At ${write(no.found, 'acceleration')} the front wheel lifts; it stays on the ground up to ${write(no.limit, 'acceleration')}. Use less gas, or bring the centre of gravity forward or down.`,
  rearLifts: (no, write) =>
    `At ${write(no.found, 'acceleration')} of braking the rear wheel lifts; it stays on the ground up to ${write(no.limit, 'acceleration')}. Brake less, or bring the centre of gravity back or down.`,
  neverLifts: (no) =>
    `The ${endOf(no)}wheel never lifts: the centre of gravity is too low. Check its height.`,
  leanImpossible: (no, write) =>
    `A lean of ${write(inDegrees(no.found), 'angle')} is more than any tyre holds. Set less than ${write(inDegrees(no.limit), 'angle')}.`,
  brakeShareImpossible: () =>
    'The front brake’s share is between 0 and 100 % of the braking. Set it within that.',
  throttleOpenAndClosed: (no, write) =>
    `The throttle cannot be open while engine or brakes slow the bike by ${write(no.found, 'acceleration')}. Set either the acceleration or engine braking and brakes to zero.`,
  dragImpossible: () => 'Drag cannot push the bike forward. Give it as zero or more.',
  readingBeyondMass: (no, write) =>
    `The raised weighing shows ${write(no.found, 'mass')}, more than the whole bike’s ${write(no.limit, 'mass')}. Check the scales.`,
  liftImpossible: (no, write) =>
    `A lift of ${write(no.found, 'length')} is too small to find the height, or is more than the axles allow. Raise one axle by a tenth to a fifth of the wheelbase.`,
  uncertaintyNegative: () => 'An uncertainty cannot be below zero. Give it as zero or more.',
  centreHeightImpossible: (no, write) =>
    `By these figures the centre of gravity would be ${write(no.found === undefined ? undefined : Math.abs(no.found), 'length')} ${(no.found ?? 0) < 0 ? 'below' : 'above'} the ground, which no motorcycle has. Check which axle was raised, which scale was read, and the lift.`,
  fuelTooHeavy: (no, write) =>
    `The fuel weighs ${write(no.found, 'mass')}, as much as the whole bike’s ${write(no.limit, 'mass')} or more. Check how much was in the tank.`,
  sagImpossible: (no) =>
    `No ${springsOf(no)} gives both sags: with the rider the bike must sink further than without. Change one of the two.`,
  noRateFits: (no) =>
    `None of the rates in stock gives the ${endOf(no)}sag wanted within the range of the preload adjuster. Add rates, or change the sag.`,
  stayCannotClose: () =>
    'The rear brake’s stay cannot reach from the frame to the caliper’s bracket. Check the stay’s length and both bolts.',
  stayThroughAxle: () =>
    'The rear brake’s stay passes through the axle, so it cannot hold the caliper. Move one of its bolts.',
  notConverged: () =>
    'The bike does not come to rest with these springs and forces. Check rates, preload and stops for one that is far off.',
};

/**
 * Two sentences for a person, with the numbers in the user's own units: what does not balance, and what to change. A
 * bike without a pose has its own sentence; a number that the refusal does not carry is a dash.
 */
export function noEquilibriumWords(no: NoEquilibrium, drive: DriveNoun, style: NumberStyle): string {
  const { reason } = no;
  if (!isOwn(reason)) return noLinkageWords({ ...no, reason }, drive, style);
  const words = writeApart((write) => WORDS[reason](no, write), style);
  return no.leg === 'other' ? `${words} Its figures are under Springs.` : words;
}

function isOwn(reason: NoEquilibriumReason): reason is keyof typeof WORDS {
  return Object.hasOwn(WORDS, reason);
}
