/**
 * `npm run bench`: runs every `*.bench.ts` of this folder and prints what each measured beside its aim. It reports and never
 * fails on a figure: machines differ, and tests count calls and renders instead. `npm run bench browser` runs one alone.
 */
import { readdir } from 'node:fs/promises'
import { cpus } from 'node:os'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const BUNDLES = fileURLToPath(new URL('../../.cache/bench/', import.meta.url))

const wanted = process.argv[2] ?? ''
const names = (await readdir(HERE)).filter((name) => name.endsWith('.bench.ts') && name.includes(wanted)).sort()
if (names.length === 0) throw new Error(`No bench of this folder is called ${wanted}.`)

// Bundled as the page is, since code that runs module by module is slower than what people get.
await build({
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: true,
    outDir: BUNDLES,
    emptyOutDir: true,
    rolldownOptions: {
      input: Object.fromEntries(names.map((name) => [name.replace('.ts', ''), `${HERE}${name}`])),
      external: /^#ci\//,
      output: { entryFileNames: '[name].mjs' },
    },
  },
})

console.log(`Node ${process.versions.node} on ${cpus().length} × ${cpus()[0]?.model ?? 'an unknown processor'}\n`)
for (const name of names) {
  const { default: bench } = await import(pathToFileURL(`${BUNDLES}${name.replace('.ts', '.mjs')}`).href)
  for (const row of await bench()) console.log('size' in row ? sizeLine(row) : timeLine(row))
  console.log('')
}

function timeLine(/** @type {import('./row.ts').Row} */ { what, best, median, p95, aim, note = '' }) {
  const figures = `best ${milliseconds(best)}  median ${milliseconds(median)}  p95 ${milliseconds(p95)}`
  return `${what.padEnd(52)} ${figures}  ${aim === undefined ? '' : `aim ${aim} ms`}  ${note}`.trimEnd()
}

function sizeLine(/** @type {import('./row.ts').Size} */ { what, size, unit = '', aim, note = '' }) {
  return `${what.padEnd(52)} ${String(size).padStart(7)} ${unit}  ${aim === undefined ? '' : `aim ${aim}`}  ${note}`.trimEnd()
}

function milliseconds(/** @type {number} */ value) {
  return `${value.toFixed(value < 10 ? 2 : 1).padStart(6)} ms`
}
