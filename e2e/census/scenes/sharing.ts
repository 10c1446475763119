import type { Page } from '@playwright/test'
import { shownLink } from '#e2e/support/shownLink.ts'
import { expect } from '#e2e/support/test.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { type Item, isSet } from '#plan/model.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { told } from '#tests/support/told.ts'
import { at, drafted, kept, press, type Scene, spark, stop, unlessSeen } from './steps.ts'

const linkOf = async (page: Page): Promise<string> => {
  await page.locator('.app-head a[href^="#/handover"]').click()
  return shownLink(page)
}

const received = async (page: Page) => {
  await spark(page)
  const link = await linkOf(page)
  await page.goto('about:blank')
  await page.goto(link)
  await drafted(page)
}

/** The link as it comes back from somebody who has renamed one block, made another longer, and put one more behind it. */
function answered(sent: string): string {
  const opened = decodeLink(sent)
  if (!opened.ok) throw new Error(told(opened.problems[0]!.text))
  const { ride } = opened
  const changed = (item: Item): Item | Item[] => {
    if (isSet(item)) return item
    if (item.id === 's1b2') return { ...item, label: 'theirs' }
    if (item.id !== 's1b3') return item
    return [
      { ...item, length: { counts: 72 } },
      { ...item, id: 'theirs1', label: 'one more', cues: [] },
    ]
  }
  const sections = ride.sections.map((section) => ({ ...section, blocks: section.blocks.flatMap(changed) }))
  return `${sent.split('#')[0]}#${encodeLink({ ...ride, sections })}`
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
    name: 'handing over, a version deleted',
    prepare: async (page) => {
      await at('handover', spark)(page)
      await page.getByLabel('name of this version').fill('before the class')
      await page.keyboard.press('Enter')
      await expect(page.getByRole('button', { name: /^delete/ }).first()).toBeVisible()
    },
    show: async (page) => {
      const deletes = page.getByRole('button', { name: /^delete/ })
      if ((await page.locator('.versions-removed').count()) === 0) await deletes.first().click()
      await expect(page.locator('.versions-removed')).toBeVisible()
    },
    own: '.versions-removed',
    ownOnly: true,
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
    prepare: received,
  },
  {
    name: 'a ride received, and the start looked at',
    prepare: received,
    show: async (page) => {
      await drafted(page).catch(() => undefined)
      if ((await page.getByRole('button', { name: 'show it' }).count()) === 0) await page.locator('.app-name').click()
      await expect(page.getByRole('button', { name: 'show it' })).toBeVisible()
    },
    own: '.app-bar, [aria-label="shared ride"]',
    ownOnly: true,
  },
  {
    name: 'a ride that comes back changed on both sides',
    prepare: async (page) => {
      await spark(page)
      const sent = await linkOf(page)
      await page.getByRole('textbox', { name: 'link', exact: true }).press('ControlOrMeta+c')
      await expect(page.getByText(/^saved automatically/)).toBeVisible()
      await page.locator('.app-head a[href^="#/draft"]').click()
      await stop(page, 's1b2').click()
      await page.getByLabel('name', { exact: true }).fill('mine')
      await page.keyboard.press('Enter')
      await expect(page.getByRole('option', { name: /^mine, / })).toBeAttached()
      // “Saved” still stands there of what came before.
      await page.waitForTimeout(1500)
      await kept(page)
      await page.goto('about:blank')
      await page.goto(answered(sent))
      await drafted(page)
    },
    show: unlessSeen('.merging', async (page) => {
      await page.getByRole('button', { name: /what changed/ }).click()
      await expect(page.getByRole('button', { name: 'use mine for all' })).toBeVisible()
    }),
    own: 'main',
  },
]
