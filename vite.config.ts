/** How the page is built: from src/app into dist, with relative addresses so that it runs from any folder. */
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

export default defineConfig({
  root: fileURLToPath(new URL('src/app', import.meta.url)),
  base: './',
  publicDir: '../../static',
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2023' },
  plugins: [svelte({ configFile: '../../svelte.config.js' })],
});
