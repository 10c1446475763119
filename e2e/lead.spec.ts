import type { Locator, Page } from '@playwright/test'
import { demoRide } from '#tests/support/demoRides.ts'
import { barriers } from './support/barriers.ts'
import { press, tabTo } from './support/keyboard.ts'
import { type KeptRide, paintedFrames, recordFrames, slotTexts, viewAt } from './support/leading.ts'
import { lightness } from './support/lightness.ts'
import { openRidewright, ready } from './support/openRidewright.ts'
import { expect, test } from './support/test.ts'

const SLOT = new Date('2026-01-15T18:30:00Z').getTime()
const slot = (page: Page, name: string): Locator => page.locator(`[data-slot="${name}"]`)
const kept = (page: Page): Promise<KeptRide> => page.evaluate(() => JSON.parse(localStorage.getItem('ridewright.class') ?? 'null'))

/** What has happened in the class so far, as it is kept. */
const events = async (page: Page): Promise<readonly unknown[]> => (await kept(page)).class!.log!.events

/** Opens a demo ride's leading screen with a clock the test moves. */
async function openLead(page: Page, ride: RegExp, time: number | string): Promise<void> {
  await page.clock.install({ time })
  await openRidewright(page)
  await page.getByRole('button', { name: ride }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await expect(page.getByRole('button', { name: 'start: beat 1 now' })).toBeVisible()
  await page.clock.pauseAt(new Date(time).getTime() + 60_000)
}

/** Lets time pass at once, then draws what is due: a few frames, and whatever waited for its turn. */
async function pass(page: Page, seconds: number): Promise<void> {
  await page.clock.fastForward(Math.max(0, Math.round(seconds * 1000) - 400))
  await page.clock.runFor(400)
}

/** What stands on the screen equals the state of its moment. */
async function expectRightScreen(page: Page): Promise<void> {
  const [frame] = await paintedFrames(page, 1)
  expect(slotTexts(frame!)).toEqual(viewAt(await kept(page), frame!.instant).texts)
}

test('a whole class led: late start, the cut it needs, a skipped song, a reload, a hidden tab, its end', async ({ page }) => {
  // A minute passes on the card, so the start is four minutes late.
  await openLead(page, /^Ridge and Return/, SLOT + 180_000)
  await expect(page.getByText('starting 4:00 late')).toBeVisible()
  await press(page, 'Space')
  await pass(page, 5)
  await expect(slot(page, 'slack')).toHaveText('4:00 behind, 2:43 over class time')
  await expectRightScreen(page)

  await expect(
    page.getByText(/^Skip “Glass Tram” \(−3:14\): you finish 31 s early\. “Iron Lullaby” then starts with “one turn on”\.$/),
  ).toBeVisible()
  await press(page, 'c')
  await pass(page, 1)
  await expect(slot(page, 'slack')).toHaveText('4:00 behind, 31 s to spare')
  await expect(page.getByText('you finish')).toHaveCount(0)

  // To the third song, whose music starts six seconds late.
  await pass(page, 371)
  await expect(slot(page, 'name')).toHaveText('Hedge Maze Radio')
  await expectRightScreen(page)
  await pass(page, 6)
  await press(page, 'Space')
  await pass(page, 0.5)
  await expect(slot(page, 'songEight')).toHaveText('eight 1 of 64')
  await expect(page.locator('.lead-said')).toHaveText(/^On beat 1: the song is \d\.\d s later than shown\.$/)
  await expectRightScreen(page)

  // The fourth is gone: after the third comes the fifth.
  await pass(page, 205)
  await expect(slot(page, 'nextName')).toHaveText(/^“Iron Lullaby”/)
  await expect(slot(page, 'nextRest')).toContainText('one turn on (1¾) — “Find the floor of it.”')

  const before = await slot(page, 'name').textContent()
  await page.reload()
  await ready(page)
  await expect(async () => {
    await page.clock.runFor(100)
    await expect(slot(page, 'name')).toHaveText(before!, { timeout: 100 })
  }).toPass()
  await expectRightScreen(page)

  // Into the fifth song, out of it by two presses, and the presses taken back.
  await pass(page, 60)
  await expect(slot(page, 'song')).toHaveText('Iron Lullaby')
  await press(page, 'n')
  await expect(page.getByRole('button', { name: 'press again to skip' })).toBeVisible()
  await press(page, 'n')
  await pass(page, 1)
  await expect(slot(page, 'name')).toHaveText('Chalk Cathedral')
  await press(page, 'Backspace')
  await pass(page, 0.5)
  await expect(slot(page, 'song')).toHaveText('Iron Lullaby')
  await press(page, 'n', 2)
  await pass(page, 3)
  await expect(slot(page, 'song')).toHaveText('Chalk Cathedral')
  await expectRightScreen(page)

  // Nobody looks for ten minutes: no frame is drawn; the first one after is right.
  await page.clock.fastForward(600_000)
  const [first] = await paintedFrames(page, 1)
  expect(slotTexts(first!)).toEqual(viewAt(await kept(page), first!.instant).texts)

  await page.clock.fastForward(1_500_000)
  await page.clock.runFor(400)
  await expect(slot(page, 'name')).toHaveText('That’s class!')
  await expect(slot(page, 'meta')).toHaveText('Stop your wheels; stretch both sides.')
  await page.getByRole('button', { name: 'end the class' }).click()
  await page.getByRole('button', { name: 'press again to end' }).click()
  await expect(page.getByRole('link', { name: 'plan', exact: true })).toHaveAttribute('aria-current', 'page')
  await expect.poll(async () => (await kept(page)).class).toBeNull()
})

test('every frame shows the state of its own timestamp, also at a quarter of the speed and after being frozen', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.getByRole('button', { name: 'start: beat 1 now' }).click()
  await expect(slot(page, 'name')).toHaveText('Settle')
  // Six seconds before the third song, whose blocks are short.
  await page.evaluate(() => {
    const left = JSON.parse(localStorage.getItem('ridewright.class')!)
    left.at += 1e6
    left.class.log.startedAt = left.class.log.slotFrom = Date.now() - 361_000
    localStorage.setItem('ridewright.class', JSON.stringify(left))
  })
  await page.reload()
  await ready(page)
  await expect(slot(page, 'song')).not.toBeEmpty()
  const { class: led } = await kept(page)

  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const recording = await recordFrames(page)
  const drawn = async (frames: number) => {
    const before = (await recording.soFar()).length
    await expect.poll(async () => (await recording.soFar()).length - before, { timeout: 30_000 }).toBeGreaterThanOrEqual(frames)
  }
  await drawn(15)
  // The page is busy for a second, then frozen for three, as by a lid or another app.
  await page.evaluate(() => {
    for (const until = performance.now() + 1000; performance.now() < until; );
  })
  await drawn(15)
  await session.send('Page.setWebLifecycleState', { state: 'frozen' })
  await page.waitForTimeout(3000)
  await session.send('Page.setWebLifecycleState', { state: 'active' })
  await drawn(15)
  // A song and a block begin meanwhile.
  const named = async () => new Set((await recording.soFar()).map((frame) => frame.slots.name)).size
  await expect.poll(named, { timeout: 30_000 }).toBeGreaterThanOrEqual(3)
  const frames = await recording.end()

  expect(frames.length).toBeGreaterThan(20)
  for (const frame of frames) {
    const view = viewAt({ class: led }, frame.instant)
    expect(slotTexts(frame)).toEqual(view.texts)
    expect(frame.count).toBe(`${view.beat.count}`)
  }
})

