// Pictures of the screens, to be looked at: phone and desktop, by day and by night.
import { expect, test } from '@playwright/test';
import { serve, type Served } from './server';

let served: Served;
test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(async () => {
  await served.stop();
});

for (const light of ['light', 'dark'] as const) {
  test(`pictures, ${light}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: light });
    const name = `${test.info().project.name}-${light}`;
    await page.goto(served.address);
    await expect(page.locator('li[data-lift]').first()).toBeVisible();
    await page.screenshot({ path: `test-results/${name}-overview.png`, fullPage: true, scale: 'css' });
    const lifts = await page.locator('li[data-lift]').count();
    for (let i = 0; i < lifts; i += 1) {
      await page.goto(served.address);
      await page.locator('li[data-lift] a').nth(i).click();
      // The overview has a verdict in each row: it must be gone before one verdict can be asked for.
      await expect(page.locator('li[data-lift]')).toHaveCount(0);
      await expect(page.locator('[data-verdict]')).toBeVisible();
      await expect(page.locator('[data-drawing] svg, section > p').first()).toBeVisible();
      await page.screenshot({ path: `test-results/${name}-lift-${i + 1}-first.png` });
      await page.screenshot({ path: `test-results/${name}-lift-${i + 1}.png`, fullPage: true, scale: 'css' });
      for (const tab of await page.getByRole('tab').all()) {
        await tab.click();
        await expect(page.locator('[data-drawing] svg')).toHaveCount(1);
        const kind = (await tab.getAttribute('id')) ?? 'tab';
        await page.locator('[data-drawing]').screenshot({ path: `test-results/${name}-lift-${i + 1}-${kind}.png`, scale: 'css' });
      }
    }
    const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(paper).toBe(light === 'light' ? 'rgb(255, 255, 255)' : 'rgb(15, 18, 20)');
  });
}
