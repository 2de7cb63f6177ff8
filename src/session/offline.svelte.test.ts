/** Tests of putting the page down on the device. */
import { afterEach, expect, it, vi } from 'vitest';
import { Offline } from './offline.svelte.ts';

afterEach(() => vi.unstubAllGlobals());

it('begins without a fault on a page that is left while the browser registers the worker', async () => {
  const registration = {
    ...new EventTarget(),
    addEventListener: vi.fn(),
    installing: null,
    waiting: null,
    active: null,
  };
  const serviceWorker = {
    controller: null,
    addEventListener: vi.fn(),
    getRegistration: () => Promise.resolve(registration),
    register: () => {
      // A page that is left has no container any more.
      vi.stubGlobal('navigator', { serviceWorker: undefined });
      return Promise.resolve(registration);
    },
  };
  vi.stubGlobal('navigator', { serviceWorker });
  await new Offline().begin();
  expect(serviceWorker.addEventListener).toHaveBeenCalledWith('controllerchange', expect.any(Function));
});
