import { dropFiles, textFile } from '#e2e/support/dropFiles.ts'
import { expect } from '#e2e/support/test.ts'
import { type Scene, spark, start, unlessSeen } from './steps.ts'

export const SHELL: readonly Scene[] = [
  {
    name: 'the keys',
    prepare: spark,
    show: unlessSeen('dialog[open]', async (page) => {
      await page.locator('.app-keys-button').click()
    }),
  },
  {
    name: 'the box that finds anything',
    prepare: spark,
    show: unlessSeen('dialog[open]', async (page) => {
      await page.locator('.app-find-button').click()
      await page.locator('.find input').fill('kites')
      await expect(page.locator('.find-row').first()).toContainText('Brickworks Elevator')
    }),
    own: 'dialog',
  },
  {
    name: 'a notice',
    prepare: start,
    show: async (page) => {
      if ((await page.locator('.app-notices .ui-notice').count()) > 0) return
      await dropFiles(page, page.locator('main'), [textFile('nothing.ride.json', '{}')])
      await expect(page.locator('.app-notices .ui-notice')).toBeVisible()
    },
    own: '.app-notices',
  },
]
