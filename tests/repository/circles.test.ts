import { expect, test } from 'vitest'
import { importCircles } from '#tests/support/importCircles.ts'
import { readRepositoryFile, repositoryFiles } from '#tests/support/repositoryFiles.ts'
import type { Files } from '#tests/support/unusedExports.ts'

const SOURCE: Files = new Map(
  repositoryFiles('src')
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => [path, readRepositoryFile(path)]),
)

/** The state is its slices, and a slice may ask the whole state: the one circle there is, of types alone. */
const STATE = 'src/store/state.ts'

test('no file leads back to itself, by types either, but through the state of the store', () => {
  const [circle, ...others] = importCircles(SOURCE)
  expect(others).toEqual([])
  expect(circle).toContain(STATE)
  expect(importCircles(new Map([...SOURCE].filter(([path]) => path !== STATE)))).toEqual([])
})

test('a circle is found however long it is and whatever is imported', () => {
  const planted: Files = new Map([
    ['src/units/a.ts', `import type { B } from './b.ts'\nexport type A = B`],
    ['src/units/b.ts', `export { c as B } from '#plan/c.ts'`],
    ['src/plan/c.ts', `export const c = async () => (await import('./deeper/d.ts')).d`],
    ['src/plan/deeper/d.ts', `export let d: import('#units/a.ts').A`],
    ['src/plan/e.ts', `import { c } from './c.ts'\nexport const e = c`],
  ])
  expect(importCircles(planted)).toEqual([['src/plan/c.ts', 'src/plan/deeper/d.ts', 'src/units/a.ts', 'src/units/b.ts']])
})
