import { expect } from '#e2e/support/test.ts'
import { rich } from './richRide.ts'
import { at, LIST, type Scene, spark, start } from './steps.ts'

export const START: readonly Scene[] = [
  { name: 'the start, empty', prepare: start },
  {
    name: 'the start, a list pasted and rides kept',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.app-name').click()
    },
    show: async (page) => {
      await page.locator('.start-songs textarea').fill(`${LIST}\nBrickworks 3:75 132`)
      await expect(page.getByRole('table')).toBeVisible()
    },
  },
  {
    name: 'the start, a slot of another length and a bike kept',
    prepare: async (page) => {
      await at('setup', rich)(page)
      await page.getByRole('button', { name: /^keep / }).click()
      await page.locator('.app-name').click()
    },
    show: async (page) => {
      await page.getByLabel('other', { exact: true }).check({ force: true })
      await expect(page.getByLabel('other length')).toBeVisible()
      await expect(page.getByLabel('bike', { exact: true })).toBeVisible()
    },
  },
  {
    name: 'the start, a ride deleted',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.app-name').click()
    },
    show: async (page) => {
      if ((await page.locator('.app-notices .ui-notice').count()) > 0) return
      await page
        .getByRole('button', { name: /^delete/ })
        .first()
        .click()
      await expect(page.locator('.app-notices .ui-notice')).toBeVisible()
    },
    own: '.app-notices',
  },
  {
    name: 'the start, a backup to be put back',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.app-name').click()
    },
    show: async (page) => {
      if ((await page.locator('dialog[open]').count()) > 0) return
      const download = page.waitForEvent('download')
      await page
        .getByRole('button', { name: /backup/ })
        .first()
        .click()
      const file = await (await download).path()
      // What differs is to be chosen from.
      await page
        .getByRole('button', { name: /^delete/ })
        .first()
        .click()
      await page.locator('.backup input[type="file"], .start-backup input[type="file"]').first().setInputFiles(file)
      await expect(page.locator('dialog[open]')).toBeVisible()
    },
  },
]
