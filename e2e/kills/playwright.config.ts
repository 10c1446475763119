import { defineConfig } from '@playwright/test'
import page from '#e2e/playwright.config.ts'

/** The long runs of what is kept through kills and between windows: in the same browser and of the same build as the tests of the page. */
export default defineConfig({
  ...page,
  testDir: '.',
  testIgnore: [],
  outputDir: '../../test-results',
  globalSetup: '../support/serveBuild.ts',
  // One after the other: what is measured is how old a lost edit is.
  workers: 1,
  fullyParallel: false,
  retries: 0,
  timeout: 3_600_000,
  use: { ...page.use, screenshot: 'off' },
  projects: [{ name: 'kills' }],
})
