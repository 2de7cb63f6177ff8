/** Tests of the spare chain between pulls: against the slack it leaves, and where there is none to tell of. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { chainSlack } from '../drive/chain-slack.ts';
import { lowerRunInFrame, setAxlePosition } from './chain-in-frame.ts';
import { spareChain } from './spare-chain.ts';

const free = withFrame(plainBike, { guideRadius: null });

function found(bike = free, changes: Partial<typeof plainSetup> = {}, rear = 0) {
  const on = standing(bike, { ...plainSetup, ...changes }, { front: 0, rear });
  const spare = spareChain(on);
  if (!spare.ok) throw new Error(spare.reason);
  return { on, spare };
}

describe('spare chain between pulls', () => {
  it('hanging, leaves the slack that is set', () => {
    const { on, spare } = found(free, { chainSlack: 32 });
    const { chain } = on.machine;
    if (chain === null) throw new Error('no chain');
    const run = lowerRunInFrame(on.machine, chain.loop, 0, setAxlePosition(on.machine));
    if ('ok' in run) throw new Error(run.reason);
    expect(chainSlack(run, spare.spare)).toMatchObject({ ok: true, total: expect.closeTo(32, 6) as number });
  });

  it('turns the front sprocket by a tooth for each pitch', () => {
    const { on, spare } = found();
    const pitches = spare.spare / plainBike.drive.chainPitch;
    expect(spare.atFrontSprocket).toBeCloseTo((2 * Math.PI * pitches) / on.machine.frontTeeth, 12);
  });

  it('goes by the links that are named, and is less at a travel where a guide takes some of it up', () => {
    const named = found(free, { chainLinks: 114 });
    expect(named.spare.spare).not.toBeCloseTo(found().spare.spare, 3);
    const guided = withFrame(plainBike, { guideRadius: null, lowerGuideRadius: 50 });
    expect(found(guided).spare.spare).toBeCloseTo(found().spare.spare, 9);
    expect(found(guided, {}, 130).spare.spare).toBeLessThan(found(free, {}, 130).spare.spare - 0.1);
  });

  it('is nothing a shaft has', () => {
    const on = standing({ ...plainBike, drive: { ...plainBike.drive, kind: 'shaft' } }, plainSetup);
    expect(spareChain(on)).toMatchObject({ ok: false, reason: 'noRun' });
  });
});
