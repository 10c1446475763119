import { execFileSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { ROOT } from '#tests/support/repositoryFiles.ts'

/** What each folder may import beside its own files: the table of DEVELOPERS.md, written down a second time on purpose. */
const ALLOWED: Record<string, string[]> = {
  units: ['units'],
  plan: ['units', 'plan', 'valibot', 'fflate'],
  engine: ['units', 'plan', 'engine'],
  audio: ['units', 'plan', 'audio', 'music-metadata'],
  'audio/dsp': ['units', 'plan'],
  formats: ['units', 'plan', 'formats'],
  storage: ['units', 'plan', 'storage', 'idb'],
  store: ['units', 'plan', 'engine', 'store', 'zustand', 'zustand/vanilla', 'react', 'react/jsx-runtime'],
  actions: ['actions', 'store', 'ui', 'react', 'react/jsx-runtime'],
  'actions/keys': [],
  ui: ['ui', 'react', 'react/jsx-runtime', '@fontsource-variable/atkinson-hyperlegible-next'],
  ...Object.fromEntries(
    featureNames().map((feature) => [
      `features/${feature}`,
      [
        'units',
        'plan',
        'engine',
        'store',
        'ui',
        'actions',
        `features/${feature}`,
        'react',
        'react/jsx-runtime',
        ...(feature === 'drafting' ? ['downshift'] : []),
        ...(feature === 'search' ? ['downshift', '@leeoniya/ufuzzy'] : ['recharts', '@dnd-kit/core', '@dnd-kit/utilities']),
      ],
    ]),
  ),
}

const FOLDERS = [
  'units',
  'plan',
  'engine',
  'audio',
  'formats',
  'storage',
  'store',
  'ui',
  'actions',
  'app',
  ...featureNames().map((name) => `features/${name}`),
]
const PACKAGES = [
  'react',
  'react/jsx-runtime',
  'react-dom',
  'react-dom/client',
  'recharts',
  '@dnd-kit/core',
  '@dnd-kit/utilities',
  'zustand',
]
const MORE_PACKAGES = [
  'downshift',
  '@leeoniya/ufuzzy',
  'music-metadata',
  'zustand/vanilla',
  'idb',
  'fflate',
  'valibot',
  'node:fs',
  '@fontsource-variable/atkinson-hyperlegible-next',
]
const OWN = ['./near.ts', './deeper/near.ts']
const UPWARDS = ['../far.ts', './../far.ts', './deeper/../../far.ts']

/** Every address a file could import, told apart from what is written in it. */
const ADDRESSES = [...FOLDERS.map((folder) => `#${folder}/thing.ts`), ...PACKAGES, ...MORE_PACKAGES, ...OWN, ...UPWARDS]
const PURE = ['units', 'plan', 'engine', 'audio/dsp', 'formats', 'actions/keys']

const clones: string[] = []
afterAll(() => {
  for (const clone of clones) rmSync(clone, { recursive: true, force: true })
})

test('an import that the table does not allow is refused in every folder, and the others pass', () => {
  const planted = Object.keys(ALLOWED).map(
    (folder) => [`src/${folder}/planted.ts`, ADDRESSES.map((address) => `import '${address}'`)] as const,
  )
  const refused = lint(Object.fromEntries(planted), 'lint/style/noRestrictedImports')
  for (const [folder, allowed] of Object.entries(ALLOWED)) {
    const wanted = ADDRESSES.filter((address) => !OWN.includes(address) && !allowed.includes(address.replace(/^#(.*)\/thing\.ts$/, '$1')))
    const seen = (refused[`src/${folder}/planted.ts`] ?? []).map((line) => ADDRESSES[line - 1])
    expect(seen, `src/${folder}`).toEqual(wanted)
  }
})

test('types, re-exports and imports at run time are held to the same table', () => {
  const lines = [`import type { A } from '#store/a.ts'`, `export { b } from '#store/b.ts'`, `export const c = import('#store/c.ts')`]
  expect(lint({ 'src/engine/planted.ts': lines }, 'lint/style/noRestrictedImports')).toEqual({ 'src/engine/planted.ts': [1, 2, 3] })
})

test('nothing in app or the tests imports upwards', () => {
  const lines = UPWARDS.map((address) => `import '${address}'`)
  const refused = lint(
    { 'src/app/planted.ts': lines, 'src/planted.ts': lines, 'tests/x/planted.ts': lines },
    'lint/style/noRestrictedImports',
  )
  expect(refused).toEqual({ 'src/app/planted.ts': [1, 2, 3], 'src/planted.ts': [1, 2, 3], 'tests/x/planted.ts': [1, 2, 3] })
})

test.each(['import', 'import type'])('a circle of %s is refused', (word) => {
  const files = {
    'src/engine/a.ts': [`${word} { B } from './b.ts'`, 'export type A = typeof B'],
    'src/engine/b.ts': [`${word} { A } from './a.ts'`, 'export type B = typeof A'],
  }
  expect(lint(files, 'lint/suspicious/noImportCycles')).toEqual({ 'src/engine/a.ts': [1], 'src/engine/b.ts': [1] })
})

test.each(PURE)('the clock and chance are refused in %s', (folder) => {
  const path = `src/${folder}/planted.ts`
  const lines = [
    'export const now = Date.now()',
    'export const then = new Date()',
    'export const luck = Math.random()',
    'export const one = Math.min(1, 2)',
  ]
  expect(lint({ [path]: lines }, 'lint/style/noRestrictedGlobals')).toEqual({ [path]: [1, 2] })
  expect(lint({ [path]: lines }, 'lint/nursery/noJsRestrictedProperties')).toEqual({ [path]: [3] })
})

test('code of the pure folders that names the page, a timer or Node does not compile', () => {
  const lines = [
    'export const a = document.title',
    'export const b = setTimeout',
    'export const c = process.env',
    'export const d = [1].at(0)',
  ]
  const files = Object.fromEntries(PURE.map((folder) => [`src/${folder}/planted.ts`, lines]))
  const clone = plant(files, ['tsconfig.json', 'src/tsconfig.pure.json'])
  const output = run('typescript/bin/tsc', ['-p', 'src/tsconfig.pure.json', '--pretty', 'false'], clone)
  const errors = [...output.matchAll(/^src\/([\w/]+)\/planted\.ts\((\d),/gm)].map(([, folder, line]) => `${folder} ${line}`)
  expect(errors.sort()).toEqual(PURE.flatMap((folder) => [`${folder} 1`, `${folder} 2`, `${folder} 3`]).sort())
})

function featureNames(): string[] {
  return readdirSync(join(ROOT, 'src/features'))
}

/** The lines the real lint configuration refuses by one rule, by file, in a folder that holds these files and nothing else. */
function lint(files: Record<string, string[]>, rule: string): Record<string, number[]> {
  const clone = plant(files, ['biome.json', '.gitignore'])
  const output = run('@biomejs/biome/bin/biome', ['lint', '--reporter=json', '--max-diagnostics=none', '.'], clone)
  const { diagnostics } = JSON.parse(output) as { diagnostics: { category: string; location: { path: string; start: { line: number } } }[] }
  const refused: Record<string, number[]> = {}
  for (const { category, location } of diagnostics) {
    if (category === rule) refused[location.path] = [...(refused[location.path] ?? []), location.start.line]
  }
  for (const lines of Object.values(refused)) lines.sort((a, b) => a - b)
  return refused
}

function plant(files: Record<string, string[]>, copies: string[]): string {
  const clone = mkdtempSync(join(tmpdir(), 'ridewright-planted-'))
  clones.push(clone)
  for (const [path, lines] of Object.entries(files)) {
    mkdirSync(dirname(join(clone, path)), { recursive: true })
    writeFileSync(join(clone, path), `${lines.join('\n')}\n`)
  }
  for (const path of copies) {
    mkdirSync(dirname(join(clone, path)), { recursive: true })
    copyFileSync(join(ROOT, path), join(clone, path))
  }
  return clone
}

/** What a tool of node_modules prints; both tools used here exit with an error when they find something, as they should. */
function run(tool: string, words: string[], cwd: string): string {
  try {
    return execFileSync(process.execPath, [join(ROOT, 'node_modules', tool), ...words], {
      cwd,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    })
  } catch (error) {
    return (error as { stdout: string }).stdout
  }
}
