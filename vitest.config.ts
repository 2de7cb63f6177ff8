/** Which tests run under node: units beside their source, and the suites under tests that need no browser. */
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

// Svelte's server build has inert state, so what holds state is tested with the build the browser gets.
const withState = 'src/{session,ui,app}/**/*.test.ts';
const suites =
  'tests/{reference,second-methods,properties,rules,migrations,render,bench,endure}/**/*.test.ts';

// `npm run endure` draws the random cases of the properties many times over, from a seed that is new each time.
const times = Number(process.env.ENDURE_TIMES ?? 1);
const seed = Number(process.env.ENDURE_SEED ?? 1);

export default defineConfig({
  plugins: [svelte({ configFile: 'svelte.config.js' })],
  test: {
    allowOnly: false,
    globalSetup: './tests/shared-pages.ts',
    pool: 'threads',
    // One worker for each core: left to itself the runner keeps a core back, which of two is half.
    maxWorkers: '100%',
    // The files of one worker share what they import: to load it anew for each took half the time. So a test that puts
    // something in place of a global, a clock or a method takes it away again.
    isolate: false,
    testTimeout: 120_000 * times,
    provide: { times, seed },
    // A test whose loop ran over an empty list has checked nothing.
    expect: { requireAssertions: true },
    projects: [
      {
        extends: true,
        test: {
          name: 'plain',
          environment: 'node',
          include: ['src/**/*.test.ts', suites],
          exclude: [withState],
        },
      },
      {
        extends: true,
        resolve: { conditions: ['browser'] },
        test: { name: 'state', environment: './tests/browser-build.ts', include: [withState] },
      },
    ],
  },
});