test('a class is led from the keyboard alone', async ({ page }) => {
  await page.clock.install({ time: '2026-01-15T09:00:00' })
  await openRidewright(page)
  await tabTo(page, page.getByRole('button', { name: /^Twenty-Minute Spark/ }))
  await press(page, 'Enter')
  await tabTo(page, page.getByRole('link', { name: 'teach', exact: true }))
  await press(page, 'Enter')
  await expect(page.getByText('20 minutes from beat 1.')).toBeVisible()
  await page.clock.pauseAt('2026-01-15T09:10:00')
  await press(page, 'Space')
  await pass(page, 10)
  await expect(slot(page, 'name')).toHaveText('Settle')

  await press(page, 'PageDown')
  await pass(page, 3)
  await expect(slot(page, 'name')).toHaveText('Flat')
  await press(page, 'PageUp')
  await pass(page, 3)
  await expect(slot(page, 'name')).toHaveText('Settle')
  await press(page, 'h')
  await pass(page, 30)
  await expect(slot(page, 'round')).toHaveText(/^holding, \d+ s$/)
  await expect(page.getByRole('button', { name: 'resume' })).toHaveAttribute('aria-pressed', 'true')
  await press(page, 'h')
  await pass(page, 0.5)
  await expect(slot(page, 'round')).toBeEmpty()
  for (let times = 0; times < 4; times++) await press(page, 'Control+z')
  await pass(page, 0.5)
  await expect(page.getByRole('button', { name: 'restart class' })).toBeVisible()
  await expect(slot(page, 'slack')).toHaveText('24 s to spare')
  await expectRightScreen(page)

  // A button that was reached by Tab has space for itself.
  await tabTo(page, page.getByRole('button', { name: 'skip song' }))
  await press(page, 'Space')
  await expect(page.getByRole('button', { name: 'press again to skip' })).toBeVisible()
  await page.clock.runFor(4100)
  await expect(page.getByRole('button', { name: 'skip song' })).toBeVisible()

  await press(page, 'Shift+?')
  await expect(page.getByRole('dialog')).toContainText('re-sync: beat 1 is now')
  await press(page, 'Escape')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await press(page, 'Escape')
  await expect(page.getByRole('button', { name: 'press again to leave' })).toBeVisible()
  await press(page, 'Escape')
  await expect(page.getByRole('link', { name: 'plan', exact: true })).toHaveAttribute('aria-current', 'page')
  // The class goes on meanwhile.
  await pass(page, 10)
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.clock.runFor(200)
  await expectRightScreen(page)
})

