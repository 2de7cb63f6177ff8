/** Fingers on a touch screen in a browser test, as many as are wanted. */
import type { Page } from '@playwright/test';
import type { Place } from './side-view.ts';

export interface Fingers {
  /** Puts fingers down, moves those that are down, or lifts those that are not named any more. */
  at(...places: readonly Place[]): Promise<void>;
  /** Lifts all. */
  lift(): Promise<void>;
  /** The system takes the touch away, as when a call comes in. */
  cancel(): Promise<void>;
}

/** Places are px of the window; the first one is always the same finger. */
export async function fingersOn(page: Page): Promise<Fingers> {
  const session = await page.context().newCDPSession(page);
  let down = 0;
  const send = async (
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    places: readonly Place[],
  ): Promise<void> => {
    const touchPoints = places.map(({ x, y }, id) => ({ x, y, id }));
    await session.send('Input.dispatchTouchEvent', { type, touchPoints });
  };
  return {
    async at(...places) {
      await send(places.length > down ? 'touchStart' : 'touchMove', places);
      down = places.length;
    },
    async lift() {
      await send('touchEnd', []);
      down = 0;
    },
    async cancel() {
      await send('touchCancel', []);
      down = 0;
    },
  };
}

/** Moves one finger from a place to another in steps, and leaves it there. */
export async function slide(fingers: Fingers, from: Place, to: Place, steps = 5): Promise<void> {
  await fingers.at(from);
  for (let step = 1; step <= steps; step++) {
    const part = step / steps;
    await fingers.at({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) });
  }
}
