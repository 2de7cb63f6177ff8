/** The bike on the page as its file holds it, and what the core makes of it. */
import { CHAIN, driveNoun } from '../../../src/core/parts/drive-noun.ts';
import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { noStandWords } from '../../../src/words/trouble/no-stand-words.ts';
import { whyStory } from '../../../src/words/why/why-words.ts';
import { splitByAdjuster } from '../../../src/core/effects/split-by-adjuster.ts';
import { why as whyOf } from '../../../src/core/effects/why.ts';
import { READINGS } from '../../../src/core/readings/all-readings.ts';
import type { Point } from '../../../src/core/plane/point.ts';
import type { PointKey } from '../../../src/core/sketch/points.ts';
import { placed } from '../../support/points.ts';
import { standBike } from '../../../src/core/riding/stand-bike.ts';
import type { RideStateKey } from '../../../src/core/riding/states/all-ride-states.ts';
import type { Stance } from '../../../src/core/standing/stance.ts';
import { writeNumber, type NumberStyle } from '../../../src/core/units/number-style.ts';
import { QUANTITIES } from '../../../src/core/units/all-quantities.ts';
import type { BikeDocument, BikeWithSetup } from '../../../src/document/document.ts';
import { openDocument } from '../../../src/document/open-document.ts';

export const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

/** The text of the file that the page saves now. What the page says of it is taken away, since it moves the side view. */
export async function savedText(page: Page): Promise<string> {
  // A notice about storage may offer the same below the bar.
  const bar = page.getByRole('banner');
  const save = bar.getByRole('button', { name: 'Save to a file' });
  // On a phone it is in the pop-up, which saving closes.
  if (!(await save.isVisible())) await bar.getByRole('button', { name: 'Files, units and theme' }).click();
  const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
  const said = page.getByRole('status').filter({ hasText: 'Saved to' });
  await said.getByRole('button', { name: 'Dismiss' }).click();
  await expect(said).toBeHidden();
  return await readFile(await file.path(), 'utf8');
}

/** The document on the page, read from the file that it saves now. */
export async function savedDocument(page: Page): Promise<BikeDocument> {
  const opened = openDocument(await savedText(page));
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value.document;
}

export function standing({ bike, setup }: BikeWithSetup, state: RideStateKey = 'riderUp'): Stance {
  const stood = standBike(bike, setup, state);
  if (!stood.ok) throw new Error(`the bike does not stand: ${stood.reason}`);
  return stood;
}

/** The advice on a bike that cannot stand, its spaces plain. */
export function adviceOn({ bike, setup }: BikeWithSetup): string {
  const stood = standBike(bike, setup, 'riderUp');
  if (stood.ok) throw new Error('the bike stands');
  return noStandWords(stood, CHAIN, METRIC).replace(/\s+/g, ' ');
}

/** What the page says of a change under Why, for each sentence the reading it is about; its spaces plain. */
export function sentencesOf(
  before: BikeWithSetup,
  after: BikeWithSetup,
  state: RideStateKey = 'riderUp',
): { reading: string; text: string }[] {
  const from = { ...before, stance: standing(before, state) };
  const to = { ...after, stance: standing(after, state) };
  const splits = splitByAdjuster(from, to, (asSet) => standing(asSet, state));
  const drive = driveNoun(after.bike.drive.kind);
  return whyStory(splits, whyOf(from.stance, to.stance), drive, METRIC).sentences.map(
    ({ reading, text }) => ({
      reading,
      text: text.replace(/\s+/g, ' '),
    }),
  );
}

/** A reading of a stance in its metric number. */
export function metricReading(stance: Stance, key: string): number {
  const reading = READINGS.find((each) => each.key === key);
  const value = reading?.read(stance);
  if (reading === undefined || typeof value !== 'number') throw new Error(`no number for ${key}`);
  return QUANTITIES[reading.quantity].fromCore(value);
}

/** A reading as the page writes it. */
export function writtenReading(stance: Stance, key: string, style: NumberStyle = METRIC): string {
  const reading = READINGS.find((each) => each.key === key);
  if (reading === undefined) throw new Error(`no reading ${key}`);
  return writeNumber(metricReading(stance, key), reading.quantity, style).text;
}

/** Where a point of a saved bike stands on the ground; it hangs in Edit, and stands in the ride state shown elsewhere. */
export function placeOf(saved: BikeDocument, key: PointKey, state: RideStateKey = 'toppedOut'): Point {
  return placed(standing(saved, state), saved.bike, key);
}
