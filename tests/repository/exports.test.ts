import { describe, expect, test } from 'vitest'
import { readRepositoryFile, repositoryFiles } from '#tests/support/repositoryFiles.ts'
import { type Files, unusedExports } from '#tests/support/unusedExports.ts'

/** What is exported for no file of the program, with the reason. */
const EXCEPTIONS: Record<string, string> = {
  'src/plan/document/schema.ts SCHEMA_PARTS': 'the published JSON Schema is made of them, and that file is written by its test',
}

const SOURCE: Files = new Map(
  repositoryFiles('src')
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => [path, readRepositoryFile(path)]),
)
const ENTRIES = ['src/main.tsx']

/** What is found, without lines and exceptions. */
const unusedIn = (files: Files) =>
  unusedExports(files, ENTRIES)
    .map((found) => found.replace(/:\d+ /, ' '))
    .filter((found) => !(found in EXCEPTIONS))

test('every export has a user in the program, outside its own file: what only tests use is no part of it', () => {
  const found = unusedExports(SOURCE, ENTRIES)
  expect(found.filter((each) => !(each.replace(/:\d+ /, ' ') in EXCEPTIONS))).toEqual([])
  // An exception that is one no longer goes from the list.
  expect(found).toHaveLength(Object.keys(EXCEPTIONS).length)
})

describe('planted', () => {
  const main = (...lines: string[]) => lines.join('\n')
  const unusedWith = (planted: Record<string, string>) => unusedIn(new Map(Object.entries(planted)))

  test('in a copy of the program, an export without a user is seen, and so is a file that nothing leads to', () => {
    const copy = new Map(SOURCE)
    copy.set('src/units/day.ts', `${copy.get('src/units/day.ts')}\nexport const planted = isDay('2026-11-25')\n`)
    copy.set('src/engine/planted.ts', `import { computeRide } from './computeRide.ts'\nexport const alone = computeRide\n`)
    expect(unusedIn(copy).sort()).toEqual(['src/engine/planted.ts is reached from nowhere', 'src/units/day.ts planted'])
  })

  test('an export of any kind that nobody uses is seen', () => {
    const planted = [
      'export const a = 1, { b, c: [d] } = { b: 2, c: [3] }',
      'export function e() { return a }',
      'export interface F { f: G }',
      'export type G = typeof a',
      'const h = 1',
      'export { h as i }',
      'export default class {}',
    ]
    const found = unusedWith({ 'src/units/planted.ts': planted.join('\n'), 'src/main.tsx': main(`import '#units/planted.ts'`) })
    expect(found).toEqual(['a', 'b', 'd', 'e', 'F', 'G', 'i', 'default'].map((name) => `src/units/planted.ts ${name}`))
  })

  test('its own file is no user, and neither is a test', () => {
    const planted = { 'src/units/planted.ts': `import { a } from './planted.ts'\nexport const a = 1` }
    expect(unusedWith({ ...planted, 'src/main.tsx': main(`import '#units/planted.ts'`) })).toEqual(['src/units/planted.ts a'])
  })

  test('files that only use each other are seen, and what they alone use', () => {
    const found = unusedWith({
      'src/units/one.ts': `import type { Two } from './two.ts'\nexport const one: Two = 1`,
      'src/units/two.ts': `import { one } from './one.ts'\nimport { three } from './three.ts'\nexport type Two = number\nexport const two = one + three`,
      'src/units/three.ts': 'export const three = 3\nexport const four = 4',
      'src/main.tsx': main(`import { four } from '#units/three.ts'`, 'four'),
    })
    expect(found).toEqual([
      'src/units/one.ts is reached from nowhere',
      'src/units/two.ts is reached from nowhere',
      'src/units/three.ts three',
    ])
  })

  test('a re-export is a use of what it hands on, and has to be used itself', () => {
    const found = unusedWith({
      'src/units/a.ts': 'export const a = 1\nexport const b = 2',
      'src/units/barrel.ts': `export { a, b as c } from './a.ts'`,
      'src/main.tsx': main(`import { a } from '#units/barrel.ts'`, 'a'),
    })
    expect(found).toEqual(['src/units/barrel.ts c'])
  })

  test('every way of using one is known', () => {
    const source = (name: string) => `export const ${name} = 1\nexport const unused = 2`
    const found = unusedWith({
      'src/units/a.ts': source('byName'),
      'src/units/b.ts': source('asAnother'),
      'src/units/c.ts': 'export type OnlyType = 1\nexport type InType = 2\nexport type Unused = 3',
      'src/units/d.ts': source('ofAll'),
      'src/units/e.ts': source('later'),
      'src/units/f.ts': source('thenTaken'),
      'src/units/g.ts': 'export default 1',
      'src/units/h.ts': `export * from './i.ts'`,
      'src/units/i.ts': source('throughStar'),
      'src/units/w.worker.ts': `import { byWorker } from './x.ts'\npostMessage(byWorker)`,
      'src/units/x.ts': source('byWorker'),
      'src/main.tsx': main(
        `import { byName } from '#units/a.ts'`,
        `import { asAnother as another } from '#units/b.ts'`,
        `import type { OnlyType } from '#units/c.ts'`,
        `import * as all from '#units/d.ts'`,
        `const { later } = await import('#units/e.ts')`,
        `const thenTaken = import('#units/f.ts').then((module) => module.thenTaken)`,
        `import g from '#units/g.ts'`,
        `import { throughStar } from '#units/h.ts'`,
        `const worker = new Worker(new URL('./units/w.worker.ts', import.meta.url))`,
        `const typed: import('#units/c.ts').InType & OnlyType = [byName, another, all.ofAll, later, thenTaken, g, throughStar, worker]`,
      ),
    })
    expect(found).toEqual(
      ['a', 'b', 'c', 'd', 'e', 'f', 'i', 'x'].map((file) => `src/units/${file}.ts ${file === 'c' ? 'Unused' : 'unused'}`),
    )
  })
})
