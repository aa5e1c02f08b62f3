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
    // The browser's own viewer of PDF files is part of the browser.
    if (!['data:', 'chrome:', 'chrome-extension:'].includes(url.protocol) && `${url.origin}/` !== served.address) elsewhere.push(request.url());
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
  const where = page.locator('section').filter({ has: page.getByRole('heading', { name: 'Where', exact: true }) });
  for (const seen of [verdict, page.getByText(lift.governing?.sentence ?? '?').first(), where]) {
    await expect(seen).toBeInViewport({ ratio: 1 });
  }
  for (const fact of lift.approach) await expect(where).toContainText(`${fact.name}${fact.text}`);
  await expect(page.locator('[data-drawing=elevation] svg')).toBeVisible();
});

test('a finding opens to formula and source', async ({ page }) => {
  const lift = await telling(page);
  const finding = lift.findings.find((f) => f.working.length > 0);
  const step = finding?.working[0];
  if (!finding || !step) throw new Error('no working');
  const formula = step.formula.map((piece) => piece.text).join('');
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const row = page.locator(`li[data-check="${finding.id}"]`).first();
  await expect(row.getByText(formula).first()).toBeHidden();
  // By keyboard, as every control can be.
  await row.locator('summary').focus();
  await page.keyboard.press('Enter');
  await expect(row.getByText(formula).first()).toBeVisible();
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
    await new Promise((resolve) => setTimeout(resolve, 3000));
    await route.continue();
  });
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Load chart' })).toBeFocused();
  await expect(page.locator('[data-drawing] svg')).toHaveCount(0, { timeout: 2500 });
  await expect(page.locator('[data-drawing=chart] svg')).toBeVisible();
  await expect(page.locator('[data-drawing] svg')).toHaveCount(1);
  await expect(page.locator('[data-drawing] svg')).toContainText('Load chart');
  const fit = await page.locator('[data-drawing] svg').boundingBox();
  const size = await page.getByRole('button', { name: 'Larger' }).boundingBox();
  expect(size?.y ?? Infinity, 'the control stands above the drawing').toBeLessThan(fit?.y ?? 0);
  await page.getByRole('button', { name: 'Larger' }).click();
  await expect.poll(async () => (await page.locator('[data-drawing] svg').boundingBox())?.width).toBeGreaterThan((fit?.width ?? 0) * 1.5);
  const whole = await page.locator('[data-drawing] svg').evaluate((svg) => {
    const { width, height } = svg.getBoundingClientRect();
    const box = (svg as unknown as SVGSVGElement).viewBox.baseVal;
    const around = svg.parentElement as HTMLElement;
    return { shape: width / height - box.width / box.height, hidden: around.scrollHeight - around.clientHeight, reach: around.scrollWidth - width };
  });
  expect(Math.abs(whole.shape)).toBeLessThan(0.02);
  expect(whole.hidden, 'nothing is cut off at the foot').toBeLessThanOrEqual(1);
  expect(whole.reach, 'the far edge can be scrolled to').toBeGreaterThanOrEqual(-1);
  await expect(page.getByText('The drawing goes on to the side.')).toBeVisible();
  // It begins in the middle and goes on both ways, as far as its edges.
  for (const [way, back] of [['To the right', 'To the left'], ['To the left', 'To the right']] as const) {
    await expect(page.getByRole('button', { name: back })).toBeEnabled();
    await expect(async () => {
      await page.getByRole('button', { name: way }).click({ timeout: 700 });
      await expect(page.getByRole('button', { name: way })).toBeDisabled({ timeout: 700 });
    }).toPass({ timeout: 15_000 });
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'the page itself never scrolls sideways').toBe(true);
});

