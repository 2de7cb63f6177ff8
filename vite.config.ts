/** How the page is built: from src/app into dist, with relative addresses so that it runs from any folder. */
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

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
      // What the first sight needs in one file: split by who shares what, it took 2 kB more.
      output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } },
    },
  },
  plugins: [svelte({ configFile: '../../svelte.config.js' })],
});
