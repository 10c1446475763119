import type { Page } from '@playwright/test'
import { expect } from '#e2e/support/test.ts'
import { at, press, type Scene, spark, unlessSeen } from './steps.ts'

export const logged = async (page: Page) => {
  await at('log', spark)(page)
  await page.getByRole('button', { name: /as taught/ }).click()
  await page.locator('.log-actions button').first().click()
  await expect(page.getByRole('button', { name: /^delete/ }).first()).toBeVisible()
}

export const LOG: readonly Scene[] = [
  { name: 'the log, empty', prepare: at('log', spark) },
  { name: 'the log, a class in it', prepare: logged },
  {
    name: 'the log, more classes than are shown at once',
    prepare: async (page) => {
      await logged(page)
      for (let more = 0; more < 11; more++) {
        await page.getByRole('button', { name: /as taught/ }).click()
        await page.locator('.log-actions button').first().click()
        await expect(page.locator('.log-entry')).toHaveCount(0)
      }
      await expect(page.getByRole('button', { name: /^show all/ })).toBeVisible()
    },
    show: (page) => expect(page.getByRole('button', { name: /^(show all|only the last)/ })).toBeVisible(),
  },
  { name: 'an entry of the log', prepare: at('log', spark), show: unlessSeen('.log-entry', press(/as taught/)), own: 'main' },
  {
    name: 'the log, a class deleted',
    prepare: logged,
    show: async (page) => {
      const deletes = page.getByRole('button', { name: /^delete/ })
      if ((await deletes.count()) > 0) await deletes.first().click()
      await expect(deletes).toHaveCount(0)
    },
    own: 'main',
  },
]
