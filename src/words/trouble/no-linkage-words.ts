/** Why a rear suspension cannot be as it is set, in words, and what to change. */
import { noPoseWords } from './no-pose-words.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import type { NoPose } from '../../core/chassis/no-pose.ts';
import type { DriveNoun } from '../../core/parts/drive-noun.ts';
import type { NoLinkage, NoLinkageReason } from '../../core/linkage/no-linkage.ts';
import { WAY_END_WORDS } from './link-range-words.ts';
import { inDegrees, writeApart, type WriteFigure } from '../write-apart.ts';

type OwnReason = Exclude<NoLinkageReason, NoPose['reason']>;

type Say = (no: NoLinkage, write: WriteFigure) => string;

const because = ({ because: end }: NoLinkage): string =>
  end === undefined ? '' : `, because ${WAY_END_WORDS[end]}`;

const WORDS: Readonly<Record<OwnReason, Say>> = {
  partHasNoLength: (no, write) =>
    `A rod, a rocker arm or a mount is only ${write(no.found, 'length')} from its other end; at least ${write(no.limit, 'length')} is needed. Move the two points apart.`,
  strokeImpossible: (no, write) =>
    `The shock has no stroke: ${write(no.found, 'length')} has to be more than ${write(no.limit, 'length')}. Check its full and closed length.`,
  drawnInLine: () =>
    'Rod and rocker were drawn in one line, so the fold could go either way. Move one of their points to one side.',
  linkageCannotClose: (no, write) =>
    `With ${write(no.found, 'length')} the rod cannot join rocker and mount in any position; ${write(no.limit, 'length')} is the nearest that can. Change the rod or move a mount.`,
  drawnAtDeadPoint: (no) =>
    `As drawn the shock does not move with the swingarm${because(no)}. Move a mount so that the shock is compressed as the wheel rises.`,
  shockPulled: () =>
    'The shock grows longer as the wheel rises. Move a mount to the other side so that it is compressed.',
  shockTooLong: (no, write) =>
    `At ${write(no.found, 'length')} the shock is longer than the links allow, ${write(no.limit, 'length')}${because(no)}. Fit a shorter shock or move a mount.`,
  shockTooShort: (no, write) =>
    `At ${write(no.found, 'length')} the shock is shorter than the links allow, ${write(no.limit, 'length')}${because(no)}. Fit a longer shock or move a mount.`,
  armBeyondLinks: (no, write) =>
    `The links do not let the swingarm reach ${write(inDegrees(no.found), 'angle')} below the frame; it ends at ${write(inDegrees(no.limit), 'angle')}${because(no)}. Use less travel or move a mount.`,
  adjusterNeedsLinks: (no, write) =>
    `This suspension cannot be adjusted there. A travel table has no mounts to move, and straight shocks have no rod. Set ${write(no.found, 'length')} back to zero, or draw the links.`,
  pointUnknown: () => 'This suspension has no such point. Take one of those that are drawn.',
  armNotFound: () =>
    'No position of the swingarm was found for this shock. Move a mount by a little and try again.',
};

function isOwn(reason: NoLinkageReason): reason is OwnReason {
  return reason in WORDS;
}

/**
 * One or two sentences for a person, numbers in the user's own units: first what cannot meet what, last what to change.
 * A number the refusal does not carry is a dash.
 */
export function noLinkageWords(no: NoLinkage, drive: DriveNoun, style: NumberStyle): string {
  const { reason, found, limit, end } = no;
  if (!isOwn(reason)) return noPoseWords({ ok: false, reason, found, limit, end }, drive, style);
  return writeApart((write) => WORDS[reason](no, write), style);
}
