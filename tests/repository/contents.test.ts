import { expect, test } from 'vitest'
import { readRepositoryFile, repositoryFiles, topLevelNames } from '#tests/support/repositoryFiles.ts'

/** Besides the names that start with a dot. */
const TOP_LEVEL = [
  ...['src', 'public', 'tests', 'e2e'],
  ...['index.html', 'package.json', 'package-lock.json', 'vite.config.ts', 'tsconfig.json', 'biome.json'],
  ...['README.md', 'DEVELOPERS.md', 'LICENSE'],
]

/** Files of src that are longer than a file should be, each with what makes it one thing that does not come apart. */
const LONG_FILES: Record<string, string> = {
  'src/plan/document/schema.ts': 'one document, read from top to bottom',
  'src/plan/line/saidIn.ts': 'one pass over the words of a line, whose readers share where they stand',
}
const LONG = 300

const PICTURES = /\.(png|woff2|ico|wav|mp3|ogg|flac)$/
const texts = repositoryFiles().filter((path) => !PICTURES.test(path))

test('the top level holds what belongs there and nothing else', () => {
  const visible = topLevelNames().filter((name) => !name.startsWith('.'))
  expect(visible.sort()).toEqual([...TOP_LEVEL].sort())
})

test('no file names a folder of somebody’s machine', () => {
  const machinePath = /(?<![\w.:/])\/(home|root|work|Users)\/\w/
  expect(texts.filter((path) => machinePath.test(readRepositoryFile(path)))).toEqual([])
})

test('no file names a package registry, the lock file least of all', () => {
  const registryHost = /\bregistry\.[a-z]|npm\.pkg\.|"resolved"\s*:/
  expect(texts.filter((path) => registryHost.test(readRepositoryFile(path)))).toEqual([])
})

test('a file of src has at most 300 lines, or a reason', () => {
  const long = texts.filter((path) => path.startsWith('src/') && readRepositoryFile(path).split('\n').length > LONG + 1)
  expect(long.filter((path) => !(path in LONG_FILES))).toEqual([])
  expect(Object.keys(LONG_FILES).filter((path) => !texts.includes(path))).toEqual([])
})

test('README opens with what the tool is for, in one paragraph', () => {
  const [heading, blank, opening = '', after] = readRepositoryFile('README.md').split('\n')
  expect([heading, blank, after]).toEqual(['# Ridewright', '', ''])
  expect(opening).toMatch(/^[A-Z].*instructor.*\.$/)
  expect(opening.split(' ').length).toBeGreaterThan(40)
})

test.each(['README.md', 'DEVELOPERS.md'])('what %s points at exists', (guide) => {
  const text = readRepositoryFile(guide)
  const linked = [...text.matchAll(/\]\((?!https?:|#)([^)#]+)\)/g)].map((match) => match[1])
  const scripts = Object.keys(JSON.parse(readRepositoryFile('package.json')).scripts)
  const named = [...text.matchAll(/`npm (?:run )?([\w:]+)/g)].map((match) => match[1])
  expect(linked.filter((path) => !repositoryFiles().includes(path!))).toEqual([])
  expect(named.filter((name) => name !== 'install' && name !== 'ci' && !scripts.includes(name!))).toEqual([])
})
