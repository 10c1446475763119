/**
 * `npm run hunt`: every test that draws something by chance, five rounds of it from a fresh seed each; `npm run hunt 20` goes
 * twenty rounds. Stops at the first round that fails and names its seed: `RIDEWRIGHT_SEED=… npx vitest run …` is that round again.
 */
import { spawnSync } from 'node:child_process'
import { randomInt } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import process from 'node:process'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const VITEST = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url))
const DRAWS = /from 'fast-check'|from '#tests\/support\/seed\.ts'/

const files = readdirSync(join(ROOT, 'tests'), { recursive: true, encoding: 'utf8' })
  .map((file) => join('tests', file))
  .filter((file) => /\.test\.tsx?$/.test(file) && DRAWS.test(readFileSync(join(ROOT, file), 'utf8')))

const rounds = Number(process.argv[2] ?? 5)
for (let round = 1; round <= rounds; round++) {
  const seed = randomInt(2 ** 31)
  console.log(`\nround ${round} of ${rounds}, seed ${seed}, ${files.length} files`)
  const env = { ...process.env, RIDEWRIGHT_SEED: String(seed) }
  const { status } = spawnSync(process.execPath, [VITEST, 'run', ...files], { cwd: ROOT, stdio: 'inherit', env })
  if (status !== 0) {
    console.error(`\nround ${round} failed; its seed is ${seed}`)
    process.exitCode = 1
    break
  }
}
