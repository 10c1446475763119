import process from 'node:process'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const order = process.env.MUTANT_ORDER?.split('\n') ?? []

/** In the order given: most mistakes are noticed by one of the first files. */
class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => order.indexOf(a.moduleId) - order.indexOf(b.moduleId))
  }
}

/** The project's own tests, run in a copy with mistakes planted in it. */
export default defineConfig({
  root: ROOT,
  cacheDir: '.cache/vite',
  test: {
    sequence: { sequencer: AsGiven },
    projects: [{ extends: `${ROOT}vite.config.ts`, test: { setupFiles: ['tests/mutants/switch.ts'] } }],
  },
})
