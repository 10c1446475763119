import type { Browser, BrowserContext, Page } from '@playwright/test'
import { nextFrame } from '#e2e/support/drag.ts'
import { complaintsOf, expect } from '#e2e/support/test.ts'
import { type Control, controlsOf } from './controls.ts'
import { addDrawn, keepDrawn, noteDrawnInPage } from './drawn.ts'
import { reasonFor } from './exceptions.ts'
import { type Hand, operate } from './operate.ts'
import { SCENES } from './scenes/scenes.ts'
import type { Scene } from './scenes/steps.ts'
import { differences, type Seen, seen, toBeBroughtBack, watchWhatGoesOut } from './seen.ts'
import { test } from './served.ts'

/** A tablet for the finger, a laptop for mouse and keys. */
const VIEWPORT = { mouse: { width: 1440, height: 900 }, key: { width: 1440, height: 900 }, touch: { width: 1180, height: 820 } } as const

for (const hand of ['mouse', 'touch', 'key'] as const) {
  test.describe(`every control, by ${hand}`, () => {
    // One after another, so that what stands on every screen is operated once and not on each.
    test.describe.configure({ mode: 'default', timeout: 600_000 })
    const known = new Set<string>()
    const drawn = new Set<string>()
    for (const scene of SCENES) {
      test(scene.name, async ({ browser, notingPage }) => {
        const stage = await opened(browser, notingPage, scene, hand)
        const faults: string[] = []
        // What only comes up while something is operated is not counted: it would not be operated itself.
        await addDrawn(stage.page, drawn)
        await keepDrawn(hand, drawn)
        const baseline = await controlsOf(stage.page)
        const own = scene.own ? await ownPaths(stage.page, scene.own) : new Set<string>()
        const due = baseline.filter(
          (control) => !control.disabled && isSample(control) && (own.has(control.path) || !known.has(keyOf(control))),
        )
        for (const control of due) {
          known.add(keyOf(control))
          if (reasonFor(control, hand)) continue
          const fault = await stage.tried(control, baseline).catch((error: Error) => error.message.split('\n')[0]!)
          if (!fault) continue
          faults.push(`${control.role} “${control.name}” in ${control.where || 'the page'}: ${fault}`)
          if (process.env.CENSUS) console.log(faults.at(-1))
        }
        test.info().annotations.push({ type: 'controls', description: String(due.length) })
        if (process.env.CENSUS) console.log(`${hand}, ${scene.name}: ${due.length} controls, ${stage.reopenings} reopenings`)
        await stage.close()
        expect(faults, `${hand}: of ${due.length} controls`).toEqual([])
        expect(stage.complaints, 'warnings and errors in the console').toEqual([])
      })
    }
  })
}

const keyOf = ({ role, name, where }: Control) => `${role} ${name} ${where}`

/** Rows of a list that look alike do alike: the first and the last of them stand for the rest. */
const isSample = ({ place, isRow }: Control) => !isRow || place.index === 0 || place.last

const ownPaths = async (page: Page, selector: string): Promise<Set<string>> => {
  const paths = (await controlsOf(page)).map(({ path }) => path)
  const inside = await page.evaluate(({ within, all }) => all.filter((path) => document.querySelector(path)?.closest(within)), {
    within: selector,
    all: paths,
  })
  return new Set(inside)
}

/** A scene that can be brought back after every press. */
async function opened(browser: Browser, baseURL: string, scene: Scene, hand: Hand) {
  const options = {
    viewport: VIEWPORT[hand],
    hasTouch: hand === 'touch',
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
    baseURL,
  } as const
  const complaints: string[] = []
  let context: BrowserContext
  let page: Page
  let wentOut = 0
  let reopenings = 0

  const fresh = async (storageState?: Awaited<ReturnType<BrowserContext['storageState']>>) => {
    context = await browser.newContext({ ...options, ...(storageState && { storageState }) })
    complaintsOf(context, complaints)
    page = await context.newPage()
    await page.addInitScript(watchWhatGoesOut)
    await page.addInitScript(noteDrawnInPage)
    page.on('download', () => wentOut++)
    page.on('filechooser', () => wentOut++)
    page.on('dialog', (dialog) => void dialog.accept())
    if (scene.clock) await page.clock.install({ time: scene.clock })
  }
  await fresh()
  await scene.prepare(page!)
  const address = page!.url()
  const stored = await context!.storageState({ indexedDB: true })

  const shown = async () => {
    await scene.show?.(page)
    await quiet()
  }
  /** Lets what is under way come to an end, on the clock of the scene. */
  const quiet = async () => {
    await page.mouse.move(1, 1)
    if (scene.clock) await page.clock.runFor(200)
    else await nextFrame(page)
  }
  const close = () => context.close()
  const reopened = async () => {
    await close()
    await fresh(stored)
    await page.goto(address)
    await page.evaluate(() => document.fonts.ready)
    await shown()
  }
  await close()
  await fresh(stored)
  await page!.goto(address)
  await page!.evaluate(() => document.fonts.ready)
  await shown()

  const back = async (baseline: readonly Control[], before: Seen) => {
    const isSame = async () => namesOf(await controlsOf(page)) === namesOf(baseline)
    const { fragment } = await seen(page)
    if (fragment === before.fragment && (await isSame())) return
    if (fragment !== before.fragment) await page.evaluate((hash) => location.assign(hash || '#'), before.fragment)
    else await page.keyboard.press('Escape')
    await shown().catch(() => undefined)
    if (await isSame()) return
    reopenings++
    await reopened()
  }

  const tried = async (control: Control, baseline: readonly Control[]): Promise<string | null> => {
    const before = await seen(page)
    const out = wentOut
    let fault: string | null = null
    try {
      if (!(await operate(page, control, hand))) return null
      let after = before
      await expect
        .poll(
          async () => {
            await quiet()
            after = await seen(page)
            return wentOut > out || after.lines.join('\n') !== before.lines.join('\n')
          },
          { timeout: 8000, intervals: [20, 50, 100, 200] },
        )
        .toBe(true)
        .catch(() => {
          fault = 'nothing followed that a person would notice'
        })
      if (fault === null && after.undo !== before.undo && after.undo !== null && after.fragment === before.fragment)
        fault = await undone(before)
    } catch (error) {
      fault = (error as Error).message.split('\n')[0]!
    }
    await back(baseline, before)
    return fault
  }

  /** Takes the change back and looks whether all is as it was. */
  const undone = async (before: Seen): Promise<string | null> => {
    await page.locator('.app-head button[title^="undo: "]').click({ force: true })
    await quiet()
    let left: string[] = []
    await expect
      .poll(
        async () => {
          await scene.show?.(page)
          await quiet()
          left = differences(toBeBroughtBack(before.lines), toBeBroughtBack((await seen(page)).lines), 3)
          return left.length
        },
        { timeout: 8000, intervals: [20, 100, 300] },
      )
      .toBe(0)
      .catch(() => undefined)
    return left.length === 0 ? null : `undo does not bring the ride back: ${left.join(' | ')}`
  }

  return {
    get page() {
      return page
    },
    get reopenings() {
      return reopenings
    },
    complaints,
    tried,
    close,
  }
}

/** Controls as one would read them out; how far undo and redo go is not part of a scene. */
const namesOf = (controls: readonly Control[]): string =>
  controls
    .filter(({ name }) => name !== 'undo' && name !== 'redo')
    .map(({ role, name, disabled, chosen }) => `${role} ${name} ${disabled} ${chosen}`)
    .join('\n')
