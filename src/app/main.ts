/** The page's entry: puts the workbench together, brings back what was kept, and mounts the page. */
import { mount } from 'svelte';
import { FIRST_DEMO } from '../document/first-demo.ts';
import { Keeping } from '../session/keeping.svelte.ts';
import { Workbench } from '../session/workbench.svelte.ts';
import '../ui/page/tokens.css';
import '../ui/page/base.css';
import App from './App.svelte';

const target = document.getElementById('app');
if (target === null) throw new Error('The page has no element "app" to stand in.');

const bench = new Workbench(FIRST_DEMO);
const keeping = new Keeping(bench);
mount(App, { target, props: { bench, keeping } });
void keeping.begin();
