import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'

/**
 * Which elements of the source have been drawn. The built code makes every element by one call, and the browser counts
 * what it runs: an element whose call has run was on the screen.
 */

/** Where the calls that have run stand, by script. */
export type Drawn = Map<string, Set<number>>

/** What every census of a run has drawn comes together here. */
const FOLDER = join(tmpdir(), `ridewright-census-${process.env.RIDEWRIGHT_RUN ?? 'alone'}`)

export const startWatching = (page: Page) => page.coverage.startJSCoverage({ resetOnNavigation: false })

/** Adds what a page has drawn since it was watched. */
export async function stopWatching(page: Page, drawn: Drawn): Promise<void> {
  for (const { url, source, functions } of await page.coverage.stopJSCoverage()) {
    const script = /\/assets\/([^/?]+\.js)/.exec(url)?.[1]
    if (!script || source === undefined) continue
    const ranges = functions.flatMap((each) => each.ranges)
    const known = drawn.get(script) ?? new Set()
    drawn.set(script, known)
    for (const at of callsIn(source)) if (!known.has(at) && hasRun(ranges, at)) known.add(at)
  }
}

/** The innermost range says whether a place has run. */
function hasRun(ranges: readonly { startOffset: number; endOffset: number; count: number }[], at: number): boolean {
  let inner = { width: Number.POSITIVE_INFINITY, count: 0 }
  for (const { startOffset, endOffset, count } of ranges) {
    if (startOffset <= at && at < endOffset && endOffset - startOffset < inner.width) inner = { width: endOffset - startOffset, count }
  }
  return inner.count > 0
}

/** Where a built script makes an element. */
export const callsIn = (source: string): number[] => [...source.matchAll(/\(0,\s*[\w$]+\.jsxs?\)\(/g)].map(({ index }) => index)

export async function keepDrawn(name: string, drawn: Drawn): Promise<void> {
  await mkdir(FOLDER, { recursive: true })
  await writeFile(join(FOLDER, `${name}.json`), JSON.stringify([...drawn].map(([script, calls]) => [script, [...calls]])))
}

export async function allDrawn(): Promise<Drawn> {
  const drawn: Drawn = new Map()
  for (const file of await readdir(FOLDER).catch(() => [])) {
    for (const [script, calls] of JSON.parse(await readFile(join(FOLDER, file), 'utf8')) as [string, number[]][]) {
      drawn.set(script, new Set([...(drawn.get(script) ?? []), ...calls]))
    }
  }
  return drawn
}
