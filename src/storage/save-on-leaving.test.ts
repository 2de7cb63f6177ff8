/** Tests of saving when the page is left. */
import { expect, it, vi } from 'vitest';
import { saveOnLeaving } from './save-on-leaving.ts';

it('saves when the page is hidden or left, and not when it is shown', () => {
  const page = new EventTarget();
  const sheet = Object.assign(new EventTarget(), { visibilityState: 'visible' as DocumentVisibilityState });
  const flush = vi.fn(async () => {});
  const stop = saveOnLeaving(flush, page, sheet);
  sheet.dispatchEvent(new Event('visibilitychange'));
  expect(flush).toHaveBeenCalledTimes(0);
  sheet.visibilityState = 'hidden';
  sheet.dispatchEvent(new Event('visibilitychange'));
  page.dispatchEvent(new Event('pagehide'));
  expect(flush).toHaveBeenCalledTimes(2);
  stop();
  page.dispatchEvent(new Event('pagehide'));
  expect(flush).toHaveBeenCalledTimes(2);
});
