import type { Page } from '@playwright/test'
import { shownLink } from '#e2e/support/shownLink.ts'
import { expect } from '#e2e/support/test.ts'
import { at, drafted, kept, press, type Scene, spark, stop, unlessSeen } from './steps.ts'

const linkOf = async (page: Page): Promise<string> => {
  await page.locator('.app-head a[href^="#/handover"]').click()
  return shownLink(page)
}

export const SHARING: readonly Scene[] = [
  { name: 'handing over', prepare: at('handover', spark), show: (page) => shownLink(page).then(() => undefined) },
  {
    name: 'handing over, versions kept',
    prepare: async (page) => {
      await at('handover', spark)(page)
      await page.getByLabel('name of this version').fill('before the class')
      await page.keyboard.press('Enter')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await kept(page)
      await page.locator('.app-head a[href^="#/handover"]').click()
    },
    show: (page) => expect(page.getByRole('button', { name: /before the class/ }).first()).toBeVisible(),
  },
  {
    name: 'versions compared',
    prepare: async (page) => {
      await at('handover', spark)(page)
      await page.getByLabel('name of this version').fill('before the class')
      await page.keyboard.press('Enter')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await kept(page)
      await page.locator('.app-head a[href^="#/handover"]').click()
    },
    show: unlessSeen('dialog[open], .compare', press(/^compare/)),
  },
  {
    name: 'a ride received',
    prepare: async (page) => {
      await spark(page)
      const link = await linkOf(page)
      await page.goto('about:blank')
      await page.goto(link)
      await drafted(page)
    },
  },
  {
    name: 'a ride that comes back changed on both sides',
    prepare: async (page) => {
      await spark(page)
      await linkOf(page)
      await page.getByRole('textbox', { name: 'link', exact: true }).press('ControlOrMeta+c')
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowUp')
      await stop(page, 's1b3').focus()
      await page.keyboard.press('+')
      const theirs = await linkOf(page)
      await page.locator('.app-head a[href^="#/draft"]').click()
      await page.keyboard.press('ControlOrMeta+z')
      await page.keyboard.press('ControlOrMeta+z')
      await stop(page, 's1b2').focus()
      await page.keyboard.press('Alt+ArrowDown')
      await kept(page)
      await page.goto('about:blank')
      await page.goto(theirs)
      await drafted(page)
    },
    show: unlessSeen('.merging', async (page) => {
      await page.getByRole('button', { name: /what changed/ }).click()
      await expect(page.locator('.merging')).toBeVisible()
    }),
    own: 'main',
  },
]
