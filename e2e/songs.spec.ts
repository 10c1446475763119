import type { Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { openRidewright } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const LIST = [128, 170, 132, 150, 140, 176, 90, 126, 160].map((bpm, i) => `Song ${i + 1}, Salt Lantern, 3:3${i}, ${bpm}`).join('\n')

async function axeClean(page: Page): Promise<void> {
  expect(await barriers(page)).toEqual([])
}

test('a playlist becomes a class by a rough draft, chosen among several and undone in one step', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Tuesday')
  await page.getByText('30', { exact: true }).click()
  await page.getByLabel('playlist', { exact: true }).fill(LIST)
  await page.getByRole('button', { name: 'make a ride of 9 songs' }).click()
  await page.getByRole('button', { name: 'rough in' }).click()
  const offer = page.getByRole('dialog', { name: 'rough in' })
  await expect(offer).toContainText('a first draft of 9 songs')
  await expect(offer).toContainText('With it, ')
  const first = await offer.getByRole('listitem').allInnerTexts()
  await axeClean(page)
  await offer.getByRole('button', { name: 'another draft' }).click()
  await expect(offer.getByLabel('draft', { exact: true })).toHaveValue('2')
  await expect(offer.getByRole('listitem')).not.toHaveText(first)
  await offer.getByRole('button', { name: 'take this draft' }).click()
  await expect(page.locator('[data-block-id]').first()).toBeAttached()
  await expect(page.getByRole('button', { name: 'rough in' })).toHaveCount(0)
  await page.getByRole('button', { name: 'undo' }).click()
  await expect(page.locator('[data-block-id]')).toHaveCount(0)
})

test('a tempo is tapped along with the song and taken', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist', { exact: true }).fill('Low Tide, Salt Lantern, 3:45')
  await page.getByRole('button', { name: 'make a ride of this song' }).click()
  await page.locator('[data-stage-stop="section"]').first().click()
  await page.getByRole('button', { name: 'tap the tempo' }).click()
  const dialog = page.getByRole('dialog', { name: 'tap the tempo of Low Tide' })
  await expect(dialog.getByRole('button', { name: /on every beat/ })).toBeFocused()
  await tap(page, 9, 450)
  await expect(dialog.getByText('133.33', { exact: true })).toBeVisible()
  await expect(dialog.getByText(/^bpm, ±/)).toBeVisible()
  await axeClean(page)
  await dialog.getByRole('button', { name: /^take [\d.]+ bpm$/ }).click()
  await expect(dialog).toHaveCount(0)
  await expect(page.getByLabel('tempo', { exact: true })).toHaveValue(/^133\.33/)
})

test('songs are kept on the shelf over a reload and found again', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('link', { name: 'songs' }).click()
  await page
    .getByLabel('songs', { exact: true })
    .fill('#EXTM3U\n#EXTINF:215,Nine Tin Kites - Brickworks Elevator\na.mp3\n#EXTINF:198,Salt Lantern - Low Tide\nb.mp3')
  await page.getByRole('button', { name: 'put 2 songs on the shelf' }).click()
  await expect(page.getByRole('row')).toHaveCount(3)
  await page.getByRole('button', { name: 'edit Low Tide' }).click()
  await page.getByLabel('tempo', { exact: true }).fill('128')
  await page.getByLabel('energy').selectOption('4')
  await page.getByRole('button', { name: 'keep on the shelf' }).click()
  await expect(page.getByRole('row', { name: /Low Tide/ })).toContainText('4 of 5')
  await axeClean(page)
  await page.reload()
  await page.getByLabel('find').fill('lantern')
  await expect(page.getByRole('row')).toHaveCount(2)
  await expect(page.getByRole('row', { name: /Low Tide/ })).toContainText('32 · 64 · 128')
})

/**
 * Taps the space bar evenly, each press at its own moment whatever the machine is busy with.
 *
 * @param apart milliseconds from tap to tap
 */
async function tap(page: Page, times: number, apart: number): Promise<void> {
  const session = await page.context().newCDPSession(page)
  const first = Date.now()
  const key = { key: ' ', code: 'Space', windowsVirtualKeyCode: 32 }
  for (let beat = 0; beat < times; beat++) {
    const timestamp = (first + beat * apart) / 1000
    await session.send('Input.dispatchKeyEvent', { type: 'keyDown', text: ' ', timestamp, ...key })
    await session.send('Input.dispatchKeyEvent', { type: 'keyUp', timestamp: timestamp + 0.05, ...key })
  }
}
