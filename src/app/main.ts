/** The page's entry: puts the workbench together, brings back what was kept, and mounts the page. */
import { mount } from 'svelte';
import { FIRST_DEMO } from '../document/demos/first-demo.ts';
import { LateKeeping } from '../session/keeping/late-keeping.svelte.ts';
import { Workbench } from '../session/workbench.svelte.ts';
import '../ui/page/tokens.css';
import '../ui/page/base.css';
import App from './App.svelte';

const target = document.getElementById('app');
if (target === null) throw new Error('The page has no element "app" to stand in.');

const bench = new Workbench(FIRST_DEMO);
const late = new LateKeeping(async () => {
  const { Keeping } = await import('../session/keeping/keeping.svelte.ts');
  const keeping = new Keeping(bench, FIRST_DEMO);
  void keeping.begin();
  return keeping;
});
mount(App, { target, props: { bench, late } });
document.getElementById('waiting')?.remove();
void late.fetch();
