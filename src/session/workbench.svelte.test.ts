/** Tests of the workbench: a tab's state, which comes with its tab, and the messages that no caller has to think of. */
import { flushSync, untrack } from 'svelte';
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import { Riding } from './tabs/riding.svelte.ts';
import { Workbench } from './workbench.svelte.ts';
import { beginHistory } from '../document/history.ts';

describe('the state of a tab', () => {
  it('is made once, and goes on following the bike when the tab that asked is gone', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    let shown: Riding | null = null;
    const close = $effect.root(() => {
      const riding = $derived(bench.stateOf(Riding));
      $effect(() => {
        shown = riding;
        untrack(() => riding.showGhost('braking', true));
      });
    });
    flushSync();
    const riding = bench.stateOf(Riding);
    expect(shown).toBe(riding);
    const [before] = riding.ghostBikes;
    close();
    bench.session.commit((from) => setAdjuster(from, 'shockLength', 6), 'Shock length');
    const [after] = riding.ghostBikes;
    expect(after.stance.pose.pitch).not.toBe(before.stance.pose.pitch);
    expect(bench.stateOf(Riding)).toBe(riding);
  });
});

describe('the announcer', () => {
  it('speaks of a change whoever commits it, and of its way back', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    bench.session.commit((from) => setAdjuster(from, 'shockLength', 6), 'Shock length');
    const { message } = bench.announcer;
    expect(message).not.toBe('');
    bench.undo();
    expect(bench.announcer.message).not.toBe(message);
  });

  it('says of another bike that takes the page its name and how it steers, compared with none', () => {
    const bench = new Workbench(DEMO_BIKES[0]);
    bench.open(beginHistory(DEMO_BIKES[1]));
    bench.session.commit((from) => setAdjuster(from, 'riderMass', from.setup.riderMass), 'Rider weight');
    const { name } = DEMO_BIKES[1].bike;
    expect(bench.announcer.message).toMatch(
      new RegExp(`^${name} opened: Rake [\\d.]+°, Trail [\\d.]+\\smm$`, 'u'),
    );
  });
});
