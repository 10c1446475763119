import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { serveFolder } from './staticServer.ts'

/**
 * Builds the page as it is published, into a folder of its own, and serves it while the tests run; two runs at the same
 * time do not meet. `RIDEWRIGHT_URL` in the environment tests a server that is already running instead.
 */
export default async function serveBuild(): Promise<() => Promise<void>> {
  if (process.env.RIDEWRIGHT_URL) return async () => {}
  const folder = await mkdtemp(join(tmpdir(), 'ridewright-build-'))
  await build({ logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } })
  const server = await serveFolder(folder)
  process.env.RIDEWRIGHT_URL = server.url
  process.env.RIDEWRIGHT_BUILD = folder
  return async () => {
    await server.stop()
    await rm(folder, { recursive: true, force: true })
  }
}
