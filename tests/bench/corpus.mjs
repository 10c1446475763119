/**
 * `npm run test:corpus FOLDER`: how well beats are found in songs whose beats are known. The folder holds
 * `truth.json` (for each song: id, file, bpm, meter, beats and downbeats in seconds) and its wave files of one channel
 * and 16 bits; RIDEWRIGHT_CORPUS names it as well. `--each` lists every song. `npm run bench:beats FOLDER` adds a
 * general-purpose tempo library in the same run. It reports, and fails on nothing but a folder that is not there.
 */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const words = process.argv.slice(2)
const folder = words.find((word) => !word.startsWith('--')) ?? process.env.RIDEWRIGHT_CORPUS
if (!folder || !existsSync(join(folder, 'truth.json'))) {
  console.error('Name a folder with truth.json and its songs: npm run test:corpus FOLDER, or RIDEWRIGHT_CORPUS=FOLDER.')
  process.exit(1)
}

const BUNDLES = fileURLToPath(new URL('../../.cache/corpus/', import.meta.url))
const input = fileURLToPath(new URL('./corpus/score.ts', import.meta.url))
await build({
  configFile: false,
  logLevel: 'error',
  build: { ssr: true, outDir: BUNDLES, emptyOutDir: true, rolldownOptions: { input, output: { entryFileNames: 'score.mjs' } } },
})
const { scoreCorpus } = await import(pathToFileURL(`${BUNDLES}score.mjs`).href)
scoreCorpus(folder, { libraries: words.includes('--libraries'), each: words.includes('--each') })
