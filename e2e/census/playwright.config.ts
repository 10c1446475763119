import { defineConfig } from '@playwright/test'
import page from '#e2e/playwright.config.ts'

/** The census of controls: in the same browser and of the same build as the tests of the page. */
export default defineConfig({
  ...page,
  testDir: '.',
  testIgnore: [],
  outputDir: '../../test-results',
  globalSetup: '../support/serveBuild.ts',
  // What it finds it finds at once: a second try would only take as long again.
  retries: 0,
  timeout: 900_000,
  use: { ...page.use, screenshot: 'off' },
  projects: [
    { name: 'census', testMatch: 'census.spec.ts' },
    // Looks at what the census has drawn, so it waits for it.
    { name: 'covered', testMatch: 'covered.spec.ts', dependencies: ['census'] },
  ],
})
