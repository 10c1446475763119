import { expect } from '#e2e/support/test.ts'
import { rich } from './richRide.ts'
import { at, drafted, inTurn, ridge, type Scene } from './steps.ts'

const CLASS = '2026-01-15T18:26:00Z'
const begun = inTurn(at('lead', ridge), async (page) => {
  const start = page.getByRole('button', { name: 'start: beat 1 now' })
  await start.click()
  await page.clock.runFor(1000)
  await expect(start).toHaveCount(0)
})

/** Begun as late as no song can be waited for. */
const LATE = '2026-01-15T18:36:00Z'
const begunLate = inTurn(at('lead', ridge), async (page) => {
  await page.getByRole('button', { name: 'start: beat 1 now' }).click()
  await page.clock.runFor(1000)
  await page.getByRole('button', { name: /^next/ }).click()
  await page.clock.runFor(1000)
})

export const TEACHING: readonly Scene[] = [
  { name: 'a class about to begin', prepare: at('lead', ridge), clock: CLASS },
  { name: 'a class under way, late', prepare: begun, clock: CLASS, own: 'main' },
  {
    name: 'a class that has to lose time, with something to undo',
    prepare: begunLate,
    show: async (page) => {
      await page.clock.runFor(3000)
      await expect(page.getByRole('button', { name: /^skip it/ })).toBeVisible()
    },
    clock: LATE,
    own: 'main',
    ownOnly: true,
  },
  {
    name: 'a class about to be left',
    prepare: begun,
    show: async (page) => {
      const end = page.getByRole('button', { name: /^end the class here/ })
      if ((await end.count()) === 0) await page.getByRole('button', { name: /^leave/ }).click()
      await expect(end).toBeVisible()
    },
    clock: CLASS,
    own: '.lead-bar',
    ownOnly: true,
  },
  { name: 'a class about to begin, with a briefing', prepare: at('lead', rich), clock: CLASS, own: '.lead-bar' },
  {
    name: 'a class of another ride under way',
    prepare: begun,
    show: async (page) => {
      if ((await page.getByRole('heading', { name: /You’re still teaching/ }).count()) > 0) return
      // Another ride is opened while the class goes on.
      await page.evaluate(() => location.assign('#/start'))
      await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
      await drafted(page)
      await page.locator('.app-head a[href^="#/lead"]').click()
      await expect(page.getByRole('heading', { name: /You’re still teaching/ })).toBeVisible()
    },
    clock: CLASS,
    own: 'main',
  },
  {
    name: 'a class that is over',
    prepare: async (page) => {
      await begun(page)
      await page.getByRole('button', { name: /^next/ }).click()
      await page.clock.fastForward('50:00')
    },
    show: async (page) => {
      await page.clock.fastForward('50:00')
      await page.clock.runFor(300)
    },
    clock: CLASS,
    own: 'main',
  },
  {
    name: 'a class just ended',
    prepare: async (page) => {
      await begun(page)
      await page.clock.fastForward('50:00')
    },
    show: async (page) => {
      const offer = page.getByRole('button', { name: 'log this class' })
      if ((await offer.count()) > 0) return
      await page.clock.fastForward('50:00')
      await page.clock.runFor(300)
      for (let press = 0; press < 2; press++) await page.getByRole('button', { name: /^(end the class|press again to end)/ }).click()
      await expect(offer).toBeVisible()
    },
    clock: CLASS,
    own: '.app-notices',
    ownOnly: true,
  },
]
