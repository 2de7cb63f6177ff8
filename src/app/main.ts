/** The page's entry: puts the workbench together, brings back what was kept, and mounts the page. */
import { mount } from 'svelte';
import { FIRST_DEMO } from '../document/demos/first-demo.ts';
import { LateKeeping } from '../session/keeping/late-keeping.svelte.ts';
import { Workbench } from '../session/workbench.svelte.ts';
import '../ui/page/tokens.css';
import '../ui/page/base.css';
import { KEPT, lateNotices } from '../ui/page/late-panels.svelte.ts';
import App from './App.svelte';

/** Figures change seven times a second while a hand moves: as fast as they are read, and the drawing keeps the thread. */
const FIGURES_GAP_MS = 140;

const target = document.getElementById('app');
if (target === null) throw new Error('The page has no element "app" to stand in.');

const bench = new Workbench(FIRST_DEMO);
bench.session.pace.gapMs = FIGURES_GAP_MS;
const late = new LateKeeping(async () => {
  // Keeping is fetched together with its messages: nothing is kept while the page cannot say so.
  const [{ Keeping }] = await Promise.all([
    import('../session/keeping/keeping.svelte.ts'),
    lateNotices.load(KEPT),
  ]);
  if (lateNotices.hasFailed(KEPT)) throw new Error('What keeping tells could not be fetched.');
  const keeping = new Keeping(bench, FIRST_DEMO);
  void keeping.begin();
  return keeping;
});
mount(App, { target, props: { bench, late } });
document.getElementById('waiting')?.remove();
void late.fetch();