test('a class under way is not lost by opening another ride', async ({ page }) => {
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.getByRole('button', { name: 'start: beat 1 now' }).click()
  await expect(slot(page, 'name')).toHaveText('Settle')
  await press(page, 'Escape', 2)
  await page.getByRole('link', { name: 'my rides' }).click()
  await page.getByRole('button', { name: /^Ridge and Return/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await expect(page.getByText('You’re still teaching “Twenty-Minute Spark”.')).toBeVisible()
  await page.getByRole('button', { name: 'back to that class' }).click()
  await expect(slot(page, 'name')).toHaveText('Settle')
  await press(page, 'Escape', 2)
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await page.getByRole('button', { name: 'end it' }).click()
  await page.getByRole('button', { name: 'press again to end it' }).click()
  await expect(page.getByRole('heading', { name: 'Ridge and Return' })).toBeVisible()
  await expect(page.getByRole('button', { name: 'start: beat 1 now' })).toBeVisible()
})

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  test('targets are large, swipes do nothing, and what cannot be taken lightly takes two presses', async ({ page }) => {
    await openLead(page, /^Twenty-Minute Spark/, '2026-01-15T09:00:00')
    await page.getByRole('button', { name: 'start: beat 1 now' }).tap()
    await pass(page, 10)
    await expect(slot(page, 'name')).toHaveText('Settle')
    const address = page.url()

    const session = await page.context().newCDPSession(page)
    const swipe = async (from: [number, number], to: [number, number]) => {
      const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: [number, number][]) =>
        session.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y]) => ({ x, y })) })
      await touch('touchStart', [from])
      for (let step = 1; step <= 8; step++)
        await touch('touchMove', [[from[0] + ((to[0] - from[0]) * step) / 8, from[1] + ((to[1] - from[1]) * step) / 8]])
      await touch('touchEnd', [])
    }
    await swipe([20, 300], [900, 300])
    await swipe([900, 300], [20, 300])
    await swipe([500, 20], [500, 700])
    // Across a row of buttons too: a finger that wipes is no press.
    const row = (await page.getByRole('button', { name: 'back' }).boundingBox())!
    await swipe([row.x + 5, row.y + 20], [row.x + 400, row.y + 25])
    expect(page.url()).toBe(address)
    expect(await events(page)).toEqual([])

    await page.getByRole('button', { name: 'skip song' }).tap()
    await expect(page.getByRole('button', { name: 'press again to skip' })).toBeVisible()
    expect(await events(page)).toEqual([])
    await page.getByRole('button', { name: 'press again to skip' }).tap()
    await expect.poll(() => events(page)).toMatchObject([{ kind: 'skipSong' }])
    await page.getByRole('button', { name: 'beat 1 now' }).tap()
    await expect.poll(() => events(page)).toHaveLength(2)
    await press(page, 'Space')
    await expect.poll(() => events(page)).toHaveLength(3)

    // An alarm: leaving offers to end the class, and undo goes on with it.
    await page.getByRole('button', { name: 'leave', exact: true }).tap()
    await page.getByRole('button', { name: 'end the class here' }).tap()
    await pass(page, 1)
    await expect(page.getByRole('button', { name: 'end the class', exact: true })).toBeVisible()
    expect((await events(page)).at(-1)).toMatchObject({ kind: 'breakOff' })
    await page.getByRole('button', { name: 'undo' }).tap()
    await pass(page, 1)
    await expect(page.getByRole('button', { name: 'beat 1 now' })).toBeVisible()
    await press(page, 'e')
    await expect(page.getByRole('button', { name: 'press again to end it here' })).toBeVisible()
    await press(page, 'e')
    await pass(page, 1)
    await expect(page.getByRole('button', { name: 'end the class', exact: true })).toBeVisible()
    expect(await events(page)).toHaveLength(4)

    // With leaving at hand the key is the second press, and a reload comes back to a class that is over.
    await page.getByRole('button', { name: 'undo' }).tap()
    await pass(page, 1)
    await press(page, 'Escape')
    await expect(page.getByRole('button', { name: 'end the class here' })).toBeVisible()
    await press(page, 'e')
    await pass(page, 1)
    await expect(page.getByRole('button', { name: 'end the class', exact: true })).toBeVisible()
    await page.reload()
    await ready(page)
    await expect(async () => {
      await page.clock.runFor(100)
      await expect(page.getByRole('button', { name: 'end the class', exact: true })).toBeVisible({ timeout: 100 })
    }).toPass()
  })

  for (const [width, height] of [
    [1024, 768],
    [844, 390],
    [768, 1024],
    [390, 844],
    [360, 640],
  ] as const) {
    test(`at ${width} × ${height} every target has 44 px and nothing hangs over the edge or is cut off`, async ({ page }) => {
      await page.setViewportSize({ width, height })
      await openLead(page, /^Ridge and Return/, SLOT + 180_000)
      const first = page.getByRole('button', { name: 'start: beat 1 now' })
      await expect(first).toBeInViewport({ ratio: 0.99 })
      await first.tap()
      await pass(page, 206)
      await expect(slot(page, 'cue')).not.toBeEmpty()
      await expect(page.getByRole('button', { name: 'skip it' })).toBeVisible()
      for (const button of await page.locator('.lead button').all()) {
        const box = (await button.boundingBox())!
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44)
        expect(box.x).toBeGreaterThanOrEqual(0)
        expect(box.x + box.width).toBeLessThanOrEqual(width)
        expect(box.y + box.height).toBeLessThanOrEqual(height)
      }
      // What a box around it clips is not in view either; a line's box is a little higher than its letters.
      for (const name of [
        'clock',
        'slack',
        'songLeft',
        'name',
        'meta',
        'resistance',
        'cadence',
        'upFor',
        'count',
        'cue',
        'nextName',
        'nextTime',
      ])
        await expect(slot(page, name), name).toBeInViewport({ ratio: 0.85 })
      // Run over, it is over all the same: nothing is said of cuts any more.
      await pass(page, 2500)
      await expect(slot(page, 'name')).toHaveText('That’s class!')
      await expect(page.getByRole('button', { name: 'end the class' })).toBeInViewport({ ratio: 0.99 })
      await expect(page.locator('.lead')).not.toContainText('no skippable song')
    })
  }
})

