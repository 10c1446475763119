import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, rename, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { serveFolder } from '#e2e/support/staticServer.ts'
import { test as base } from '#e2e/support/test.ts'

/** A test of the page that notes what it draws, built once a run and served by each worker. */
export const test = base.extend<object, { notingPage: string }>({
  notingPage: [
    async ({ browserName: _ }, use) => {
      const server = await serveFolder(await builtOnce())
      await use(server.url)
      await server.stop()
    },
    { scope: 'worker', timeout: 300_000 },
  ],
})

const CONFIG = fileURLToPath(new URL('./vite.config.ts', import.meta.url))

async function builtOnce(): Promise<string> {
  const folder = join(tmpdir(), `ridewright-noting-${process.env.RIDEWRIGHT_RUN}`)
  if (existsSync(folder)) return folder
  // Two workers may build at once: whoever is first gives the folder its name.
  const own = await mkdtemp(`${folder}-`)
  const vite = join(dirname(createRequire(import.meta.url).resolve('vite/package.json')), 'bin/vite.js')
  const words = [vite, 'build', '--config', CONFIG, '--outDir', own, '--emptyOutDir', '--logLevel', 'warn']
  const { status } = spawnSync(process.execPath, words, { stdio: 'inherit', env: { ...process.env, NODE_ENV: 'production' } })
  if (status !== 0) throw new Error('The page that notes what it draws could not be built.')
  await rename(own, folder).catch(() => rm(own, { recursive: true, force: true }))
  return folder
}
