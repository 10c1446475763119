/**
 * Makes a fresh clone ready: checks the Node version and installs what the lock file names.
 * Runs before `npm start` and `npm test`, so it uses Node's built-ins only. Warm: a few milliseconds.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import process from 'node:process'
import { URL } from 'node:url'

const LOCK = new URL('../package-lock.json', import.meta.url)
const INSTALLED = new URL('../node_modules/.package-lock.json', import.meta.url)
const STAMP = new URL('../node_modules/.ridewright-setup', import.meta.url)
const OLDEST_NODE = { major: 20, minor: 19 }

checkNode()
const lock = readFileSync(LOCK)
const hash = createHash('sha256').update(lock).digest('hex')
if (!isStamped(hash)) {
  if (!isInstalled(JSON.parse(lock.toString()))) install()
  writeFileSync(STAMP, hash)
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > OLDEST_NODE.major || (major === OLDEST_NODE.major && minor >= OLDEST_NODE.minor)) return
  const oldest = `${OLDEST_NODE.major}.${OLDEST_NODE.minor}`
  stop(`Ridewright needs Node ${oldest} or newer, and this is Node ${process.versions.node}. Install a newer Node and try again.`)
}

function isStamped(/** @type {string} */ hash) {
  return existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hash
}

/** True when npm's own record of node_modules already holds every package of the lock file, as after a plain `npm install`. */
function isInstalled(/** @type {{ packages: Record<string, { integrity?: string, optional?: boolean }> }} */ wanted) {
  if (!existsSync(INSTALLED)) return false
  const present = JSON.parse(readFileSync(INSTALLED, 'utf8')).packages
  return Object.entries(wanted.packages).every(
    ([path, entry]) => path === '' || entry.optional || present[path]?.integrity === entry.integrity,
  )
}

function install() {
  console.log('Installing the packages the lock file names (about 20 seconds) …')
  // npm passes on the address of its own script, which spares a search for it on every system.
  const npm = process.env.npm_execpath
  const words = ['ci', '--include=dev', '--no-fund', '--no-audit', '--loglevel=error']
  const { status } = npm ? spawnSync(process.execPath, [npm, ...words], options()) : spawnSync('npm', words, { ...options(), shell: true })
  if (status !== 0) stop('Installing the packages failed; the lines above say why. Check the network connection and try again.')
}

function options() {
  return { cwd: new URL('..', import.meta.url), stdio: /** @type {const} */ ('inherit') }
}

function stop(/** @type {string} */ sentence) {
  console.error(sentence)
  process.exit(1)
}
