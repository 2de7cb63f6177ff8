/** What the rider's hands do to the bike, in words. */
import type { Setup } from '../chassis/setup.ts';
import { writeNumber, type NumberStyle } from '../units/number-style.ts';
import { noBalanceWords } from './no-balance-words.ts';
import { neutralAntiSquat } from './neutral-anti-squat.ts';
import type { RiderEffects } from './rider-effects.ts';
import type { Stance } from './stance.ts';
import { writtenWhole } from './written-whole.ts';

/** A change below this is none, mm. */
const NOTHING = 0.05;

/** One thing with its figure and what it means; no figure when there is no answer. */
export interface Told {
  readonly name: string;
  readonly figure: string | null;
  readonly words: string;
}

/** Gas, brakes and limits, in that order. */
export function riderEffectsTold(effects: RiderEffects, setup: Setup, style: NumberStyle): Told[] {
  const g = (value: number): string => writeNumber(value, 'acceleration', style).text;
  const mm = (value: number): string => writeNumber(Math.abs(value), 'length', style).text;
  const signed = (value: number): string => writeNumber(value, 'length', style, { signed: true }).text;
  const { gasOpened, braked, frontLifts, rearLifts } = effects;
  const opened = `Gas from ${g(setup.cornerGas)} to ${g(setup.gas)} at ${writtenWhole(setup.leanDeg, 'angle', style)} of lean`;
  const told: Told[] = [];
  if (!gasOpened.ok) told.push(unanswered('Gas opened in the corner', gasOpened, style));
  else {
    const { front, rear } = gasOpened;
    const does =
      Math.abs(rear) < NOTHING
        ? 'the rear stays where it is'
        : `the rear ${rear > 0 ? 'squats' : 'lifts'} ${mm(rear)}`;
    told.push({
      name: rear < -NOTHING ? 'Lift on the gas' : 'Squat on the gas',
      figure: signed(rear),
      words: `${opened}: ${does}, ${moves('the front', front, mm)}.`,
    });
  }
  if (!braked.ok) told.push(unanswered('Dive on the brakes', braked, style));
  else
    told.push({
      name: 'Dive on the brakes',
      figure: signed(braked.front),
      words: `From rolling evenly to ${g(setup.brake)}, ${writtenWhole(setup.brakeFrontShare, 'percent', style)} of it at the front: ${moves('the front', braked.front, mm)}, ${moves('the rear', braked.rear, mm)}.`,
    });
  if (!frontLifts.ok) told.push(unanswered('Front wheel lifts', frontLifts, style));
  else
    told.push({
      name: 'Front wheel lifts',
      figure: g(frontLifts.limit),
      words: `On the gas, upright, with ${mm(frontLifts.travel.rear)} of the rear’s travel used at that moment.`,
    });
  if (!rearLifts.ok) told.push(unanswered('Rear wheel lifts', rearLifts, style));
  else
    told.push({
      name: 'Rear wheel lifts',
      figure: g(rearLifts.limit),
      words: `On the brakes, upright, with ${mm(rearLifts.travel.front)} of the fork’s travel used at that moment.`,
    });
  return told;
}

function moves(end: string, by: number, mm: (value: number) => string): string {
  if (Math.abs(by) < NOTHING) return `${end} stays where it is`;
  return `${end} ${by > 0 ? 'sinks' : 'rises'} ${mm(by)}`;
}

function unanswered(name: string, no: Parameters<typeof noBalanceWords>[0], style: NumberStyle): Told {
  return { name, figure: null, words: noBalanceWords(no, style) };
}

/** The anti-squat at which the gas asks nothing of the rear spring, in the posture shown. */
export function neutralTold(on: Stance, style: NumberStyle): Told {
  const name = 'Neutral anti-squat';
  const found = neutralAntiSquat(on);
  if (!found.ok) return unanswered(name, found, style);
  const percent = writeNumber(found.neutral, 'percent', style).text;
  const unsprung = writtenWhole(on.machine.rearUnsprung, 'mass', style);
  return {
    name,
    figure: percent,
    words: `With ${unsprung} unsprung at the rear the neutral point is ${percent}: the wheel’s own inertia moves it by ${writeNumber(found.shift, 'percent', style, { signed: true }).text} from 100.`,
  };
}
