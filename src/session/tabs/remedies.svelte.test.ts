/** Tests of what is tried one by one. */
import { describe, expect, it } from 'vitest';
import { readIn } from '../../../tests/support/read-in.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Standing } from '../standing.svelte.ts';
import { Remedies } from './remedies.svelte.ts';

const [first] = DEMO_BIKES;

function started() {
  const session = new BikeSession(first);
  const standing = new Standing(session, readIn('riderUp'));
  return { session, remedies: new Remedies({ session, standing }) };
}

describe('what is tried', () => {
  it('turns a step of What moves what and nothing else, also where that step is another tyre', () => {
    const { session, remedies } = started();
    remedies.wished = 'trail';
    const [step] = remedies.steps;
    remedies.tryStep(step, 'Step');
    expect(session.document.setup).toEqual({ ...first.setup, [step.adjuster]: step.to });
    session.undo();
    const tyre = remedies.steps.find(({ adjuster }) => adjuster === 'rearTyre');
    if (tyre === undefined) throw new Error('no tyre to try');
    remedies.tryStep(tyre, 'Tyre');
    expect(session.document.setup).toEqual({ ...first.setup, rearTyre: tyre.to });
  });

  it('lowers the seat as the way says, as one entry of the history', () => {
    const { session, remedies } = started();
    const way = remedies.waysToLower.find(({ key }) => key === 'bothEnds');
    if (way === undefined) throw new Error('no way');
    remedies.tryLowering(way, 'Lower');
    for (const { adjuster, to } of way.turned) expect(session.document.setup[adjuster]).toBe(to);
    session.undo();
    expect(session.document.setup).toBe(first.setup);
  });
});
