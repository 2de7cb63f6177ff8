/** A lesson by mouse and keys: predicted before it shows, hidden from the accessibility tree until then, and the bike left as it was. */
import { readFileSync } from 'node:fs';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { expectNothingSerious } from './support/axe.ts';
import { FRONT_HEIGHT, plain, readingText, typeInto } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

function room(page: Page): Locator {
  return page.getByRole('dialog');
}

async function begin(page: Page, title: string): Promise<void> {
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByRole('button', { name: `Start: ${title}` }).click();
  await expect(room(page).getByRole('heading', { name: title })).toBeVisible();
}

test('a whole lesson by mouse and keys, and the bike comes back to the last digit, with its undo history', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '7');
  const before = await readingText(page, 'Trail');
  await begin(page, 'Raise the rear');
  await room(page).getByRole('button', { name: 'Next' }).click();
  // What is hidden is not on the page at all: no figure with a unit, in no text and in no label.
  const tree = plain(await room(page).ariaSnapshot());
  expect(tree).toContain('Fit a longer shock.');
  expect(tree).toContain('What do you expect?');
  expect(tree).not.toMatch(/\d+\.\d+ ?(°|mm|%)/);
  await room(page).getByText('quicker steering', { exact: true }).click();
  const amount = room(page).getByLabel('By about how much?');
  await amount.fill('0.5');
  await amount.press('Enter');
  // A field keeps its keys to itself.
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await amount.fill('0.5');
  await amount.press('Enter');
  await page.keyboard.press('Tab');
  // Page Down, as a clicker sends it, looks first and then goes on.
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toContainText('Rake: 24.1');
  await expect(room(page)).toContainText('Right. You said: quicker steering, by about 0.50°.');
  await expect(room(page).getByRole('img')).toHaveAccessibleName(/after the change/);
  // The caution is whole in sight beside a step however long, and all buttons of the foot stand in one line.
  await expect(room(page).getByRole('note')).toBeInViewport({ ratio: 1 });
  const tops = await room(page)
    .locator('footer button')
    .evaluateAll((buttons) => buttons.map((button) => Math.round(button.getBoundingClientRect().top)));
  expect(tops.length).toBeGreaterThan(4);
  expect(new Set(tops).size).toBe(1);
  await room(page).getByRole('button', { name: 'Undo the step' }).click();
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toBeVisible();
  await page.keyboard.press('b');
  await expect(room(page).getByText('Blank.')).toBeVisible();
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await page.keyboard.press('b');
  await room(page).getByRole('button', { name: 'Pointer ring' }).click();
  await room(page).locator('.drawing').hover();
  await expect(room(page).locator('.ring')).toBeVisible();
  await expectNothingSerious(page, 'dialog');
  for (let press = 0; press < 7; press++) await page.keyboard.press('PageDown');
  await expect(room(page).getByText('End', { exact: true })).toBeVisible();
  await expect(room(page).locator('li').first()).toContainText('Right. You said: quicker steering');
  await page.keyboard.press('Escape');
  await expect(room(page)).toHaveCount(0);
  expect(await readingText(page, 'Trail')).toBe(before);
  await page.keyboard.press('Control+z');
  await expect.poll(() => readingText(page, 'Trail')).not.toBe(before);
});

test('sayings are held against the bike on the page, and one press shows a trial', async ({ page }) => {
  await openPage(page);
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByText('Sayings, checked', { exact: true }).click();
  const card = page.getByRole('listitem').filter({ hasText: 'A bigger rear sprocket flattens' }).first();
  await expect(card).toContainText('Holds in part for this bike.');
  // Where motion is unwanted nothing is replayed, and both ends are shown instead.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await card.getByRole('button', { name: 'Show: Two teeth more: on the gas' }).click();
  await expect(room(page).locator('.figure')).toContainText('Anti-squat');
  await expect(room(page).getByRole('button', { name: 'Replay slowly' })).toHaveCount(0);
  const drawn = (): Promise<string> => room(page).locator('.picture').innerHTML();
  const after = await drawn();
  await room(page).getByRole('button', { name: 'Before' }).click();
  await expect.poll(drawn).not.toBe(after);
  await room(page).getByRole('button', { name: 'After' }).click();
  await expect.poll(drawn).toBe(after);
});

