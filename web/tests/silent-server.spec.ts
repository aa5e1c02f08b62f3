// The server goes away under the reader: what is shown is marked as old, and asked for again.
import { expect, test } from '@playwright/test';
import { serve } from './server';

test('a silent server is said, and its return too', async ({ page }) => {
  const first = await serve();
  await page.goto(first.address);
  const lift = page.locator('li[data-lift]').first();
  await expect(lift).toBeVisible();
  const before = await lift.innerText();
  await lift.getByRole('link').click();
  await expect(page.locator('[data-drawing] svg')).toBeVisible();

  await first.stop();
  await expect(page.getByText('The server does not answer.')).toBeVisible({ timeout: 20_000 });
  await expect(page.getByText('What you see is old and may no longer hold.', { exact: false })).toBeVisible();
  await expect(page.locator('[data-verdict]')).toContainText('Old');
  await expect(page.locator('[data-drawing] svg')).toBeVisible();
  await page.getByRole('tab', { name: 'Load chart' }).click();
  await expect(page.locator('[data-drawing] svg'), 'a drawing that never came is not replaced by another').toHaveCount(0);
  await page.getByRole('tab', { name: 'Side view' }).click();
  await expect(page.locator('[data-drawing] svg')).toContainText('Side view');
  await page.getByRole('button', { name: 'Emergency' }).click();
  await expect(page.locator('header').getByText('stay belted in the seat', { exact: false })).toBeVisible();
  await page.screenshot({ path: `test-results/silent-${test.info().project.name}.png` });

  const again = await serve(new URL(first.address).port);
  expect(again.address).toBe(first.address);
  await expect(page.getByText('The server does not answer.')).toBeHidden({ timeout: 20_000 });
  await page.getByRole('link', { name: 'All lifts' }).click();
  await expect(lift).toBeVisible();
  expect(await lift.innerText()).toBe(before);
  await again.stop();
});
