/** The Weigh-in under Edit in a browser test, and what scales would show under the bike on the page. */
import type { Locator, Page } from '@playwright/test';
import type { Stance } from '../../../src/core/standing/stance.ts';
import { scaleReadings, type Raising, type ScaleReadings } from '../../support/scale-readings.ts';
import { typeInto } from './panels.ts';

export const REAR_RAISED: Raising = { first: 'wheelsLevel', raised: 'rear', read: 'front', turnDeg: 11 };

export function useButton(page: Page): Locator {
  return page.getByRole('button', { name: 'Use this centre of gravity' });
}

export function found(page: Page): Locator {
  return page.getByRole('group', { name: 'Found' });
}

export function weighInSummary(page: Page): Locator {
  return page.locator('summary').filter({ hasText: /^Weigh-in$/ });
}

/** Types every figure that has to be read, with the axle raised that is chosen. */
export async function typeReadings(page: Page, readings: ScaleReadings): Promise<void> {
  await typeInto(page, 'Front scale', readings.front.toFixed(9));
  await typeInto(page, 'Rear scale', readings.rear.toFixed(9));
  await typeInto(page, 'Axle raised by', readings.lift.toFixed(9));
  await typeInto(page, 'Scale then', readings.raisedReading.toFixed(9));
}

export function readingsOf(on: Stance, raising: Raising = REAR_RAISED): ScaleReadings {
  return scaleReadings(on, raising);
}
