/** Which tests run under node: units beside their source, and the suites under tests that need no browser. */
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [svelte({ configFile: 'svelte.config.js' })],
  // Svelte's server build has inert state; the state classes are tested with the build the browser gets.
  resolve: { conditions: ['browser'] },
  test: {
    environment: 'node',
    include: ['src/**/*.test.ts', 'tests/{reference,properties,rules,migrations,render}/**/*.test.ts'],
    allowOnly: false,
    pool: 'threads',
    testTimeout: 20_000,
  },
});
