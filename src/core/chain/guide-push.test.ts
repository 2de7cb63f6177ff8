/** Tests of the push on the pivot's guide, against the two pulls added as forces. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { driveCircles, topTangent } from '../../../tests/support/squat-by-lines.ts';
import { standing } from '../../../tests/support/standing.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import type { Tangent } from '../plane/circle.ts';
import { guidePush } from './guide-push.ts';

const low = withFrame(plainBike, { countershaft: { x: 75, y: -25 }, guideRadius: 30 });
const setup = { ...plainSetup, frontTeeth: 13 };

it('the push on the guide is the sum of the two pulls beside it', () => {
  const on = standing(low, setup);
  const { rear, front, guide } = driveCircles(on);
  if (guide === null) throw new Error('the chain runs free');
  const pull = (1000 * on.machine.rearRadius) / on.machine.rearSprocketRadius;
  const force = ({ from, to }: Tangent, way: 1 | -1) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return { x: (way * pull * (to.x - from.x)) / length, y: (way * pull * (to.y - from.y)) / length };
  };
  const behind = force(topTangent(rear, guide), -1);
  const ahead = force(topTangent(guide, front), 1);
  const push = guidePush(on, chainLoop(13, 45, 15.875));
  expect(push?.perThousand).toBeCloseTo(Math.hypot(behind.x + ahead.x, behind.y + ahead.y), 8);
  expect(behind.y + ahead.y).toBeLessThan(0);
});

it('there is no push while the chain runs free', () => {
  expect(guidePush(standing(), chainLoop(15, 45, 15.875))).toBeNull();
  const bare = withFrame(low, { guideRadius: null });
  expect(guidePush(standing(bare, setup), chainLoop(13, 45, 15.875))).toBeNull();
});
