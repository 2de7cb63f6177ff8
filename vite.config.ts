/** How the page is built: from src/app into dist, with relative addresses so that it runs from any folder. */
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { FIRST_DEMO } from './src/document/demos/first-demo.ts';
import { licencesBuild } from './src/commands/licences.js';
import { offlineBuild } from './src/commands/offline-build.js';

/**
 * Leaves out of the page the part of Svelte that takes over what a server has drawn, as no server draws this page.
 * Svelte guards that part by one flag, which the bundler cannot see to be false for as long as something may set it.
 * A Svelte that names the flag otherwise ends the build, so that the plugin is looked at again.
 */
const withoutServerPages: Plugin = {
  name: 'without-server-pages',
  apply: 'build',
  transform: {
    filter: { id: /svelte\/src\/internal\/client\/dom\/hydration\.js$/ },
    handler(code) {
      const flag = 'export let hydrating = false';
      const setting = /(function set_hydrating\(value\) \{)[^}]*\}/;
      if (!code.includes(flag) || !setting.test(code))
        throw new Error('Svelte no longer guards pages of a server by the flag "hydrating"');
      return {
        code: code.replace(flag, 'export const hydrating = false').replace(setting, '$1}'),
        map: null,
      };
    },
  },
};

/**
 * Opens the first demonstration bike when the page is built, through the reader of every saved bike, so that the page
 * has not to read it and the migrations are not needed before the first sight. Bike and setup are their own baseline.
 */
const openedFirstDemo: Plugin = {
  name: 'opened-first-demo',
  apply: 'build',
  load: {
    filter: { id: /src\/document\/demos\/first-demo\.ts$/ },
    handler() {
      const { bike, setup, baseline, ...rest } = FIRST_DEMO;
      if (baseline.bike !== bike || baseline.setup !== setup || 'name' in baseline)
        throw new Error(
          'The first demonstration bike has a baseline of its own, which this build would leave out',
        );
      return `const bike = ${JSON.stringify(bike)}, setup = ${JSON.stringify(setup)};
        export const FIRST_DEMO = { ...${JSON.stringify(rest)}, bike, setup, baseline: { bike, setup } };`;
    },
  },
};

export default defineConfig({
  root: fileURLToPath(new URL('src/app', import.meta.url)),
  base: './',
  publicDir: '../../static',
  build: {
    outDir: '../../dist',
    emptyOutDir: true,
    target: 'es2023',
    // Every browser of the target fetches ahead by itself. What is fetched ahead can be fetched again after a failure.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            // What the first sight needs in one file: split by who shares what, it took 2 kB more.
            { name: 'first', tags: ['$initial'] },
            // What comes later in few files. Split by who shares what it was 189, which took a browser twice the work and
            // 23 kB more of scripts and 12 of styles, because little files compress badly.
            { name: 'styles', test: /[?&]type=style\b/ },
            { name: 'shared', minShareCount: 3 },
          ],
        },
      },
    },
  },
  plugins: [
    svelte({ configFile: '../../svelte.config.js' }),
    withoutServerPages,
    openedFirstDemo,
    licencesBuild(new URL('./', import.meta.url)),
    offlineBuild(new URL('src/app/offline-worker.ts', import.meta.url), new URL('static/', import.meta.url)),
  ],
});
