import type { Browser, BrowserContext, Page } from '@playwright/test'
import { nextFrame } from '#e2e/support/drag.ts'
import { complaintsOf, expect } from '#e2e/support/test.ts'
import { type Control, controlsOf } from './controls.ts'
import { addDrawn, keep, keptOf, noteDrawnInPage } from './drawn.ts'
import { reasonFor } from './exceptions.ts'
import { HANDS, type Hand, operate } from './operate.ts'
import { SCENES } from './scenes/scenes.ts'
import type { Scene } from './scenes/steps.ts'
import { differences, type Seen, scrollBack, scrollsOf, seen, toBeBroughtBack, watchWhatGoesOut } from './seen.ts'
import { test } from './served.ts'

/** How long an answer may take to be seen: nothing on the page waits for anything but the hand. */
const PATIENCE = 3000
/** How long a step of a scene may take on a busy machine. */
const STEP = 15_000

/** A scene that has as many faults as this is not looked at further. */
const ENOUGH = 6

/** `CENSUS=1` says what each scene comes to, `CENSUS=count` operates nothing. */
const { CENSUS } = process.env

Object.entries(SCENES).forEach(([part, scenes], index) => {
  test.describe(`every control of ${part}`, () => {
    // One after another, so that what stands on every screen is operated once and not on each.
    test.describe.configure({ mode: 'default' })
    const known = new Set<string>()
    const drawn = new Set<string>()
    for (const scene of scenes)
      test(scene.name, async ({ browser, notingPage }) => {
        for (const one of await keptOf('known', part)) known.add(one)
        for (const one of await keptOf('drawn', part)) drawn.add(one)
        const stage = await opened(browser, notingPage, scene)
        const faults: string[] = []
        // What only comes up while something is operated is not counted: it would not be operated itself.
        await addDrawn(stage.page, drawn)
        await keep('drawn', part, drawn)
        const baseline = await controlsOf(stage.page)
        const own = scene.own ? await ownPaths(stage.page, scene.own) : new Set<string>()
        // The header is the first part's.
        const isNew = (control: Control) => !known.has(keyOf(control)) && (index === 0 || !control.where.startsWith('header'))
        const due = baseline.filter(
          (control) => !control.disabled && isSample(control) && (own.has(control.path) || (!scene.ownOnly && isNew(control))),
        )
        let operated = 0
        for (const control of due) {
          const before = faults.length
          for (const hand of HANDS) {
            if (faults.length >= ENOUGH) break
            if (reasonFor(control, hand) || CENSUS === 'count') continue
            operated++
            const attempt = () => stage.tried(control, hand, baseline).catch((error: Error) => error.message.split('\n')[0]!)
            let fault = await attempt()
            if (!fault) continue
            // What the hand before it has left as it would leave it itself: how far in the stage is, which part is open.
            await stage.reopened()
            fault = await attempt()
            if (!fault) continue
            faults.push(`by ${hand}, ${control.role} “${control.name}” in ${control.where || 'the page'}: ${fault}`)
            if (CENSUS) console.log(faults.at(-1))
          }
          if (faults.length === before) known.add(keyOf(control))
        }
        test.info().annotations.push({ type: 'controls', description: `${due.length}, operated ${operated} times` })
        if (CENSUS) console.log(`${scene.name}: ${due.length} controls, operated ${operated} times, ${stage.reopenings} reopenings`)
        await stage.close()
        await keep('known', part, known)
        expect(faults, `of ${due.length} controls`).toEqual([])
        expect(stage.complaints, 'warnings and errors in the console').toEqual([])
      })
  })
})