test('is read from 1.5 m on a laptop and a tablet: what matters most in capitals of 9.6 mm, the rest of 7', async ({ page }) => {
  await openLead(page, /^Ridge and Return/, SLOT + 180_000)
  await press(page, 'Space')
  await pass(page, 206)
  await expect(slot(page, 'cue')).not.toBeEmpty()
  const capitals = (name: string) =>
    slot(page, name).evaluate((element) => (Number.parseFloat(getComputedStyle(element).fontSize) * 0.668 * 25.4) / 96)
  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height })
    for (const name of ['name', 'resistance', 'cadence', 'upFor', 'count']) expect(await capitals(name), name).toBeGreaterThanOrEqual(9.59)
    for (const name of ['meta', 'cue', 'nextName', 'nextTime']) expect(await capitals(name), name).toBeGreaterThanOrEqual(6.97)
    const sizes = await page
      .locator('[data-slot]')
      .evaluateAll((all) => all.map((element) => Number.parseFloat(getComputedStyle(element).fontSize)))
    expect(Math.max(...sizes)).toBe(await slot(page, 'count').evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize)))
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(29.9)
  }
})

test('words that are due are read to their end, a speech of three lines too', async ({ page }) => {
  const text =
    'Half a minute of this, heavy legs and light hands, shoulders away from the ears, eyes up on the road ahead of us, and when the '
  const ride = JSON.stringify(demoRide('spark')).replace(
    'Half turn on. Feel the road.',
    `${text}chorus comes nobody moves but the legs do.`,
  )
  await page.clock.install({ time: '2026-01-15T09:00:00' })
  await openRidewright(page)
  const file = { name: 'speech.ride.json', mimeType: 'application/json', buffer: Buffer.from(ride) }
  await page.locator('input[type="file"]').first().setInputFiles(file)
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await expect(page.getByRole('button', { name: 'start: beat 1 now' })).toBeVisible()
  await page.clock.pauseAt('2026-01-15T09:10:00')
  await press(page, 'Space')
  await pass(page, 88)
  await expect(slot(page, 'cue')).toHaveText(/the legs do\.$/)
  for (const [width, height] of [
    [1366, 768],
    [1024, 768],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height })
    // A line's letters may hang over its box by a pixel.
    expect(await slot(page, 'cue').evaluate((cue) => cue.scrollHeight - cue.clientHeight)).toBeLessThanOrEqual(2)
  }
})

