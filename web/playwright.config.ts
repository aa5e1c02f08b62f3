import { defineConfig } from '@playwright/test';

// Debian's chromium, or the one named by CHROMIUM: no browser is downloaded.
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export default defineConfig({
  testDir: 'tests',
  outputDir: 'test-results',
  // A program without optimization takes its time over plan and plan sheet.
  timeout: 240_000,
  workers: 1,
  reporter: 'list',
  use: { browserName: 'chromium', headless: true, locale: 'en-GB', launchOptions: { executablePath, args: QUIET } },
  projects: [
    { name: 'phone', use: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true } },
    // The tablet in the cab: for its pictures, and for what changes with width.
    { name: 'tablet', testMatch: 'pictures.spec.ts', use: { viewport: { width: 820, height: 1180 }, deviceScaleFactor: 1, hasTouch: true, isMobile: true } },
    { name: 'desktop', use: { viewport: { width: 1280, height: 900 } } },
  ],
});
