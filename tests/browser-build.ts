/** The test environment that compiles Svelte for the browser, as the page gets it, but gives the tests no page. */
import type { Environment } from 'vitest/runtime';

const browserBuild: Environment = {
  name: 'browser-build',
  viteEnvironment: 'client',
  setup: () => ({ teardown: () => undefined }),
};

export default browserBuild;
