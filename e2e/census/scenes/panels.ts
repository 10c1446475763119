import { clip, dropFiles } from '#e2e/support/dropFiles.ts'
import { expect } from '#e2e/support/test.ts'
import { logged } from './log.ts'
import { rich } from './richRide.ts'
import { chosen, drafted, goTo, kept, ridge, type Scene, spark, sparkAndSongs, unfolded } from './steps.ts'

/** What only some blocks, songs, and rides have in their details. */
export const PANELS: readonly Scene[] = [
  { name: 'a block off the beat, with a range and a move of its own', prepare: rich, show: chosen('s1b1') },
  {
    name: 'a block nobody has announced',
    prepare: rich,
    show: async (page) => {
      await chosen('s1b2')(page)
      await expect(page.locator('.panel-offers')).toBeVisible()
    },
    own: '.panel-offers',
  },
  { name: 'a block by the clock', prepare: rich, show: chosen('clocked1') },
  {
    name: 'findings of many kinds',
    prepare: rich,
    show: async (page) => {
      await drafted(page)
      await expect(page.getByRole('button', { name: /^show (all|fewer)/ })).toBeVisible()
    },
    own: '.findings',
  },
  {
    name: 'what is chosen stands in one column',
    prepare: rich,
    width: 700,
    show: async (page) => {
      await drafted(page)
      await expect(page.locator('.draft-after')).toBeVisible()
    },
    own: '.draft-after',
    ownOnly: true,
  },
  {
    name: 'a slot that songs can be fitted to',
    prepare: async (page) => {
      await ridge(page)
      await page.locator('.app-title-button').click()
      await page.getByLabel('class length', { exact: true }).fill('30')
      await page.keyboard.press('Enter')
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      if ((await page.locator('.proposal').count()) === 0) await page.locator('.draft-link').first().click()
      await expect(page.locator('.proposal-actions button').first()).toBeVisible()
    },
    own: '.proposal',
    ownOnly: true,
  },
  {
    name: 'a slot that songs can only come near',
    prepare: rich,
    show: async (page) => {
      await drafted(page)
      if ((await page.locator('.proposal').count()) === 0) await page.locator('.draft-link').first().click()
      await expect(page.locator('.proposal').getByText('the nearest', { exact: true })).toBeAttached()
    },
    own: '.proposal',
    ownOnly: true,
  },
  {
    name: 'another length that can be had',
    prepare: ridge,
    show: async (page) => {
      await drafted(page)
      if ((await page.locator('.proposal').count()) === 0) await page.locator('.draft-link').last().click()
      await expect(page.getByRole('button', { name: 'save as a new ride' })).toBeVisible()
    },
    own: '.proposal',
    ownOnly: true,
  },
  {
    name: 'a ride made from another',
    prepare: async (page) => {
      await ridge(page)
      await page.locator('.draft-link').last().click()
      await page.getByRole('button', { name: 'save as a new ride' }).click()
      await expect(page.locator('.proposal')).toHaveCount(0)
      await kept(page)
    },
    show: chosen(),
    own: '.panel-where',
    ownOnly: true,
  },
  {
    name: 'a song of the shelf for a section',
    prepare: sparkAndSongs,
    show: async (page) => {
      await chosen('s1')(page)
      const swap = page.getByRole('button', { name: 'replace the song' })
      // Asked for again, what it would do is left.
      if ((await swap.count()) === 0) await page.locator('.panel-shelf button').first().click()
      await expect(swap).toBeVisible()
    },
    own: '.panel-shelf',
    ownOnly: true,
  },
  {
    name: 'the plans a song was ridden with',
    prepare: async (page) => {
      await logged(page)
      // So often that not all of them are shown at once.
      for (let more = 0; more < 3; more++) {
        await goTo(page, 'draft')
        await drafted(page)
        await page.locator('[data-stage-stop="block"]').last().focus()
        await page.keyboard.press('Delete')
        await kept(page)
        await goTo(page, 'log')
        await page.getByRole('button', { name: /as taught/ }).click()
        await page.locator('.log-actions button').first().click()
        await expect(page.locator('.log-entry')).toHaveCount(0)
      }
      await goTo(page, 'draft')
    },
    show: async (page) => {
      await chosen('s2')(page)
      await expect(page.locator('.song-plan').first()).toBeVisible()
    },
    own: '.song-plans',
  },
  {
    name: 'a file of another song for a section',
    prepare: spark,
    show: async (page) => {
      await chosen('s1')(page)
      const read = page.locator('[data-hearing="heard"], [data-hearing="known"]')
      if ((await read.count()) === 2) return
      const beat = page.getByRole('region', { name: 'beat from a file' })
      await dropFiles(page, beat, [await clip('clip-124.wav'), await clip('clip-110.flac')])
      await expect(read).toHaveCount(2, { timeout: 60_000 })
      await unfolded(page, '.draft-side')
    },
    own: '[data-hearing]',
    ownOnly: true,
  },
  {
    name: 'the file of a song given a second time',
    prepare: spark,
    show: async (page) => {
      await chosen('s1')(page)
      const known = page.locator('[data-hearing="known"]')
      const beat = page.getByRole('region', { name: 'beat from a file' })
      for (let time = 0; time < 2 && (await known.count()) === 0; time++) {
        await dropFiles(page, beat, [await clip('clip-124.wav')])
        await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]')).toHaveCount(1, { timeout: 60_000 })
      }
      await expect(known).toBeVisible()
    },
    own: '[data-hearing]',
    ownOnly: true,
  },
  {
    name: 'ones of bars tapped',
    prepare: spark,
    show: async (page) => {
      await chosen('s1')(page)
      const beat = page.getByRole('region', { name: 'hear the beat' })
      if ((await beat.getByRole('button', { name: /^take \d/ }).count()) > 0) return
      await beat.getByRole('button', { name: 'beat 1 is now' }).click()
      // Every third beat of a song counted in fours.
      await beat.getByRole('button', { name: 'that’s a beat 1' }).evaluate(
        async (button, bar) => {
          const first = performance.now()
          for (let n = 0; n < 7; n++) {
            await new Promise((done) => setTimeout(done, first + n * bar - performance.now()))
            button.dispatchEvent(new PointerEvent('pointerdown', { button: 0, bubbles: true }))
          }
        },
        (3 * 60_000) / 124,
      )
      await expect(beat.getByRole('button', { name: /^take \d/ })).toBeVisible()
    },
    own: '.hear-beat',
    ownOnly: true,
  },
]