/** A lift that says where else to stand and how the boom moves. */
async function standing(page: Page): Promise<LiftView> {
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  for (const line of job.lifts) {
    const lift = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(line.id)}?lang=en&units=si`);
    if (lift.has_stands && lift.has_movement && lift.other_stands.length > 0) return lift;
  }
  throw new Error('no lift of this job has other stands and both drawings');
}

test('where to stand and how the boom moves have a drawing each', async ({ page }) => {
  const lift = await standing(page);
  interface Planned { id: string; movement: { steps: unknown[] } }
  const plan = await asked<{ lifts: Planned[] }>(page, 'api/jobs/current/plan.json');
  const steps = plan.lifts.find(({ id }) => id === lift.id)?.movement.steps.length ?? 0;
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  await page.getByRole('tab', { name: 'Stand field' }).click();
  const stands = page.locator('[data-drawing=stands] svg');
  await expect(stands).toContainText(`Stand field: ${lift.name}`);
  await expect(stands.locator('[data-part=other-stands] text')).toHaveCount(lift.other_stands.length);
  await expect(stands.locator('[data-part=tolerance]')).toHaveCount(1);
  // By night its tints are those of the night.
  const tint = () => stands.locator('[fill*=drawing-passes], [fill*=drawing-condition]').first().evaluate((path) => getComputedStyle(path).fill);
  const day = await tint();
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(tint).not.toBe(day);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.getByRole('tab', { name: 'Boom movement' }).click();
  await expect(page.locator('[data-drawing=movement] svg [data-part=step]')).toHaveCount(steps);
  expect(steps).toBeGreaterThan(2);
  await expect(page.locator('[data-drawing] svg')).toHaveCount(1);
  if (lift.has_way_in) {
    await page.getByRole('tab', { name: 'Way to the stand' }).click();
    await expect(page.locator('[data-drawing=way-in] svg')).toContainText(`Way to the stand: ${lift.name}`);
  }
  // All tabs fit on a phone, each under a glove.
  const tabs = page.getByRole('tab');
  await expect(tabs).toHaveCount(4 + Number(lift.has_way_in) + Number(lift.has_way_out));
  for (const tab of await tabs.all()) expect((await tab.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'the page itself never scrolls sideways').toBe(true);
  expect(await barriers(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('other stands and how far off the stand may be are told in words', async ({ page }) => {
  const lift = await standing(page);
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const rows = page.locator('[data-other-stands] > li');
  await expect(rows).toHaveCount(lift.other_stands.length);
  for (const [i, stand] of lift.other_stands.entries()) {
    for (const said of [stand.verdict.word, stand.at, stand.governs, stand.off]) await expect(rows.nth(i)).toContainText(said);
  }
  expect(lift.stand_told).toHaveLength(3);
  const stand = page.locator('section').filter({ has: page.getByRole('heading', { name: 'Stand', exact: true }) });
  for (const fact of lift.stand_told) await expect(stand).toContainText(`${fact.name} ${fact.text}`);
});

test('what would make a refused lift work stands before its drawings, and the lift has no movement', async ({ page }) => {
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  let told = 0;
  for (const line of job.lifts) {
    const lift = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(line.id)}?lang=en&units=si`);
    if (lift.changes.length === 0) continue;
    expect(lift.verdict.code).toBe('no-go');
    await page.goto(`${served.address}#/lifts/${encodeURIComponent(line.id)}`);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(lift.name);
    await expect(page.locator('[data-changes] > li')).toHaveText(lift.changes);
    await expect(page.getByRole('tab', { name: 'Boom movement' })).toHaveCount(0);
    const [changes, drawing] = [await page.locator('[data-changes]').boundingBox(), await page.getByRole('tablist').boundingBox()];
    expect(changes?.y ?? Infinity).toBeLessThan(drawing?.y ?? 0);
    told += 1;
  }
  expect(told).toBeGreaterThan(0);
});

test('the way in and out is told with what it rests on', async ({ page }) => {
  const lift = await standing(page);
  const way = [{ name: 'Way in', text: 'from the gate of this test: 25.00 m', certainty: null }];
  await page.route(`**/api/jobs/current/lifts/${encodeURIComponent(lift.id)}?*`, async (route) => {
    const json = (await (await route.fetch()).json()) as LiftView;
    await route.fulfill({ json: { ...json, way, way_notes: ['Not looked at: other machines.'] } });
  });
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const section = page.locator('section').filter({ has: page.getByRole('heading', { name: 'Way in and out', exact: true }) });
  await expect(section).toContainText('Way in from the gate of this test: 25.00 m');
  await expect(section).toContainText('Not looked at: other machines.');
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
  const own = [lift.carried, lift.approach].flat().map((fact) => fact.text);
  const figures = await page.locator('main dd').allInnerTexts();
  expect(figures.length).toBeGreaterThan(10);
  expect(figures.filter((text) => !own.includes(text) && /\d\s?(m|kg|kN|kPa)\b/.test(text))).toEqual([]);
  expect(await barriers(page)).toEqual([]);
});

