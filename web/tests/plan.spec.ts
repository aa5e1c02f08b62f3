// The real program and a real browser: a reader opens a plan and finds whether, where and why.
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { JobView, LiftView } from '../src/api/client';
import { serve, type Served } from './server';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let served: Served;
let elsewhere: string[];
let complaints: string[];

test.beforeAll(async () => {
  served = await serve();
});
test.afterAll(async () => {
  await served.stop();
});
test.beforeEach(async ({ page, context }) => {
  elsewhere = [];
  complaints = [];
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol !== 'data:' && `${url.origin}/` !== served.address) elsewhere.push(request.url());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
});
test.afterEach(() => {
  expect(elsewhere, 'requests that left this computer').toEqual([]);
});

async function asked<T>(page: Page, path: string): Promise<T> {
  const answer = await page.request.get(`${served.address}${path}`);
  expect(answer.ok(), path).toBe(true);
  return (await answer.json()) as T;
}

/** Findings of axe that keep somebody out. */
async function barriers(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const found: { id: string; impact?: string; nodes: { target: unknown }[] }[] = await page.evaluate(
    // @ts-expect-error axe has just been put into the page
    () => axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then((r) => r.violations),
  );
  return found
    .filter((v) => v.impact !== 'minor')
    .map((v) => `${v.id} (${v.impact}): ${v.nodes.map((n) => JSON.stringify(n.target)).join(', ')}`);
}

