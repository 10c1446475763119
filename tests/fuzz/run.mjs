/**
 * `npm run fuzz`: a hundred thousand hostile links and files through the page's own doors. `npm run fuzz 500 17` takes five
 * hundred, from number 17 on; the same number is the same case. Fails where one is neither refused with a reason nor a valid ride.
 */
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const BUNDLE = fileURLToPath(new URL('../../.cache/fuzz/', import.meta.url))

const [cases = 100_000, from = 1] = process.argv.slice(2).map(Number)
await build({
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: true,
    outDir: BUNDLE,
    emptyOutDir: true,
    rolldownOptions: { input: `${HERE}long.ts`, output: { entryFileNames: 'long.mjs' } },
  },
})
const { default: longRun } = await import(pathToFileURL(`${BUNDLE}long.mjs`).href)
process.exitCode = (await longRun(cases, from)) ? 0 : 1
