/** Tells a person why a bike cannot stand: what cannot meet what, and what to change. */
import type { NumberStyle } from '../../core/units/number-style.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoPose, NoPoseReason } from '../../core/chassis/no-pose.ts';
import { inDegrees, writeApart, type WriteFigure } from '../write-apart.ts';

type Say = (noPose: NoPose, write: WriteFigure, drive: DriveNoun) => string;

const whichEnd = ({ end }: NoPose): string => (end === undefined ? '' : `${end} `);

const WORDS: Readonly<Record<NoPoseReason, Say>> = {
  tyreCodeUnreadable: (no) =>
    `The ${whichEnd(no)}tyre’s size code cannot be read. Write it as on the sidewall, such as 190/55-17, or give the diameter as measured.`,
  tyreSizeImpossible: (no) =>
    `The ${whichEnd(no)}tyre’s outside diameter is not one a wheel can have. Check the size code or the measured diameter.`,
  tyreRateNotAboveZero: (no) =>
    `The ${whichEnd(no)}tyre’s rate is zero or less, which carries nothing. Give load over sink, or none for a rigid tyre.`,
  inputNotANumber: () =>
    'One of the numbers is missing or is no number. Check the fields of the bike and the adjusters.',
  inputTooLarge: () =>
    'One of the numbers is far larger than any part of a motorcycle. Check the fields of the bike and the adjusters.',
  axlesTooClose: (no, write) =>
    `The axles are only ${write(no.found, 'length')} apart, too close for two wheels to stand on the ground; they need more than ${write(no.limit, 'length')}. Move one axle away from the other.`,
  upsideDown: () =>
    'The frame would stand on its head. Check the front axle, the rear axle and the steering axis.',
  axisFlat: (no, write) =>
    `The steering axis would lean ${write(inDegrees(no.found), 'angle')}, nearly flat; it must lean less than ${write(inDegrees(no.limit), 'angle')} either way. Stand it up, or check the axle heights.`,
  forkTooShort: (no, write) =>
    `Only ${write(no.found, 'length')} of fork is left between the top clamp and the front axle; it needs at least ${write(no.limit, 'length')}. Set less fork tube above the top clamp [top yoke], use less fork travel, or check the fork’s length.`,
  forkTravelBeyond: (no, write) =>
    `Fork travel used is ${write(no.found, 'length')}, but the fork has 0 to ${write(no.limit, 'length')}. Set it within that.`,
  rearTravelBeyond: (no, write) =>
    `Rear travel used is ${write(no.found, 'length')}, but the rear wheel has 0 to ${write(no.limit, 'length')}. Set it within that.`,
  travelTableUnusable: () =>
    'The rear suspension’s travel table cannot be used. It needs two rows or more, the first with 0 in both columns, and both wheel travel and shock stroke must rise from row to row.',
  swingarmCannotReach: (no, write) =>
    `The swingarm cannot reach that far: at ${write(no.found, 'length')} it would stand upright or beyond. Use less rear travel or shock length, or check the swingarm’s length and angle.`,
  axleOutOfSlot: (no, write) =>
    `The axle would stand ${write(no.found, 'length')} back in a slot of ${write(no.limit, 'length')}. Set it within the slot, or correct the slot’s length.`,
  pivotBehindPatch: (no, write) =>
    `The swingarm pivot is ${write(no.found, 'length')} ahead of the rear contact patch; it must be at least ${write(no.limit, 'length')} ahead. Move the pivot forward or the rear axle back.`,
  sprocketsOverlap: (no, write) =>
    `The sprockets overlap: their centres are ${write(no.found, 'length')} apart and need more than ${write(no.limit, 'length')}. Move the countershaft or the rear axle, or fit fewer teeth.`,
  teethImpossible: (no, _write, { loop }) =>
    `The ${whichEnd(no)}sprocket cannot have ${no.found ?? 'that many'} teeth. It needs a whole number of teeth that a ${loop} can run on.`,
  chainPitchImpossible: (no, write, { loop }) =>
    `A ${loop} cannot have a pitch of ${write(no.found, 'length')}. The limit is ${write(no.limit, 'length')}; roller chains of the sizes 5xx have ${write(15.875, 'length')} and 4xx ${write(12.7, 'length')}.`,
  guideImpossible: (no, write, { loop }) =>
    `A chain slider of ${write(no.found, 'length')} about the pivot cannot carry a ${loop}; its radius must lie between zero and ${write(no.limit, 'length')}, so that both sprockets lie outside it. Check the slider’s radius.`,
  countershaftBehindAxle: (_no, _write, { loop }) =>
    `The countershaft lies behind the rear axle, so no ${loop} could pull the wheel forward. Check both.`,
  torqueArmCannotClose: (no, write) =>
    `With ${write(no.found, 'length')} the torque arm cannot reach from the shaft’s housing to the frame. Check its length, the housing’s radius and the bolt on the frame.`,
  torqueArmInLine: (no, write) =>
    `The torque arm lies in line with the swingarm: its line passes the rear axle at ${write(no.found, 'length')} and must pass at ${write(no.limit, 'length')} or more, or nothing holds the shaft’s housing. Move the bolt on the housing or on the frame away from the swingarm.`,
  massNegative: (no, write) =>
    `A weight is ${write(no.found, 'mass')}; no weight can be below ${write(no.limit, 'mass')}. Check the weights of bike, rider and load.`,
};

/**
 * One or two sentences for a person, with the numbers in the user's own units. The first says what cannot meet what,
 * the last what to change. Every reason has its words; a number the refusal does not carry is a dash.
 */
export function noPoseWords(noPose: NoPose, drive: DriveNoun, style: NumberStyle): string {
  return writeApart((write) => WORDS[noPose.reason](noPose, write, drive), style);
}
