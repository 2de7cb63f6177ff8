/** How the side view lies in its window, told from where two points of known places are seen. */
import type { Page } from '@playwright/test';
import type { Stance } from '../../../src/core/standing/stance.ts';
import { toScreen, type View } from '../../../src/scene/shapes/view.ts';
import { middleOf, type Place } from './side-view.ts';

/** The view of a level bike, in px of the window. */
async function viewOf(page: Page, stance: Stance): Promise<View> {
  const rear = await middleOf(page, 'point-rearPatch');
  const front = await middleOf(page, 'point-frontPatch');
  const scale = (front.x - rear.x) / stance.pose.wheelbase;
  return { scale, turn: 0, xPx: rear.x, yPx: rear.y };
}

/** Where a place of the ground frame, mm, is seen, px of the window. */
export async function seenAt(page: Page, stance: Stance, place: Place): Promise<Place> {
  return toScreen(await viewOf(page, stance), place);
}
