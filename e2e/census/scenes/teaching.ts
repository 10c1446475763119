import { expect } from '#e2e/support/test.ts'
import { at, drafted, inTurn, ridge, type Scene } from './steps.ts'

const CLASS = '2026-01-15T18:26:00Z'
const begun = inTurn(at('lead', ridge), async (page) => {
  const start = page.getByRole('button', { name: 'the first one is now' })
  await start.click()
  await page.clock.runFor(1000)
  await expect(start).toHaveCount(0)
})

export const TEACHING: readonly Scene[] = [
  { name: 'a class about to begin', prepare: at('lead', ridge), clock: CLASS },
  { name: 'a class under way, late', prepare: begun, clock: CLASS, own: 'main' },
  {
    name: 'a class of another ride under way',
    prepare: async (page) => {
      await begun(page)
      // Another ride is opened while the class goes on.
      await page.evaluate(() => location.assign('#/start'))
      await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
      await drafted(page)
      await page.locator('.app-head a[href^="#/lead"]').click()
    },
    clock: CLASS,
    own: 'main',
  },
  {
    name: 'a class that is over',
    prepare: async (page) => {
      await begun(page)
      await page.clock.fastForward('50:00')
    },
    show: async (page) => {
      await page.clock.fastForward('50:00')
      await page.clock.runFor(300)
    },
    clock: CLASS,
    own: 'main',
  },
]
