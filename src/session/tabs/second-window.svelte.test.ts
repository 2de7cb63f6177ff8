/** Tests of the presenter's second window: it opens and closes, is closed by somebody else, or is blocked and says so. */
import { expect, it } from 'vitest';
import { SecondWindow } from './second-window.svelte.ts';

it('a window that the browser blocks is not open, says so, and can be asked for again', () => {
  let blocks = true;
  const second = new SecondWindow(() => (blocks ? null : { close: () => {} }));
  second.toggle();
  expect([second.isOpen, second.isBlocked]).toEqual([false, true]);
  blocks = false;
  second.toggle();
  expect([second.isOpen, second.isBlocked]).toEqual([true, false]);
});

it('a window is closed once by the button, and is known as closed where somebody else closes it', () => {
  let closed = 0;
  let close = (): void => {};
  const second = new SecondWindow((onclosed) => {
    close = onclosed;
    return { close: () => (closed += 1) };
  });
  second.toggle();
  second.toggle();
  second.close();
  expect([second.isOpen, closed]).toEqual([false, 1]);
  second.toggle();
  close();
  expect([second.isOpen, second.isBlocked]).toEqual([false, false]);
});
