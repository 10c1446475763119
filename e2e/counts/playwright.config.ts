import { defineConfig } from '@playwright/test'
import page from '#e2e/playwright.config.ts'

/** How many actions of a hand it takes to plan a class: in the same browser and of the same build as the tests of the page. */
export default defineConfig({
  ...page,
  testDir: '.',
  testIgnore: [],
  outputDir: '../../test-results',
  globalSetup: '../support/serveBuild.ts',
  retries: 0,
  timeout: 900_000,
  projects: [{ name: 'counts', testMatch: 'counts.spec.ts' }],
})
