/** Spring force at the rear wheel: what the shock's springs hold up. */
import { CHAIN, type DriveNoun } from '../parts/drive-noun.ts';
import { rearForceAtWheel } from '../springs/at-the-wheel.ts';
import { withoutSprings } from './springs-known.ts';
import type { Reading } from './reading.ts';
import { absent } from './absent.ts';

const texts = ({ loop }: DriveNoun) => ({
  help: {
    what: 'What the shock’s springs push with at the rear wheel, links included.',
    sign: 'Positive pushes the wheel down; below zero a top-out spring holds it up.',
    measured: 'Computed; at rest it is the rear wheel’s load less the weight of wheel and swingarm.',
    feels: `It is the load the rear springs carry; ${loop}, swingarm and brake carry the rest.`,
  },
});

/**
 * Force of all shocks' springs at the rear axle, N, square to the ground as the bike stands: spring force × motion
 * ratio (virtual work). Positive pushes the wheel down. No answer without springs, or beyond closed coils.
 * Example: shock spring rate 100 N/mm, shock preload 30 mm, stroke per travel 0.4 → 1200 N.
 */
export const rearWheelForce: Reading = {
  key: 'rearWheelForce',
  label: 'Spring force at the rear wheel',
  group: 'suspension',
  quantity: 'force',
  construction: 'rearTravel',
  read: (stance) => {
    const { sprung } = stance;
    return sprung === undefined
      ? absent('noSprings')
      : (withoutSprings(sprung, stance.travel.rear, 'rear') ?? rearForceAtWheel(sprung, stance));
  },
  more: 'springs push harder at the wheel',
  less: 'springs push less at the wheel',
  belowZero: { more: 'springs hold the wheel up less', less: 'springs hold the wheel up more' },
  ...texts(CHAIN),
  texts,
};
