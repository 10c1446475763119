import { mkdtemp, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { barriers } from './support/barriers.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { shownLink } from './support/shownLink.ts'
import { expect, test } from './support/test.ts'

const slot = (page: Page) => page.getByTestId('slot')
const saved = (page: Page) => page.getByText('saved', { exact: true })

test('a blank slot starts with its title, level and length', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Thursday Hills')
  await page.getByText('other', { exact: true }).click()
  await page.getByLabel('other length').fill('an hour')
  await page.getByLabel('other length').press('Enter')
  await expect(page.getByText('Write whole minutes from 1 to 240, such as 50.')).toBeVisible()
  await page.getByLabel('other length').fill('50')
  await page.getByText('advanced', { exact: true }).click()
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await expect(page.getByText('advanced · 50 min')).toBeVisible()
  await expect(slot(page)).toContainText('50:00')
  await expect(page).toHaveTitle('Thursday Hills · Ridewright')
})

test('a demo ride is looked at without a copy being kept, and is one’s own from the first change on', async ({ page }) => {
  const demo = (title: string) => page.getByRole('button', { name: new RegExp(`^${title}`) })
  const ownRides = page.locator('.start-ride')
  const unsaved = page.getByText('sample, not saved yet')
  const toStart = () => page.getByRole('link', { name: 'my rides' }).click()
  await openRidewright(page)
  await demo('Ridge and Return').click()
  await expect(slot(page)).toContainText('43:43')
  await expect(unsaved).toBeVisible()
  const address = page.url()

  // Unchanged, it is there again after a reload, by the way back, and by its button, and is in no list.
  await page.reload()
  await ready(page)
  await expect(slot(page)).toContainText('43:43')
  await expect(unsaved).toBeVisible()
  await toStart()
  await demo('Ridge and Return').click()
  await expect(slot(page)).toContainText('43:43')
  expect(page.url()).toBe(address)
  await toStart()
  await demo('Twenty-Minute Spark').click()
  await expect(slot(page)).toContainText('19:36')
  await page.goto(address)
  await expect(slot(page)).toContainText('43:43')
  await expect(unsaved).toBeVisible()
  await toStart()
  await expect(ownRides).toHaveCount(0)

  // The first change keeps it, under the same address, also when it is taken back.
  await demo('Ridge and Return').click()
  await expect(unsaved).toBeVisible()
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Delete')
  await expect(saved(page)).toBeVisible()
  await page.keyboard.press('ControlOrMeta+z')
  await expect(page.getByRole('button', { name: 'redo' })).toBeEnabled()
  await expect(saved(page)).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(saved(page)).toBeVisible()
  await toStart()
  await expect(ownRides).toHaveCount(1)

  // The demo ride itself is as it was.
  await demo('Ridge and Return').click()
  await expect(unsaved).toBeVisible()
  await toStart()
  await expect(ownRides).toHaveCount(1)
})

test('a link copied from a demo ride keeps it, so that what comes back finds it', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const link = await shownLink(page)
  await expect(page.getByText('sample, not saved yet')).toBeVisible()
  await page.getByRole('textbox', { name: 'link', exact: true }).focus()
  await page.keyboard.press('ControlOrMeta+c')
  await expect(saved(page)).toBeVisible()
  expect(await shownLink(page)).toBe(link)
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.locator('.start-ride')).toHaveCount(1)
})

test('a pasted playlist becomes sections to fill, after a line that was not understood is mended', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist').fill('Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nBrickworks 3:75 132\nNight Market 3:05')
  const table = page.getByRole('table')
  await expect(table.getByRole('row', { name: 'Paper Lanterns The Odd Hours' })).toContainText('128 bpm')
  await expect(table).toContainText('3:75 has more than 59 seconds')
  await expect(table).toContainText('6:49 of 45:00 · 38:11 left')
  await expect(page.getByRole('button', { name: 'make a ride from 2 songs' })).toBeVisible()

  await page.getByLabel('line 2').fill('Brickworks 3:57 132')
  await page.getByLabel('line 2').press('Enter')
  await expect(page.getByLabel('playlist')).toHaveValue(/Brickworks 3:57 132/)
  await page.getByRole('button', { name: 'make a ride from 3 songs' }).click()
  await expect(page.getByText('Brickworks').first()).toBeVisible()
  await expect(page.getByText('Night Market').first()).toBeVisible()
})