/** Sheets of paper that the page prints to. */
async function sheetsOf(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = await page.pdf({ format });
  return (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
}

test('a lesson made of the bike is edited, saved and opened again; it runs with notes in a second window, and the bike stays', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  const before = await readingText(page, 'Trail');
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByText('Your own', { exact: true }).click();
  await page.getByRole('button', { name: 'Make a lesson of this' }).click();
  const form = page.getByRole('dialog');
  await form.getByLabel('Title').fill('What my fork does');
  await expect(form.getByText('On this lesson’s bike:').first()).toContainText('Steeper axis');
  await expectNothingSerious(page, 'dialog');
  await form.getByRole('button', { name: 'Done' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file: What my fork does' }).click();
  const saved = readFileSync(await (await coming).path(), 'utf8');
  const picker = page.getByLabel('Open a lesson’s file').and(page.locator('input'));
  const file = (name: string, text: string) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await picker.setInputFiles(file('cut.json', saved.slice(0, 200)));
  await expect(page.getByText('cut.json was not opened. The file breaks off')).toBeVisible();
  await picker.setInputFiles(file('more.json', saved.replace('What my fork does', 'The same, opened')));
  await page.getByRole('button', { name: 'Send: The same, opened' }).click();
  // The test's own server is on this machine, so a file is offered beside the link.
  const sending = page.getByRole('dialog', { name: 'Send a lesson' });
  await expect(sending.getByRole('alert')).toContainText('opens only on this machine');
  await expect(sending.getByRole('button', { name: 'Save to a file' })).toBeVisible();
  const link = await sending.getByLabel(/^Link, \d+ characters$/).inputValue();
  await sending.getByRole('button', { name: 'Close' }).last().click();
  await page.evaluate((lesson) => (location.hash = lesson), link.replace(/^[^#]+/, ''));
  const came = page.getByRole('status').filter({ hasText: 'came in a link' });
  await came.getByRole('button', { name: 'Start the lesson' }).click();
  await expect(room(page).getByRole('heading', { name: 'The same, opened' })).toBeVisible();
  await page.keyboard.press('Escape');
  await came.getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => new URL(page.url()).hash).toBe('');
  await page.getByRole('button', { name: 'Start on its bike: The same, opened' }).click();
  // A browser that blocks the window gives null.
  const blocked = await page.evaluateHandle(() => {
    const { open } = window;
    window.open = () => null;
    return open;
  });
  await room(page).getByRole('button', { name: 'Notes in a second window' }).click();
  await expect(room(page).getByRole('alert')).toContainText('The browser blocks the second window.');
  await blocked.evaluate((open) => (window.open = open));
  const opening = page.waitForEvent('popup');
  await room(page).getByRole('button', { name: 'Notes in a second window' }).click();
  const notes = await opening;
  await expect(notes.getByRole('heading', { name: 'The same, opened' })).toBeVisible();
  // The presenter has the figures before the room does, and turns the room's pages.
  await notes.keyboard.press('PageDown');
  await expect(notes.getByText('The room does not see the figures yet.')).toBeVisible();
  await expect(notes.locator('.figure')).toContainText('Steeper axis');
  await expect(room(page).getByText('Step 1 of 1')).toBeVisible();
  expect(plain(await room(page).ariaSnapshot())).not.toMatch(/before, .* after/);
  await notes.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toContainText('after');
  const closing = notes.waitForEvent('close');
  await page.keyboard.press('Escape');
  await closing;
  expect(await readingText(page, 'Trail')).toBe(before);
  // A page that is opened again in the middle of a lesson has the bike as it was, and both lessons.
  await page.getByRole('button', { name: 'Start on this bike: The same, opened' }).click();
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toBeVisible();
  await page.reload();
  await expect.poll(() => readingText(page, 'Trail')).toBe(before);
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByText('Your own', { exact: true }).click();
  for (const title of ['What my fork does', 'The same, opened'])
    await expect(page.getByRole('button', { name: `Edit: ${title}` })).toBeVisible();
});

test('the corner is sketched with its figures, and a handout prints on a front and a back, on A4 and on Letter', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.print = () => {};
  });
  await openPage(page);
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByText('The corner', { exact: true }).click();
  await expect(page.getByRole('img', { name: 'The corner from above' })).toBeVisible();
  await expect(page.getByText('neither says anything about lap times')).toBeVisible();
  await expect(page.getByRole('row', { name: /^Exit: Accelerating/ })).toContainText('%');
  const parts = page.getByRole('group', { name: 'What is shown' });
  await parts.getByText('Your own', { exact: true }).click();
  await page.getByRole('button', { name: 'Make a lesson of this' }).click();
  await page.getByRole('dialog').getByLabel('Title').fill('A lesson of ours');
  await page.getByRole('dialog').getByLabel('Caution').fill('Nobody rides this bike before it is checked.');
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  for (const title of ['A lesson of ours', 'Raise the rear', 'Lowering for a short rider']) {
    if (title === 'Raise the rear') await parts.getByText('Lessons', { exact: true }).click();
    await page.getByRole('button', { name: `Handout: ${title}` }).click();
    const [front, back] = await page.getByRole('article', { name: 'Page to print' }).all();
    // The front holds blanks and no figure; the back holds the figures; both hold the cautions.
    expect(plain(await front.innerText())).not.toMatch(/\d+\.\d+ ?(°|mm|%)/);
    await expect(front).toContainText('What do you expect');
    await expect(back).toContainText('before,');
    for (const side of [front, back]) await expect(side).toContainText('Caution.');
    await page.getByRole('button', { name: 'Print front and back' }).click();
    expect(await sheetsOf(page, 'A4')).toBe(2);
    expect(await sheetsOf(page, 'Letter')).toBe(2);
    await page.getByRole('button', { name: 'Close' }).last().click();
  }
});