test('says each change once, in few words, to those who hear the screen', async ({ page }) => {
  await openLead(page, /^Twenty-Minute Spark/, '2026-01-15T09:00:00')
  await page.evaluate(() => {
    const said: string[] = []
    Object.assign(window, { said })
    for (const region of document.querySelectorAll('.ui-hidden [role="status"]'))
      new MutationObserver(() => region.textContent && said.push(region.textContent)).observe(region, {
        childList: true,
        characterData: true,
        subtree: true,
      })
  })
  await press(page, 'Space')
  for (let second = 0; second < 150; second += 2) await pass(page, 2)
  const said = await page.evaluate(() => (window as unknown as { said: string[] }).said)
  expect(said).toEqual([
    'Settle, 8 eights, stay.',
    'Flat, 16 eights, a quarter turn on.',
    'Flat, 8 eights, stay.',
    'Flat build, 12 eights, half a turn on.',
    'Flat build, 8 eights, a quarter turn on.',
    'Brickworks Elevator.',
    'Set-up, 4 eights, half a turn on.',
  ])
})

test('keeps the screen on, asks again after being hidden, and says so where it cannot', async ({ page, secondProfile }) => {
  // A browser that grants what is asked, and takes it back while the page is hidden.
  await page.addInitScript(() => {
    let visibility: DocumentVisibilityState = 'visible'
    Object.defineProperty(document, 'visibilityState', { get: () => visibility, configurable: true })
    const held: (EventTarget & { released: boolean })[] = []
    const world = {
      asked: 0,
      turn: (now: DocumentVisibilityState) => {
        visibility = now
        document.dispatchEvent(new Event('visibilitychange'))
        if (now === 'visible') return
        for (const lock of held.splice(0)) {
          lock.released = true
          lock.dispatchEvent(new Event('release'))
        }
      },
    }
    const request = async () => {
      world.asked++
      const lock = Object.assign(new EventTarget(), { released: false, release: async () => {} })
      held.push(lock)
      return lock
    }
    Object.defineProperty(navigator, 'wakeLock', { value: { request } })
    Object.assign(window, { world })
  })
  type World = { world: { asked: number; turn: (now: DocumentVisibilityState) => void } }
  const asked = () => page.evaluate(() => (window as unknown as World).world.asked)
  const turn = (now: DocumentVisibilityState) => page.evaluate((state) => (window as unknown as World).world.turn(state), now)
  await openRidewright(page)
  await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  expect(await asked()).toBe(0)
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await expect.poll(asked).toBe(1)
  await turn('hidden')
  expect(await asked()).toBe(1)
  await turn('visible')
  await expect.poll(asked).toBe(2)
  await page.getByRole('button', { name: 'start: beat 1 now' }).click()
  await expect(page.getByText('doesn’t keep the screen on')).toHaveCount(0)

  await secondProfile.addInitScript(() => Object.defineProperty(navigator, 'wakeLock', { value: undefined }))
  await openRidewright(secondProfile)
  await secondProfile.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
  await secondProfile.getByRole('link', { name: 'teach', exact: true }).click()
  await expect(secondProfile.getByText('This browser doesn’t keep the screen on. Turn off sleep in the system’s settings.')).toBeVisible()
})

test('has no barriers, on its card and while leading, dark in a light page', async ({ page }) => {
  // The clock runs on: what looks for barriers waits for time to pass.
  await page.clock.install({ time: SLOT + 240_000 })
  await openRidewright(page)
  await page.getByRole('button', { name: /^Ridge and Return/ }).click()
  await page.getByRole('link', { name: 'teach', exact: true }).click()
  await expect(page.getByText(/starting 4:0\d late/)).toBeVisible()
  expect(await barriers(page)).toEqual([])
  await press(page, 'Space')
  await page.clock.fastForward(206_000)
  await expect(page.getByText('you finish')).toBeVisible()
  await expect(slot(page, 'cue')).not.toBeEmpty()
  expect(await barriers(page)).toEqual([])
  expect(await page.locator('.lead').evaluate(lightness, 'background-color')).toBeLessThan(0.2)
  expect(await page.locator('body').evaluate(lightness, 'background-color')).toBeGreaterThan(0.9)
})