test('a playlist whose lines begin with the artist is turned round in one press', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('playlist').fill('Night Market 3:05')
  await expect(page.getByRole('table')).toContainText('Night Market')
  await expect(page.getByText('the artist', { exact: true })).toHaveCount(0)
  await page.getByLabel('playlist').fill('The Odd Hours – Paper Lanterns – 3:42 – 128 bpm')
  await page.getByText('the artist', { exact: true }).click()
  await expect(page.getByRole('table').getByRole('row', { name: 'Paper Lanterns The Odd Hours' })).toBeVisible()
  await page.getByRole('button', { name: 'make a ride from this song' }).click()
  await expect(page.locator('.song-head')).toContainText('1. Paper Lanterns')
})

test('a file saved from one ride opens on another machine; over a changed ride it is shown read-only', async ({ page, secondProfile }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'save as file' }).click()
  const file = await (await download).path()
  expect((await download).suggestedFilename()).toBe('twenty-minute-spark.ride.json')
  const ride = JSON.parse(await readFile(file, 'utf8'))

  await openRidewright(secondProfile)
  await chooseFile(secondProfile, 'spark.ride.json', JSON.stringify(ride))
  await expect(slot(secondProfile)).toContainText('19:36')
  await expect(saved(secondProfile)).toBeVisible()

  await secondProfile.getByRole('link', { name: 'my rides' }).click()
  await chooseFile(secondProfile, 'spark.ride.json', JSON.stringify({ ...ride, title: 'Another Spark' }))
  await expect(secondProfile.getByText('differs from the file')).toBeVisible()
  await expect(secondProfile.getByRole('region', { name: 'shared ride' })).toBeVisible()
  await secondProfile.getByRole('button', { name: 'keep a copy' }).click()
  await secondProfile.getByRole('link', { name: 'my rides' }).click()
  await expect(secondProfile.getByRole('link', { name: 'Another Spark' })).toBeVisible()
  await expect(secondProfile.getByRole('link', { name: 'Twenty-Minute Spark' })).toBeVisible()
})

test('a file that is no ride is refused in plain words, dropped or chosen', async ({ page }) => {
  await openRidewright(page)
  await chooseFile(page, 'notes.json', 'not json')
  await expect(page.getByRole('alert')).toContainText('“notes.json” wasn’t opened. It isn’t a ride')

  const demo = JSON.parse(await readFile('public/demo/twenty-minute-spark.ride.json', 'utf8'))
  demo.sections[0].blocks[0].effort.to = 14
  demo.slotMinutes = 'twenty'
  const transfer = await page.evaluateHandle((text) => {
    const data = new DataTransfer()
    data.items.add(new File([text], 'spoiled.ride.json', { type: 'application/json' }))
    return data
  }, JSON.stringify(demo))
  await page.dispatchEvent('main', 'drop', { dataTransfer: transfer })
  await expect(page.getByRole('alert')).toContainText('spoiled.ride.json')
  await expect(page.getByRole('alert')).toContainText('Song 1, block 1: the effort at the end must be between 0 and 10; it is 14.')
  await expect(page.getByRole('alert')).toContainText('it is “twenty”')
  await expect(page.getByRole('heading', { name: 'new ride' })).toBeVisible()
})

test('saved rides begin others, are deleted, and put back', async ({ page }) => {
  await openRidewright(page)
  await page.getByLabel('title', { exact: true }).fill('Keep me')
  await page.getByRole('button', { name: 'start a blank ride' }).click()
  await expect(saved(page)).toBeVisible()
  await page.getByRole('link', { name: 'my rides' }).click()
  await page.getByRole('button', { name: 'new ride from Keep me' }).click()
  await page.getByRole('button', { name: 'start the ride' }).click()
  await expect(saved(page)).toBeVisible()
  await page.getByRole('link', { name: 'my rides' }).click()
  await expect(page.getByRole('link', { name: 'Keep me (copy)' })).toBeVisible()
  await page.getByRole('button', { name: 'delete Keep me', exact: true }).click()
  await expect(page.getByRole('link', { name: 'Keep me', exact: true })).toHaveCount(0)
  await page.getByRole('button', { name: 'restore', exact: true }).click()
  await expect(page.getByRole('link', { name: 'Keep me', exact: true })).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(page.getByRole('link', { name: /Keep me/ })).toHaveCount(2)
})

test('a reload reopens the ride and the place that were left, changes included', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  const whole = await slot(page).textContent()
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Delete')
  await expect(slot(page)).not.toHaveText(whole!)
  const changed = await slot(page).textContent()
  await expect(saved(page)).toBeVisible()
  await page.reload()
  await ready(page)
  await expect(slot(page)).toHaveText(changed!)

  await page.getByRole('link', { name: 'share', exact: true }).click()
  // Without its fragment the address names no place; the page goes to where it was left.
  await page.goto('about:blank')
  await openRidewright(page)
  await expect(page.getByRole('heading', { name: /Share “Twenty-Minute Spark”/ })).toBeVisible()
  await page.goBack()
})

