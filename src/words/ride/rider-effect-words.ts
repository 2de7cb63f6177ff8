/** What the rider's hands do to the bike, in words. */
import { driveNoun, type DriveNoun } from '../../core/parts/drive-noun.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { writeChange, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import type { NoEquilibrium } from '../../core/standing/no-equilibrium.ts';
import { noEquilibriumWords } from '../trouble/no-equilibrium-words.ts';
import { neutralAntiSquat } from '../../core/riding/equilibrium/neutral-anti-squat.ts';
import type { ChangeWords } from '../../core/readings/change-words.ts';
import type { RiderEffects } from '../../core/riding/rider-effects.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { directionWord, shownChange } from '../change/shown-change.ts';
import { writeShort } from '../write-short.ts';

/** One thing with its figure and what it means; no number when there is no answer. */
export interface Told extends ChangeWords {
  readonly name: string;
  /** Metric. */
  readonly value: number | null;
  readonly quantity: QuantityKey;
  /** Whether above zero is written with a plus. */
  readonly signed: boolean;
  readonly words: string;
}

type Kind = Omit<Told, 'value' | 'words'>;

/** A height that goes one way above zero and the other way below it, by the two verbs. */
const upAndDown = (name: string, above: string, below: string): Kind => ({
  name,
  quantity: 'length',
  signed: true,
  more: `${above} more`,
  less: `${above} less`,
  belowZero: { more: `${below} less`, less: `${below} more` },
  acrossZero: { more: `now ${above}`, less: `now ${below}` },
});

const SQUAT = upAndDown('Squat (+) or lift (−) on the gas, from mid-corner', 'squats', 'lifts');
const DIVE = upAndDown('Dive on the brakes, upright', 'dives', 'rises');
const CLOSED = upAndDown('Rise (+) or drop (−), throttle closed', 'rises', 'drops');
const FRONT_LIFTS: Kind = {
  name: 'Wheelie limit, accelerating up to it',
  quantity: 'acceleration',
  signed: false,
  more: 'lifts later',
  less: 'lifts sooner',
};
const REAR_LIFTS: Kind = { ...FRONT_LIFTS, name: 'Rear-lift [stoppie] limit, braking up to it' };
const NEUTRAL: Kind = {
  name: 'Neutral anti-squat',
  quantity: 'percent',
  signed: false,
  more: 'neutral point higher',
  less: 'neutral point lower',
};

/** Gas, brakes and limits, in that order. */
export function riderEffectsTold(
  effects: RiderEffects,
  setup: Setup,
  drive: DriveNoun,
  style: NumberStyle,
): Told[] {
  const g = (value: number): string => writeNumber(value, 'acceleration', style).text;
  const mm = (value: number): string => writeNumber(value, 'length', style).text;
  const told = tell(drive, style);
  const { gasOpened, braked, throttleClosed, frontLifts, rearLifts } = effects;
  return [
    told(SQUAT, gasOpened, ({ front, rear }) => ({
      value: rear,
      words: `${leaned(setup.leanDeg, style)}, from ${speedUp(cornerStart(setup), style)} to ${speedUp(setup.acceleration, style)}: ${moves('the rear', rear, style, 'squats', 'lifts')}, ${moves('the front', front, style)}.`,
    })),
    told(DIVE, braked, ({ front, rear }) => ({
      value: front,
      words: `Upright, from steady speed to ${g(setup.braking)}, ${writeShort(setup.brakeFrontShare, 'percent', style)} of it at the front: ${moves('the front', front, style)}, ${moves('the rear', rear, style)}.`,
    })),
    told(CLOSED, throttleClosed, ({ front, rear }) => ({
      value: -rear,
      words: `${leaned(setup.closedLeanDeg, style)}, throttle closed, engine braking at ${g(setup.engineDeceleration)}, against coasting: ${moves('the rear', rear, style, 'drops', 'rises')}, ${moves('the front', front, style)}. The spin of wheels and engine is left out.`,
    })),
    told(FRONT_LIFTS, frontLifts, ({ limit, travel }) => ({
      value: limit,
      words: `Upright, with ${mm(travel.rear)} of the rear’s travel used at that moment. The wheelie limit in Readings is for the ride state shown, so it differs.`,
    })),
    told(REAR_LIFTS, rearLifts, ({ limit, travel }) => ({
      value: limit,
      words: `Upright, with ${mm(travel.front)} of the fork’s travel used at that moment. The rear-lift limit in Readings is for the ride state shown, so it differs.`,
    })),
  ];
}

/** The anti-squat at which the gas neither loads nor unloads the rear spring, in the posture shown. */
export function neutralTold(on: Stance, style: NumberStyle): Told {
  return tell(driveNoun(on.machine.driveKind), style)(NEUTRAL, neutralAntiSquat(on), ({ neutral, shift }) => {
    const unsprung = writeShort(on.machine.rearUnsprung, 'mass', style);
    return {
      value: neutral,
      words: `At ${writeNumber(neutral, 'percent', style).text} the gas neither squats nor lifts the rear. This neutral point is ${writeChange(shift, 'percent', style).text} from 100, because the gas also speeds up the ${unsprung} unsprung at the rear.`,
    };
  });
}

/** Says what is found, or why there is nothing. */
function tell(drive: DriveNoun, style: NumberStyle) {
  return <Found extends { readonly ok: true }>(
    kind: Kind,
    found: Found | NoEquilibrium,
    say: (found: Found) => Pick<Told, 'value' | 'words'>,
  ): Told => ({
    ...kind,
    ...(found.ok ? say(found) : { value: null, words: noEquilibriumWords(found, drive, style) }),
  });
}

/** The acceleration in mid-corner, g, below zero with the throttle closed or the brakes on. */
function cornerStart({ cornerAcceleration, cornerEngineDeceleration, cornerBraking }: Setup): number {
  return cornerAcceleration - cornerEngineDeceleration - cornerBraking;
}

/** "Leaned over 40°", "Upright": how the bike is ridden meanwhile, which changes what its springs carry. */
function leaned(leanDeg: number, style: NumberStyle): string {
  const change = shownChange(leanDeg, 'angle', style);
  return change.sign === 0 ? 'Upright' : `Leaned over ${writeShort(leanDeg, 'angle', style)}`;
}

/** Such as "0.20 g of deceleration", by the sign of its figure. */
function speedUp(g: number, style: NumberStyle): string {
  const change = shownChange(g, 'acceleration', style);
  return directionWord(change, {
    more: `${change.amount} of acceleration`,
    less: `${change.amount} of deceleration`,
    same: 'steady speed',
  });
}

/** Such as "the rear squats 3.1 mm", by the sign of its figure and its two verbs. */
function moves(end: string, by: number, style: NumberStyle, above = 'sinks', below = 'rises'): string {
  const change = shownChange(by, 'length', style);
  return `${end} ${directionWord(change, {
    more: `${above} ${change.amount}`,
    less: `${below} ${change.amount}`,
    same: 'stays where it is',
  })}`;
}