/** Looks again and again while there is patience, and once more after: on a busy machine one look may take as long. */
async function comesTrue(look: () => Promise<boolean>): Promise<boolean> {
  const end = Date.now() + PATIENCE
  while (Date.now() < end) {
    if (await look()) return true
    await new Promise((done) => setTimeout(done, 50))
  }
  return look()
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

/** What a browser keeps of a state of the page, and its address. */
interface Kept {
  address: string
  stored: Awaited<ReturnType<BrowserContext['storageState']>>
}

/** What scenes begin with, made once in a run of this worker. */
const begun = new Map<Scene['prepare'], Kept>()

/** A scene that can be brought back after every press. */
async function opened(browser: Browser, baseURL: string, scene: Scene) {
  const options = {
    // A large tablet with a mouse and keys beside it.
    viewport: { width: scene.width ?? 1366, height: 900 },
    hasTouch: true,
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

  const fresh = async (stored?: Kept['stored']) => {
    context = await browser.newContext({ ...options, ...(stored && { storageState: stored }) })
    context.setDefaultTimeout(STEP)
    complaintsOf(context, complaints)
    page = await context.newPage()
    await page.addInitScript(watchWhatGoesOut)
    await page.addInitScript(noteDrawnInPage)
    page.on('download', () => wentOut++)
    page.on('filechooser', () => wentOut++)
    page.on('dialog', (dialog) => void dialog.accept())
    if (scene.clock) await page.clock.install({ time: scene.clock })
  }
  const close = () => context.close()
  const prepared = async (): Promise<Kept> => {
    const before = begun.get(scene.prepare)
    if (before) return before
    await fresh()
    await scene.prepare(page)
    const kept = { address: page.url(), stored: await context.storageState({ indexedDB: true }) }
    await close()
    begun.set(scene.prepare, kept)
    return kept
  }
  const kept = await prepared()

  /** Lets what is under way come to an end, on the clock of the scene. */
  const quiet = async () => {
    await page.mouse.move(1, 1)
    if (scene.clock) await page.clock.runFor(200)
    else await nextFrame(page)
  }
  const shown = async () => {
    await scene.show?.(page)
    await quiet()
  }
  const open = async () => {
    await fresh(kept.stored)
    await page.goto(kept.address)
    await page.evaluate(() => document.fonts.ready)
    await expect(page.locator('.app-waiting')).toHaveCount(0)
    await shown()
  }
  await open()

  const back = async (baseline: readonly Control[], before: Seen) => {
    const isSame = async () => namesOf(await controlsOf(page)) === namesOf(baseline)
    const { fragment } = await seen(page)
    if (fragment === before.fragment && (await isSame())) return
    if (fragment !== before.fragment) await page.evaluate((hash) => location.assign(hash || '#'), before.fragment)
    else await page.keyboard.press('Escape')
    await quiet()
    if (fragment === before.fragment && (await isSame())) return
    await shown().catch(() => undefined)
    if (await isSame()) return
    await reopened()
  }
  const reopened = async () => {
    reopenings++
    await close()
    await open()
  }

  /** The same control where it stands now: what comes and goes above it moves it. A place may still be on its way. */
  const foundAgain = async (control: Control): Promise<Control> => {
    let found: Control | undefined
    await comesTrue(async () => {
      found = await looked(control)
      if (!found) await quiet()
      return found !== undefined
    })
    if (!found) throw new Error('It is not there anymore.')
    return found
  }

  const looked = async (control: Control): Promise<Control | undefined> => {
    const all = await controlsOf(page)
    const alike = all.filter((other) => keyOf(other) === keyOf(control))
    const isThere = ({ place }: Control) => place.of === control.place.of && place.index === control.place.index
    // A measured number in its name may be another one the next time.
    const renamed = all.find((other) => other.role === control.role && other.where === control.where && isThere(other))
    return alike.find(({ path }) => path === control.path) ?? alike.find(isThere) ?? alike[0] ?? renamed
  }

  const tried = async (control: Control, hand: Hand, baseline: readonly Control[]): Promise<string | null> => {
    const before = await seen(page)
    const scrolls = await scrollsOf(page)
    const out = wentOut
    let fault: string | null = null
    try {
      if (!(await operate(page, await foundAgain(control), hand))) return null
      let after = before
      const answered = await comesTrue(async () => {
        await quiet()
        after = await seen(page)
        return wentOut > out || after.lines.join('\n') !== before.lines.join('\n')
      })
      if (!answered) fault = 'nothing followed that a person would notice'
      if (fault === null && after.undo !== before.undo && after.undo !== null && after.fragment === before.fragment)
        fault = await undone(before, scrolls)
    } catch (error) {
      fault = (error as Error).message.split('\n')[0]!
    }
    await back(baseline, before)
    return fault
  }

  /** Takes the change back and looks whether all is as it was. */
  const undone = async (before: Seen, scrolls: Awaited<ReturnType<typeof scrollsOf>>): Promise<string | null> => {
    await page.locator('.app-head button[title^="undo: "]').click({ force: true })
    await quiet()
    let left: string[] = []
    await comesTrue(async () => {
      left = differences(toBeBroughtBack(before.lines), toBeBroughtBack((await seen(page)).lines), 3)
      if (left.length === 0) return true
      // The ride is as it was, what is shown of it may be something else.
      await shown()
      await scrollBack(page, scrolls)
      await quiet()
      left = differences(toBeBroughtBack(before.lines), toBeBroughtBack((await seen(page)).lines), 3)
      return left.length === 0
    })
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
    reopened,
    close,
  }
}

/** Controls as one would read them out; how far undo and redo go is not part of a scene. */
const namesOf = (controls: readonly Control[]): string =>
  controls
    .filter(({ name }) => name !== 'undo' && name !== 'redo')
    .map(({ role, name, disabled, chosen }) => `${role} ${name} ${disabled} ${chosen}`)
    .join('\n')
