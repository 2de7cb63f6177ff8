/** Tests of history, draft and what stands while the present cannot. */
import { describe, expect, it } from 'vitest';
import { readIn } from '../../tests/support/read-in.ts';
import { fail, succeed } from '../core/numeric/result.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import { BikeSession } from './bike-session.svelte.ts';
import { Reasons } from './tabs/reasons.svelte.ts';
import { Standing } from './standing.svelte.ts';

const [first] = DEMO_BIKES;

describe('a session', () => {
  it('shows a draft without an entry, and forgets it', () => {
    const session = new BikeSession(first);
    session.preview((from) => setAdjuster(from, 'forkTubes', 9));
    expect(session.document.setup.forkTubes).toBe(9);
    expect(session.canUndo).toBe(false);
    session.cancel();
    expect(session.document).toBe(first);
  });

  it('makes one entry of a drag and none of one that moved nothing', () => {
    const session = new BikeSession(first);
    for (const height of [6, 7, 8]) session.preview((from) => setAdjuster(from, 'forkTubes', height));
    session.commitDraft('Fork height');
    expect(session.history.past).toHaveLength(1);
    session.preview((from) => setAdjuster(from, 'forkTubes', 8));
    session.commitDraft('Fork height');
    expect(session.history.past).toHaveLength(1);
    session.undo();
    expect(session.document).toBe(first);
    session.redo();
    expect(session.document.setup.forkTubes).toBe(8);
  });

  it('explains a draft against the committed bike, and a commit against the one before', () => {
    const session = new BikeSession(first);
    expect(session.before).toBeNull();
    session.preview((from) => setAdjuster(from, 'forkTubes', 9));
    expect(session.before).toBe(first);
    session.commitDraft('Fork height');
    expect(session.before).toBe(first);
  });

  it('tells why an edit was refused and keeps the bike', () => {
    const session = new BikeSession(first);
    session.commit(() => fail({ path: 'x', sentence: 'No.' }), 'Nothing');
    expect(session.refusal).toBe('No.');
    expect(session.document).toBe(first);
    session.commit((from) => succeed({ ...from }), 'Same');
    expect(session.refusal).toBeNull();
    expect(session.canUndo).toBe(false);
  });
});

describe('a bike that cannot stand', () => {
  it('leaves the last one that stood in view, with the reason', () => {
    const session = new BikeSession(first);
    const standing = new Standing(session, readIn('toppedOut'));
    session.commit((from) => setAdjuster(from, 'forkTubes', 9), 'Fork height');
    const good = standing.live?.stance.pose.wheelbase;
    session.commit((from) => setAdjuster(from, 'rearTeeth', 500), 'Rear sprocket');
    expect(standing.problem?.reason).toBe('teethImpossible');
    expect(standing.live?.stance.pose.wheelbase).toBe(good);
    expect(new Reasons({ standing }).found).toBeNull();
    session.undo();
    expect(standing.problem).toBeNull();
  });
});