test('a reload and a look at another place bring back the stretch that was on the stage', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('button', { name: /^3\. Tin Orchard Run/ }).focus()
  await page.keyboard.press('f')
  const stretch = () =>
    page
      .locator('.stage-scroller')
      .evaluate((box) => [Math.round(box.scrollLeft), Math.round(box.firstElementChild!.getBoundingClientRect().width)])
  await expect.poll(async () => (await stretch())[0]).toBeGreaterThan(1000)
  const left = await stretch()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect.poll(stretch).toEqual(left)
  await page.waitForFunction(() => localStorage.getItem('ridewright.session')?.includes('"draft"'))
  await page.reload()
  await ready(page)
  await expect.poll(stretch).toEqual(left)
})

test('a change made the moment before a reload is not lost', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(page.getByText('sample, not saved yet')).toBeVisible()
  const whole = await slot(page).textContent()
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Delete')
  await expect(slot(page)).not.toHaveText(whole!)
  const changed = await slot(page).textContent()
  await page.reload()
  await ready(page)
  await expect(slot(page)).toHaveText(changed!)
})

test('back and forward go through the places', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await expect(slot(page)).toBeVisible()
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await page.goBack()
  await expect(slot(page)).toBeVisible()
  await page.goBack()
  await expect(page.getByRole('heading', { name: 'new ride' })).toBeVisible()
  await page.goForward()
  await expect(slot(page)).toBeVisible()
})

test('undo, redo and the key map answer to the keyboard everywhere but in a text', async ({ page }) => {
  await openRidewright(page)
  await page.keyboard.press('?')
  await expect(page.getByRole('dialog')).toContainText('undo')
  await page.keyboard.press('Escape')
  await page.getByLabel('title', { exact: true }).focus()
  await page.keyboard.type('?')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(page.getByLabel('title', { exact: true })).toHaveValue('?')

  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  const whole = await slot(page).textContent()
  await page.locator('[data-stage-stop]').first().click()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Delete')
  await expect(slot(page)).not.toHaveText(whole!)
  await page.keyboard.press('ControlOrMeta+z')
  await expect(slot(page)).toHaveText(whole!)
  await page.keyboard.press('ControlOrMeta+Shift+z')
  await expect(slot(page)).not.toHaveText(whole!)
  await page.getByRole('link', { name: 'share', exact: true }).click()
  await page.keyboard.press('ControlOrMeta+z')
  await page.getByRole('link', { name: 'plan', exact: true }).click()
  await expect(slot(page)).toHaveText(whole!)
})

for (const colorScheme of ['light', 'dark'] as const) {
  for (const viewport of [
    { width: 1440, height: 900 },
    { width: 390, height: 844 },
  ]) {
    test(`start, hand-over, shared ride and key map are accessible and fit, ${colorScheme}, ${viewport.width} px`, async ({ page }) => {
      await page.emulateMedia({ colorScheme })
      await page.setViewportSize(viewport)
      await openRidewright(page)
      await page.getByLabel('title', { exact: true }).fill('A title so long that it has to be cut or broken somewhere. '.repeat(4))
      await page.getByLabel('playlist').fill('Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nBrickworks 3:75 132\nNight Market 3:05')
      await page.getByText('other', { exact: true }).click()
      await page.getByLabel('other length').fill('x')
      await expectSound(page)
      await page.getByLabel('other length').fill('40')
      await page.getByRole('button', { name: 'make a ride from 2 songs' }).click()
      await page.getByRole('link', { name: 'share', exact: true }).click()
      await expectSound(page)
      const link = await shownLink(page)
      await page.getByRole('link', { name: 'my rides' }).click()
      await page.getByRole('button', { name: /^delete A title/ }).click()
      await expect(page.getByRole('button', { name: 'restore', exact: true })).toBeFocused()
      await expectSound(page)
      await page.goto(link)
      await page.getByRole('link', { name: 'share', exact: true }).click()
      await expect(page.getByRole('region', { name: 'shared ride' })).toBeVisible()
      await expectSound(page)
      await page.goto(link.slice(0, -20))
      await expect(page.getByRole('alert')).toBeVisible()
      await page.keyboard.press('?')
      await expect(page.getByRole('dialog')).toBeVisible()
      await expectSound(page)
    })
  }
}

/** No complaint of the accessibility checker, and nothing wider than the window. */
async function expectSound(page: Page): Promise<void> {
  expect(await barriers(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
}

/** Gives the page a file through its file chooser. */
async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  const path = join(await mkdtemp(join(tmpdir(), 'ridewright-file-')), name)
  await writeFile(path, text)
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'open a file…' }).click()
  await (await chooser).setFiles(path)
}
