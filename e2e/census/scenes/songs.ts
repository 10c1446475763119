import type { Page } from '@playwright/test'
import { clip, dropFiles, textFile } from '#e2e/support/dropFiles.ts'
import { expect } from '#e2e/support/test.ts'
import { at, press, type Scene, spark, start, unlessSeen, withSongs } from './steps.ts'

const toSongs = async (page: Page) => {
  await start(page)
  await page.locator('.app-head a[href^="#/songs"]').first().click()
}

export const SONGS: readonly Scene[] = [
  { name: 'the songs, none yet', prepare: toSongs },
  {
    name: 'the songs, some chosen, with a ride open',
    prepare: async (page) => {
      await withSongs(page)
      await page.locator('.app-name').click()
      await at('songs', spark)(page)
    },
    show: async (page) => {
      await expect(page.locator('tbody tr')).toHaveCount(3)
      for (const box of (await page.locator('tbody input[type="checkbox"]').all()).slice(0, 2)) await box.check()
      await expect(page.locator('.shelf-chosen')).toBeVisible()
    },
  },
  {
    name: 'the songs, one edited',
    prepare: withSongs,
    show: unlessSeen('dialog[open]', press(/^edit/)),
  },
  {
    name: 'the songs, one edited whose file is at hand',
    prepare: toSongs,
    show: unlessSeen('dialog[open]', async (page) => {
      await dropFiles(page, page.locator('main'), [await clip('clip-132.ogg')])
      await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]').first()).toBeVisible({ timeout: 60_000 })
      await press(/^edit/)(page)
    }),
  },
  {
    name: 'the songs, files read',
    prepare: toSongs,
    show: unlessSeen('[data-hearing="failed"]', async (page) => {
      await dropFiles(page, page.locator('main'), [
        await clip('clip-132.ogg'),
        await clip('clip-110.flac'),
        textFile('torn tape.mp3', 'no music'),
      ])
      await expect(page.locator('[data-hearing="failed"]')).toBeVisible({ timeout: 60_000 })
      await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]')).toHaveCount(2, { timeout: 60_000 })
    }),
  },
  {
    name: 'the songs, one taken away',
    prepare: withSongs,
    show: async (page) => {
      if ((await page.locator('.shelf-removed, .shelf-list .ui-notice').count()) === 0) await press(/^remove/)(page)
    },
    own: '.shelf-list',
  },
]
