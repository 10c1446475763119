/**
 * `npm run mutants`: puts sixty small mistakes into the engine, the plan and the formats, one after another in a copy, and says
 * which of them a test notices. `npm run mutants 200 7` makes two hundred, those of seed 7; `npm run mutants 20 7 src/formats`
 * stays in a folder or a file. It reports and fails on nothing: some mistakes change nothing that can be seen.
 * `MUTANT_SECONDS=60` gives each of them the nearest and quickest minute of tests only: what is noticed then is noticed.
 */
import { randomInt } from 'node:crypto'
import process from 'node:process'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const BUNDLE = fileURLToPath(new URL('../../.cache/mutants/', import.meta.url))

const [count = 60, seed = randomInt(1_000_000)] = process.argv.slice(2, 4).map(Number)
const folders = process.argv.slice(4)
await build({
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: true,
    outDir: BUNDLE,
    emptyOutDir: true,
    rolldownOptions: { input: `${HERE}mutants.ts`, output: { entryFileNames: 'mutants.mjs' } },
  },
})
const { default: run } = await import(pathToFileURL(`${BUNDLE}mutants.mjs`).href)
await run(count, seed, folders.length > 0 ? folders : undefined)
