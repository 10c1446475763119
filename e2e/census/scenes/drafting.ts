import type { Page } from '@playwright/test'
import { clip, dropFiles } from '#e2e/support/dropFiles.ts'
import { expect } from '#e2e/support/test.ts'
import { chosen, drafted, kept, pasted, type Scene, spark, sparkAndSongs, start, stop, unfolded, unlessSeen } from './steps.ts'

const side = '.draft-side'

/** Asks for what is offered for the whole ride by the link that stands at this place of their row. */
const offered = (place: 'first' | 'last') =>
  unlessSeen('.proposal', async (page) => {
    await drafted(page)
    const links = page.locator('.draft-link')
    await (place === 'first' ? links.first() : links.last()).click()
    await expect(page.locator('.proposal')).toBeVisible()
  })

/** Changes a block of the demo ride by its panel, once. */
const withBlock = (change: (page: Page) => Promise<void>) => async (page: Page) => {
  await spark(page)
  await stop(page, 's2b2').click()
  await change(page)
  await kept(page)
}

/** Rehearses from a few blocks on: at the very start there is nothing to go back to. */
const rehearsed = unlessSeen('.rehearsal', async (page) => {
  await drafted(page)
  await page.getByRole('button', { name: 'rehearse', exact: true }).click()
  await expect(page.locator('.rehearsal')).toBeVisible()
  for (let block = 0; block < 3; block++) await page.locator('.rehearsal').getByRole('button', { name: 'next', exact: true }).click()
})

