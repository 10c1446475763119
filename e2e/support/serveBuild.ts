import { spawnSync } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { serveFolder } from './staticServer.ts'

/**
 * Builds the page as it is published, into a folder of its own, and serves it while the tests run; two runs at the same
 * time do not meet. `RIDEWRIGHT_URL` in the environment tests a server that is already running instead.
 */
export default async function serveBuild(): Promise<() => Promise<void>> {
  if (process.env.RIDEWRIGHT_URL) return async () => {}
  const folder = await mkdtemp(join(tmpdir(), 'ridewright-build-'))
  build(folder)
  const server = await serveFolder(folder)
  process.env.RIDEWRIGHT_URL = server.url
  process.env.RIDEWRIGHT_BUILD = folder
  return async () => {
    await server.stop()
    const census = ['noting', 'census'].map((kind) => join(tmpdir(), `ridewright-${kind}-${process.env.RIDEWRIGHT_RUN}`))
    for (const made of [folder, ...census]) await rm(made, { recursive: true, force: true })
  }
}

/** In a process of its own: within this one React would be built as for development, as tests and tools have it. */
function build(folder: string): void {
  const vite = join(dirname(createRequire(import.meta.url).resolve('vite/package.json')), 'bin/vite.js')
  const words = [vite, 'build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn']
  const { status } = spawnSync(process.execPath, words, { stdio: 'inherit', env: { ...process.env, NODE_ENV: 'production' } })
  if (status !== 0) throw new Error('The page could not be built, so there is nothing to test in the browser.')
}
