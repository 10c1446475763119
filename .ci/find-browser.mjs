/**
 * Finds a Chromium for the browser tests by launching candidates for real, and installs one when there is none.
 * As a program (`node .ci/find-browser.mjs`) it prints which one is used.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { delimiter, dirname, join } from 'node:path'
import process from 'node:process'
import { fileURLToPath } from 'node:url'
import { chromium } from '@playwright/test'

/**
 * How to launch a browser; neither field: the one Playwright brings.
 * @typedef {{ executablePath?: string, channel?: string }} Browser
 */

/** Let Chromium start in a container (no user namespaces, no graphics card) and keep it quiet. */
export const CONTAINER_FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking']

const CACHE = fileURLToPath(new URL('../node_modules/.cache/ridewright/browser.json', import.meta.url))
/** Found in this process or by the one that started it: Playwright's workers load the configuration again. */
const HANDED_DOWN = 'RIDEWRIGHT_FOUND_BROWSER'
const LAUNCH_LIMIT_MS = 30_000
/** A network that swallows requests must not eat the time that the next way needs. */
const DOWNLOAD_LIMIT_MS = 180_000
const APT_LIMIT_MS = 300_000
const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']

/**
 * The first browser that starts, in this order: `RIDEWRIGHT_BROWSER` (a path), the one found last time, Playwright's own,
 * the channels chromium, chrome and msedge, and the PATH; then the same after an install by Playwright, then by apt-get.
 * @returns {Promise<Browser>}
 * @throws {Error} with a sentence to show when none starts and none can be installed
 */
export async function findBrowser() {
  const handedDown = process.env[HANDED_DOWN]
  if (handedDown) return JSON.parse(handedDown)
  const browser = (await fromOverride()) ?? (await firstThatStarts([...remembered(), ...candidates()])) ?? (await installed())
  remember(browser)
  process.env[HANDED_DOWN] = JSON.stringify(browser)
  return browser
}

async function fromOverride() {
  const executablePath = process.env.RIDEWRIGHT_BROWSER
  if (!executablePath) return undefined
  if (await starts({ executablePath })) return { executablePath }
  throw new Error(`RIDEWRIGHT_BROWSER names ${executablePath}, which does not start as a browser. Correct it or unset it.`)
}

/** @returns {Browser[]} */
function candidates() {
  const folders = ['/usr/bin', ...(process.env.PATH ?? '').split(delimiter).filter(Boolean)]
  const paths = folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).filter((path) => existsSync(path))
  return [
    {},
    { channel: 'chromium' },
    { channel: 'chrome' },
    { channel: 'msedge' },
    ...[...new Set(paths)].map((executablePath) => ({ executablePath })),
  ]
}

async function firstThatStarts(/** @type {Browser[]} */ browsers) {
  for (const browser of browsers) if (await starts(browser)) return browser
  return undefined
}

async function starts(/** @type {Browser} */ browser) {
  try {
    const running = await chromium.launch({ ...browser, args: CONTAINER_FLAGS, timeout: LAUNCH_LIMIT_MS })
    await running.close()
    return true
  } catch {
    return false
  }
}

async function installed() {
  for (const install of [installWithPlaywright, installWithApt]) {
    if (!install()) continue
    const browser = await firstThatStarts(candidates())
    if (browser) return browser
  }
  throw new Error(
    'No Chromium was found and none could be installed. Install Chromium or Chrome, or set RIDEWRIGHT_BROWSER to the path of one, and try again.',
  )
}

/** Into the user's own cache; useless, and so left out, where the system libraries every Chromium needs are missing. */
function installWithPlaywright() {
  if (process.platform === 'linux' && !/libnss3\.so/.test(output('ldconfig', ['-p']) + output('/sbin/ldconfig', ['-p']))) return false
  console.log('No browser found. Fetching the one Playwright brings …')
  const cli = join(dirname(createRequire(import.meta.url).resolve('@playwright/test/package.json')), 'cli.js')
  return ran(process.execPath, [cli, 'install', 'chromium'], DOWNLOAD_LIMIT_MS)
}

function installWithApt() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return false
  console.log('No browser found. Installing the system’s Chromium with apt-get …')
  const options = ['-qq', '-o', 'Acquire::Retries=3', '-o', 'DPkg::Lock::Timeout=120']
  const install = ['install', '-y', '--no-install-recommends', 'chromium']
  return ran('apt-get', [...options, 'update'], APT_LIMIT_MS) && ran('apt-get', [...options, ...install], APT_LIMIT_MS)
}

function ran(/** @type {string} */ program, /** @type {string[]} */ words, /** @type {number} */ timeout) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  return spawnSync(program, words, { stdio: ['ignore', 'inherit', 'inherit'], env, timeout }).status === 0
}

function output(/** @type {string} */ program, /** @type {string[]} */ words) {
  return spawnSync(program, words, { encoding: 'utf8' }).stdout ?? ''
}

/** @returns {Browser[]} */
function remembered() {
  try {
    return [JSON.parse(readFileSync(CACHE, 'utf8'))]
  } catch {
    return []
  }
}

function remember(/** @type {Browser} */ browser) {
  mkdirSync(dirname(CACHE), { recursive: true })
  writeFileSync(CACHE, JSON.stringify(browser))
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const { executablePath, channel } = await findBrowser()
    console.log(executablePath ?? channel ?? chromium.executablePath())
  } catch (error) {
    console.error(error instanceof Error ? error.message : error)
    process.exit(1)
  }
}