/** The lift whose governing finding has a working to open. */
async function telling(page: Page): Promise<LiftView> {
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  for (const line of job.lifts) {
    const lift = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(line.id)}?lang=en&units=si`);
    if (lift.findings.some((f) => f.working.length > 0) && lift.has_elevation && lift.has_chart) return lift;
  }
  throw new Error('no lift of this job has a working and both drawings');
}

test('whether, which and why are read from the overview', async ({ page }) => {
  await page.goto(served.address);
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(job.job);
  const rows = page.locator('li[data-lift]');
  await expect(rows).toHaveCount(job.lifts.length);
  for (const [i, lift] of job.lifts.entries()) {
    await expect(rows.nth(i)).toContainText(lift.verdict.word);
    await expect(rows.nth(i)).toContainText(lift.governing?.sentence ?? '');
    if (lift.governing?.reserve) await expect(rows.nth(i)).toContainText(lift.governing.reserve.text);
  }
  if (job.invented) await expect(page.getByText('invented data', { exact: false }).first()).toBeVisible();
  await expect(page.getByText(job.cautions[0] ?? '?')).toBeVisible();
  expect(await barriers(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('verdict, reason and place stand in the first view of a lift', async ({ page }) => {
  const lift = await telling(page);
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const verdict = page.locator('[data-verdict]');
  await expect(verdict).toHaveText(lift.verdict.word);
  for (const seen of [verdict, page.getByText(lift.governing?.sentence ?? '?').first()]) {
    await expect(seen).toBeInViewport({ ratio: 1 });
  }
  await expect(page.locator('[data-drawing=elevation] svg')).toBeVisible();
});

test('a finding opens to formula and source', async ({ page }) => {
  const lift = await telling(page);
  const finding = lift.findings.find((f) => f.working.length > 0);
  const step = finding?.working[0];
  if (!finding || !step) throw new Error('no working');
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const row = page.locator(`li[data-check="${finding.id}"]`).first();
  await expect(row.getByText(step.formula).first()).toBeHidden();
  // By keyboard, as every control can be.
  await row.locator('summary').focus();
  await page.keyboard.press('Enter');
  await expect(row.getByText(step.formula).first()).toBeVisible();
  await expect(row.getByText(step.result.value.text).first()).toBeVisible();
  await expect(row.getByText(step.source, { exact: false }).first()).toBeVisible();
  expect(await barriers(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('one large drawing at a time, changed by keyboard', async ({ page }) => {
  const lift = await telling(page);
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  await expect(page.locator('[data-drawing] svg')).toHaveCount(1);
  await page.getByRole('tab', { name: 'Side view' }).focus();
  // On a slow connection the old drawing must not stand under the new name.
  await page.route('**/chart.svg*', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 1500));
    await route.continue();
  });
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Load chart' })).toBeFocused();
  await expect(page.locator('[data-drawing] svg')).toHaveCount(0, { timeout: 1000 });
  await expect(page.locator('[data-drawing=chart] svg')).toBeVisible();
  await expect(page.locator('[data-drawing] svg')).toHaveCount(1);
  await expect(page.locator('[data-drawing] svg')).toContainText('Load chart');
  const fit = await page.locator('[data-drawing] svg').boundingBox();
  await page.getByRole('button', { name: 'Larger' }).click();
  await expect.poll(async () => (await page.locator('[data-drawing] svg').boundingBox())?.width).toBeGreaterThan((fit?.width ?? 0) * 1.5);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'the page itself never scrolls sideways').toBe(true);
});

test('Spanish and US units are chosen once and remembered', async ({ page }) => {
  const lift = await telling(page);
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  await page.getByRole('button', { name: 'Language, units, screen' }).click();
  await page.getByLabel('Español').check();
  const spanish = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(lift.id)}?lang=es&units=si`);
  await expect(page.locator('[data-verdict]')).toHaveText(spanish.verdict.word);
  await page.locator('input[name=units]').nth(1).check();
  const pounds = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(lift.id)}?lang=es&units=us`);
  expect(pounds.governing?.sentence).not.toBe(lift.governing?.sentence);
  await expect(page.getByText(pounds.governing?.sentence ?? '?').first()).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await page.reload();
  await expect(page.getByText(pounds.governing?.sentence ?? '?').first()).toBeVisible();
  // Units are never mixed. Names and statements are people's own words and stay as they were written.
  const own = [lift.carried, lift.place].flat().map((fact) => fact.text);
  const figures = await page.locator('main dd').allInnerTexts();
  expect(figures.length).toBeGreaterThan(10);
  expect(figures.filter((text) => !own.includes(text) && /\d\s?(m|kg|kN|kPa)\b/.test(text))).toEqual([]);
  expect(await barriers(page)).toEqual([]);
});

test('the plan sheet is a PDF, on the paper that goes with the units', async ({ page }) => {
  await page.goto(served.address);
  const sheets = page.locator('a[type="application/pdf"]');
  await expect(sheets).toHaveCount(2);
  await expect(sheets.first()).toHaveAttribute('href', /lang=en&units=si&paper=a4$/);
  for (const sheet of await sheets.all()) {
    const answer = await page.request.get(new URL((await sheet.getAttribute('href')) ?? '', served.address).href, { timeout: 60_000 });
    expect(answer.headers()['content-type']).toBe('application/pdf');
    expect((await answer.body()).subarray(0, 5).toString()).toBe('%PDF-');
  }
});

test('a lift that does not exist is said, with a way back', async ({ page }) => {
  await page.goto(`${served.address}#/lifts/none`);
  await expect(page.getByRole('alert')).toContainText('There is no such lift in this plan.');
  await page.getByRole('link', { name: 'All lifts' }).click();
  await expect(page.locator('li[data-lift]').first()).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
});

test('every target is large enough for a glove', async ({ page }) => {
  const lift = await telling(page);
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  await page.getByRole('button', { name: 'Language, units, screen' }).click();
  await expect(page.locator('[data-drawing] svg')).toBeVisible();
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('a:not(.skip), button, summary, label')]
      .map((e) => ({ text: e.textContent?.trim(), height: e.getBoundingClientRect().height }))
      .filter(({ height }) => height > 0 && height < 48),
  );
  expect(small).toEqual([]);
});

test('without scripts the whole plan is on the plain page', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(served.address);
  await page.getByRole('link', { name: 'The plan as a plain page' }).click();
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  for (const lift of job.lifts) await expect(page.getByRole('row', { name: lift.name })).toContainText(lift.verdict.word);
  await context.close();
});
