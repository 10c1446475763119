import { defineConfig, type ReporterDescription } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'

const report = process.env.RIDEWRIGHT_REPORT
const reporters: ReporterDescription[] = [['list'], ...(report ? [['json', { outputFile: report }] satisfies ReporterDescription] : [])]

// The workers of one run know each other by it.
process.env.RIDEWRIGHT_RUN ??= String(process.pid)

/** One browser, a context of its own for every test, and the production build on a free port. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: '../test-results',
  globalSetup: './support/serveBuild.ts',
  fullyParallel: true,
  // Runs of their own: `npm run census`, `npm run kills`, `npm run windows`.
  testIgnore: ['census/**', 'counts/**', 'kills/**'],
  projects: [{ name: 'page' }],
  workers: 2,
  // A test of the whole page on a machine of unknown load: what passes at the second try is named in the summary.
  retries: process.env.CI ? 1 : 0,
  forbidOnly: Boolean(process.env.CI),
  // Limits against waiting for ever, wide enough for a slow machine that does other things besides.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: reporters,
  use: {
    // A control that is not there fails its test before the test's own time is up.
    actionTimeout: 40_000,
    // Set by the global set-up, so it is there when a worker reads this.
    baseURL: process.env.RIDEWRIGHT_URL,
    viewport: { width: 1440, height: 900 },
    // What most who teach by this page have: American dates, times of day, and measures.
    locale: 'en-US',
    timezoneId: 'UTC',
    colorScheme: 'light',
    reducedMotion: 'reduce',
    screenshot: 'only-on-failure',
    launchOptions: { ...(await findBrowser()), args: CONTAINER_FLAGS },
  },
})
