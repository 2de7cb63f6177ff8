/** Opens the built page as a newcomer does. */
import { expect, test } from '@playwright/test';

// The page puts itself down on the device as it opens.
test.use({ serviceWorkers: 'allow' });

test('the page opens under its name, with nothing missing and no error in the console', async ({ page }) => {
  const troubles: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') troubles.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('response', (response) => {
    if (response.status() >= 400) troubles.push(`${response.status()} ${response.url()}`);
  });
  await page.goto('/');
  await expect(page).toHaveTitle('Sidestance');
  await expect(page.getByRole('heading', { level: 1, name: 'Sidestance' })).toBeVisible();
  expect(troubles).toEqual([]);
});