export const DRAFT: readonly Scene[] = [
  { name: 'the draft, its ride', prepare: spark, show: chosen(), own: side },
  { name: 'the draft, a block', prepare: spark, show: chosen('s2b2'), own: side },
  {
    name: 'the draft, a block that ramps',
    prepare: withBlock((page) => page.locator('.panel-effort button').click()),
    show: chosen('s2b2'),
    own: '.panel-effort',
  },
  {
    name: 'the draft, a block by feel at a cadence of its own, with a move',
    prepare: withBlock(async (page) => {
      await page.getByLabel('knob', { exact: true }).selectOption({ index: 3 })
      await page.getByLabel('cadence', { exact: true }).selectOption({ index: 1 })
      await page.getByLabel('move', { exact: true }).selectOption({ index: 2 })
    }),
    show: chosen('s2b2'),
  },
  {
    name: 'the draft, a block that adds',
    prepare: withBlock((page) =>
      page
        .getByLabel('knob', { exact: true })
        .selectOption({ index: 1 })
        .then(() => undefined),
    ),
    show: chosen('s2b2'),
  },
  {
    name: 'the draft, a name on the stage',
    prepare: spark,
    show: unlessSeen('.rename-field', async (page) => {
      await chosen('s2b2')(page)
      await stop(page, 's2b2').focus()
      await page.keyboard.press('F2')
      await expect(page.locator('.rename-field')).toBeVisible()
    }),
    own: '.rename-field',
    ownOnly: true,
  },
  {
    name: 'the draft, cues written one after another',
    prepare: spark,
    show: unlessSeen('.cue-line', async (page) => {
      await chosen('s2b2')(page)
      await page.getByRole('button', { name: 'write a cue' }).click()
      await expect(page.locator('.cue-line')).toBeVisible()
    }),
    own: '.cue-line',
    ownOnly: true,
  },
  { name: 'the draft, several blocks', prepare: spark, show: chosen('s2b2', 's2b3', 's2b4'), own: side },
  {
    name: 'the draft, a set',
    prepare: async (page) => {
      await spark(page)
      await stop(page, 's2b2').focus()
      await page.keyboard.press('g')
      await expect(page.locator('.set-head')).toBeAttached()
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      await page.locator('.set-head').first().click()
    },
    own: side,
  },
  { name: 'the draft, a song', prepare: spark, show: chosen('s2'), own: side },
  {
    name: 'the draft, a song with its file and songs kept',
    prepare: sparkAndSongs,
    show: async (page) => {
      await chosen('s1')(page)
      if ((await page.locator('[data-hearing="heard"], [data-hearing="known"]').count()) > 0) return
      await dropFiles(page, page.getByRole('region', { name: 'beat from a file' }), [await clip('clip-124.wav')])
      await expect(page.locator('[data-hearing="heard"], [data-hearing="known"]').first()).toBeVisible({ timeout: 60_000 })
      await unfolded(page, side)
    },
    own: side,
    ownOnly: true,
  },
  {
    name: 'the draft, ones tapped along with a song',
    prepare: spark,
    show: async (page) => {
      await chosen('s1')(page)
      await page.getByRole('region', { name: 'hear the beat' }).getByRole('button', { name: 'beat 1 is now' }).click()
    },
    own: '.hear-beat',
    ownOnly: true,
  },
  {
    name: 'the draft, a tempo tapped',
    prepare: pasted,
    show: unlessSeen('dialog[open]', async (page) => {
      await drafted(page)
      await page.locator('.song-head').first().click()
      await page
        .getByRole('button', { name: /tap the tempo/ })
        .first()
        .click()
      for (let beat = 0; beat < 9; beat++) {
        await page.keyboard.press('Space')
        await page.waitForTimeout(450)
      }
    }),
  },
  {
    name: 'the draft, a stretch without a song',
    prepare: async (page) => {
      await start(page)
      await page.locator('.start-go button').first().click()
      await page.locator('.tray-pattern').first().click()
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      await page.locator('.song-head').first().click()
      await unfolded(page, side)
    },
  },
  {
    name: 'the draft, a ride of two leaders that is a variant',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.draft-link').last().click()
      await page.locator('.proposal label').nth(1).click()
      await page.locator('.proposal-actions button').first().click()
      await drafted(page)
      await kept(page)
    },
    show: chosen(),
  },
  {
    name: 'the draft, what is noticed',
    prepare: spark,
    show: async (page) => {
      await drafted(page)
      const folded = page.locator('.finding-count[aria-expanded="false"]')
      while ((await folded.count()) > 0) await folded.first().click()
      await unfolded(page, '.findings')
    },
    own: '.findings',
  },
  {
    name: 'the draft, much noticed and some of it put aside',
    prepare: async (page) => {
      await spark(page)
      await page.locator('.app-title-button').click()
      await page.getByLabel('room', { exact: true }).selectOption({ index: 1 })
      await page.getByLabel('class length', { exact: true }).fill('45')
      await page.keyboard.press('Enter')
      for (let turn = 0; turn < 2; turn++) await page.locator('.finding-aside').first().click()
      await kept(page)
    },
    show: async (page) => {
      await drafted(page)
      await unfolded(page, '.findings')
    },
  },
  { name: 'the draft, a first draft offered', prepare: pasted, show: offered('first'), own: '.proposal' },
  { name: 'the draft, the slot fitted', prepare: spark, show: offered('first'), own: '.proposal' },
  { name: 'the draft, another length offered', prepare: spark, show: offered('last'), own: '.proposal' },
  {
    name: 'the draft, rehearsed',
    prepare: spark,
    show: rehearsed,
    own: '.rehearsal',
  },
  {
    name: 'the draft, how it is rehearsed',
    prepare: spark,
    show: unlessSeen('dialog[open]', async (page) => {
      await rehearsed(page)
      await page.getByRole('button', { name: 'sound and voice' }).click()
      await expect(page.locator('dialog[open]')).toBeVisible()
    }),
  },
  {
    name: 'the draft, shaky blocks',
    prepare: withBlock((page) => page.getByLabel(/^needs practice/).check()),
    show: rehearsed,
  },
  {
    name: 'the draft, read on another bike',
    prepare: spark,
    show: async (page) => {
      await drafted(page)
      await page.locator('.app-read-on select').selectOption({ index: 1 })
    },
  },
]