test('what to do in an emergency is one touch away on every screen, and stands beside the steps', async ({ page }) => {
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  const lift = await telling(page);
  for (const address of ['', `#/lifts/${encodeURIComponent(lift.id)}`, '#/lifts/none']) {
    await page.goto(`${served.address}${address}`);
    await page.reload();
    const button = page.getByRole('button', { name: 'Emergency' });
    await expect(button).toBeInViewport({ ratio: 1 });
    await button.click();
    for (const line of job.emergency) await expect(page.locator('header').getByText(line)).toBeInViewport({ ratio: 1 });
  }
  await page.goto(`${served.address}#/lifts/${encodeURIComponent(lift.id)}`);
  const steps = await page.locator('section[aria-labelledby=steps]').boundingBox();
  const beside = await page.locator('section[aria-labelledby=emergency-by-steps]').boundingBox();
  expect((beside?.y ?? Infinity) - ((steps?.y ?? 0) + (steps?.height ?? 0)), 'right beside or below the steps').toBeLessThan(40);
});

test('what must be at least there is said as needs and has, and no index shows its mark', async ({ page }) => {
  const job = await asked<JobView>(page, 'api/jobs/current?lang=en&units=si');
  let told = 0;
  for (const line of job.lifts) {
    const lift = await asked<LiftView>(page, `api/jobs/current/lifts/${encodeURIComponent(line.id)}?lang=en&units=si`);
    await page.goto(`${served.address}#/lifts/${encodeURIComponent(line.id)}`);
    // The page of the lift before stands until this one has come.
    await expect(page.getByRole('heading', { level: 1 })).toContainText(lift.name);
    await expect(page.locator('li[data-check]')).toHaveCount(lift.findings.length);
    await page.evaluate(() => document.querySelectorAll('details').forEach((d) => (d.open = true)));
    for (const finding of lift.findings) {
      if (finding.comparison !== 'at-least' || lift.findings.filter((f) => f.id === finding.id).length > 1) continue;
      const row = page.locator(`li[data-check="${finding.id}"]`);
      await expect(row).toContainText(`Needs${finding.demand?.text ?? '?'}`);
      await expect(row).toContainText(`Has${finding.limit?.text ?? '?'}`);
      told += 1;
    }
    const symbols = await page.locator('.formula, dt').allInnerTexts();
    expect(symbols.filter((text) => text.includes('_'))).toEqual([]);
  }
  expect(told).toBeGreaterThan(0);
  await expect(page.locator('sub').first()).toBeAttached();
});

test('a plan sheet that is not there yet is said to be on its way', async ({ page, context }) => {
  await page.goto(served.address);
  let release = () => {};
  const held = new Promise<void>((resolve) => (release = resolve));
  await page.route('**/plan-sheet.pdf*', async (route) => {
    await held;
    await route.continue();
  });
  const link = page.locator('a[type="application/pdf"]').first();
  await link.click();
  await expect(link).toContainText('being made');
  await expect(link).toHaveAttribute('aria-busy', 'true');
  const opened = context.waitForEvent('page');
  release();
  await expect(link).toContainText('made, open it', { timeout: 150_000 });
  await expect(link).toHaveAttribute('aria-busy', 'false');
  // Within seconds of the touch it opens by itself.
  await (await opened).close();
});

test('the plan sheet is a PDF, on the paper that goes with the units', async ({ page }) => {
  await page.goto(served.address);
  const sheets = page.locator('a[type="application/pdf"]');
  await expect(sheets).toHaveCount(2);
  await expect(sheets.first()).toHaveAttribute('href', /lang=en&units=si&paper=a4$/);
  for (const sheet of await sheets.all()) {
    const answer = await page.request.get(new URL((await sheet.getAttribute('href')) ?? '', served.address).href, { timeout: 150_000 });
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
