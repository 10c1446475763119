import { type BrowserContext, chromium, type Page } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import { ready } from './openRidewright.ts'

/** How somebody works while the browser is killed: with more than a second between two edits, or steadily. */
export type Pace = 'apart' | 'steady'

/** What one kill did. */
export interface KillOutcome {
  /** Edits made in this round. */
  edits: number
  /** Those that were not there afterwards. */
  lost: number
  /** Milliseconds from the first lost edit to the kill; 0 where none was lost. */
  oldestLost: number
  /** The ride was there, and could be opened. */
  isRideThere: boolean
  /** It was open again, without a press. */
  isReopened: boolean
}

export interface KillTotals {
  kills: number
  edits: number
  lost: number
  /** Kills that lost an edit. */
  losing: number
  /** Milliseconds. */
  oldestLost: number
  ridesLost: number
  notReopened: number
}

const APART = 1200
const STEADY = 90
const NAME = 'Kill'

/** A browser whose user kills it from outside, again and again, over one profile. */
export class KilledBrowser {
  private context: BrowserContext | null = null
  private page: Page | null = null
  /** Number of the last edit. */
  private count = 0

  private readonly profile: string
  private readonly url: string
  private readonly chance: () => number

  constructor(profile: string, url: string, chance: () => number) {
    this.profile = profile
    this.url = url
    this.chance = chance
  }

  /** Opens the browser and makes a ride of one's own, called by a number that every edit raises. */
  async begin(): Promise<void> {
    const page = await this.open()
    await page.getByRole('button', { name: /^Twenty-Minute Spark/ }).click()
    await page.locator('[data-curve="intent"]').waitFor()
    await this.toTitle(page)
    await this.edit()
    await page.getByText('saved', { exact: true }).waitFor()
  }

  /** Works for a while, kills the browser in the middle of it, and looks what is there afterwards. */
  async round(pace: Pace): Promise<KillOutcome> {
    const first = this.count + 1
    const at = new Map<number, number>()
    await this.toTitle(this.page!)
    const end = Date.now() + (pace === 'apart' ? APART * (1 + Math.floor(this.chance() * 3)) : 2000 + this.chance() * 3000)
    let next = Date.now()
    while (Date.now() < end) {
      await this.edit()
      at.set(this.count, Date.now())
      next += pace === 'apart' ? APART : STEADY
      await rest(Math.max(0, next - Date.now()))
    }
    if (pace === 'apart') {
      await this.edit()
      at.set(this.count, Date.now())
    }
    await rest(this.chance() * (pace === 'apart' ? APART : STEADY))
    const killed = await this.kill()

    const page = await this.open()
    const reopened = await this.numberIn(page.locator('.app-title-button'), 8000)
    const kept = reopened ?? (await this.openFromList(page))
    const lost = kept === null ? this.count - first + 1 : Math.max(0, this.count - kept)
    const firstLost = kept === null ? first : kept + 1
    const outcome = {
      edits: this.count - first + 1,
      lost,
      oldestLost: lost > 0 ? killed - (at.get(firstLost) ?? at.get(first)!) : 0,
      isRideThere: kept !== null,
      isReopened: reopened !== null,
    }
    if (kept !== null) this.count = kept
    return outcome
  }

  async end(): Promise<void> {
    await this.context?.close()
  }

  /** One edit, by the keys: the title becomes the next number. */
  private async edit(): Promise<void> {
    const { keyboard } = this.page!
    this.count++
    await keyboard.press('ControlOrMeta+A')
    await keyboard.insertText(`${NAME} ${this.count}`)
    await keyboard.press('Enter')
  }

  /** To the field of the title, where the keys go from then on. */
  private async toTitle(page: Page): Promise<void> {
    await page.locator('.app-title-button').click()
    await page.getByLabel('title', { exact: true }).focus()
  }

  private async open(): Promise<Page> {
    const options = { ...(await findBrowser()), args: CONTAINER_FLAGS, viewport: { width: 1440, height: 900 } }
    this.context = await chromium.launchPersistentContext(this.profile, options)
    this.page = this.context.pages()[0] ?? (await this.context.newPage())
    await this.page.goto(this.url)
    await ready(this.page)
    return this.page
  }

  /** @returns the instant of the kill */
  private async kill(): Promise<number> {
    const context = this.context!
    const session = await context.browser()!.newBrowserCDPSession()
    const { processInfo } = await session.send('SystemInfo.getProcessInfo')
    const gone = new Promise((resolve) => context.on('close', resolve))
    process.kill(processInfo.find(({ type }) => type === 'browser')!.id, 'SIGKILL')
    const killed = Date.now()
    await gone
    return killed
  }

  private async numberIn(place: ReturnType<Page['locator']>, timeout: number): Promise<number | null> {
    const text = await place
      .first()
      .textContent({ timeout })
      .catch(() => null)
    const found = new RegExp(`^${NAME} (\\d+)$`).exec(text ?? '')
    return found ? Number(found[1]) : null
  }

  private async openFromList(page: Page): Promise<number | null> {
    const link = page.getByRole('link', { name: new RegExp(`^${NAME} `) }).first()
    await link.click({ timeout: 5000 }).catch(() => undefined)
    return this.numberIn(page.locator('.app-title-button'), 5000)
  }
}

/** Kills one browser after another over a profile. */
export async function killAgainAndAgain(
  profile: string,
  url: string,
  { kills, pace, chance = Math.random }: { kills: number; pace: Pace; chance?: () => number },
): Promise<KillTotals> {
  const browser = new KilledBrowser(profile, url, chance)
  const outcomes: KillOutcome[] = []
  try {
    await browser.begin()
    for (let count = 0; count < kills; count++) outcomes.push(await browser.round(pace))
  } finally {
    await browser.end()
  }
  const sum = (value: (outcome: KillOutcome) => number) => outcomes.reduce((total, outcome) => total + value(outcome), 0)
  return {
    kills: outcomes.length,
    edits: sum(({ edits }) => edits),
    lost: sum(({ lost }) => lost),
    losing: outcomes.filter(({ lost }) => lost > 0).length,
    oldestLost: Math.max(0, ...outcomes.map(({ oldestLost }) => oldestLost)),
    ridesLost: outcomes.filter(({ isRideThere }) => !isRideThere).length,
    notReopened: outcomes.filter(({ isReopened }) => !isReopened).length,
  }
}

export const sayTotals = (name: string, totals: KillTotals): string =>
  `${name}: ${totals.kills} kills, ${totals.edits} edits, ${totals.lost} lost by ${totals.losing} kills, the oldest ${(totals.oldestLost / 1000).toFixed(2)} s old; ${totals.ridesLost} rides lost, ${totals.notReopened} not reopened`

const rest = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds))
