/** Tests of asking the browser to keep what is stored. */
import { expect, it, vi } from 'vitest';
import { askToPersist } from './persistence.ts';

const browser = (persisted: boolean, persist: boolean) => ({
  persisted: vi.fn(async () => persisted),
  persist: vi.fn(async () => persist),
});

it('asks, and gives the answer', async () => {
  expect(await askToPersist(browser(false, true))).toBe('kept');
  expect(await askToPersist(browser(false, false))).toBe('mayGo');
});

it('does not ask for a promise that is given already', async () => {
  const storage = browser(true, false);
  expect(await askToPersist(storage)).toBe('kept');
  expect(storage.persist).not.toHaveBeenCalled();
});

it('says so where the browser gives no such promise, or forbids the question', async () => {
  const forbidden = browser(false, false);
  forbidden.persist.mockRejectedValue(new DOMException('denied', 'SecurityError'));
  expect(await askToPersist(forbidden)).toBe('unasked');
  vi.stubGlobal('navigator', {});
  expect(await askToPersist()).toBe('unasked');
  vi.unstubAllGlobals();
});
