import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from '@playwright/test'
import { build } from 'vite'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'
import { serveFolder } from '#e2e/support/staticServer.ts'
import type { Tool } from '#tests/bench/corpus/judge.ts'
import type { BrowserTool, HearingWindow } from '#tests/bench/corpus/page/hear.ts'

const PAGE = fileURLToPath(new URL('../../tests/bench/corpus/page/', import.meta.url))
const NAMES: BrowserTool[] = ['this analysis’s worker', 'web-audio-beat-detector', 'realtime-bpm-analyzer']

/** A page in a real browser where the tools run that need one, timed by its clock. */
export async function openHearingPage(folder: string): Promise<{ tools: Record<string, Tool>; close: () => Promise<void> }> {
  const built = await mkdtemp(join(tmpdir(), 'ridewright-hearing-'))
  await build({ root: PAGE, configFile: false, logLevel: 'error', base: './', worker: { format: 'es' }, build: { outDir: built } })
  const server = await serveFolder(built)
  const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
  const page = await browser.newPage()
  await page.route('**/songs/**', async (route) => {
    const name = decodeURIComponent(new URL(route.request().url()).pathname.replace(/^.*\/songs\//, ''))
    await route.fulfill({ body: await readFile(join(folder, name)), contentType: 'audio/wav' })
  })
  await page.goto(server.url)
  await page.waitForFunction(() => 'hear' in window)
  const tool =
    (name: BrowserTool): Tool =>
    ({ file }, cut) =>
      page.evaluate(([which, address, from]) => (window as unknown as HearingWindow).hear(which, address, from), [
        name,
        `./songs/${encodeURI(file)}`,
        cut,
      ] as const)
  return {
    tools: Object.fromEntries(NAMES.map((name) => [name, tool(name)])),
    close: async () => {
      await browser.close()
      await server.stop()
      await rm(built, { recursive: true, force: true })
    },
  }
}
