import { spawnSync } from 'node:child_process'
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { createRequire, SourceMap } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join, relative, resolve } from 'node:path'
import { expect, test } from '@playwright/test'
import { allDrawn, callsIn } from './coverage.ts'
import { NOT_DRAWN } from './exceptions.ts'

/** Runs after the census: what it has not brought to the screen nobody has operated either. */
test('every control of the source was on the screen in the census', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'ridewright-mapped-'))
  try {
    build(folder)
    const drawn = await allDrawn()
    const controls = await controlsOfBuild(folder)
    // A control that is drawn from several places of the built code is there when one of them has run.
    const seen = new Map<string, boolean>()
    for (const { place, script, at } of controls) seen.set(place, seen.get(place) || (drawn.get(script)?.has(at) ?? false))
    test.info().annotations.push({ type: 'controls in the source', description: String(seen.size) })
    expect(seen.size).toBeGreaterThan(200)
    const missing = [...seen].filter(([, wasDrawn]) => !wasDrawn).map(([place]) => place)
    const excused = (place: string) => NOT_DRAWN.some(({ control }) => place.includes(control))
    expect(missing.filter((place) => !excused(place))).toEqual([])
    expect(NOT_DRAWN.filter(({ control }) => !missing.some((place) => place.includes(control)))).toEqual([])
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
})

/** The same build as is tested, with its maps beside it. */
function build(folder: string): void {
  const vite = join(dirname(createRequire(import.meta.url).resolve('vite/package.json')), 'bin/vite.js')
  const words = [vite, 'build', '--outDir', folder, '--emptyOutDir', '--sourcemap', 'hidden', '--logLevel', 'warn']
  const { status } = spawnSync(process.execPath, words, { stdio: 'inherit', env: { ...process.env, NODE_ENV: 'production' } })
  if (status !== 0) throw new Error('The page could not be built with its maps.')
}

interface SourceControl {
  /** File, line and tag: "src/features/drafting/Tray.tsx:30 button". */
  place: string
  script: string
  at: number
}

async function controlsOfBuild(folder: string): Promise<SourceControl[]> {
  const assets = join(folder, 'assets')
  const found: SourceControl[] = []
  const sources = new Map<string, string[]>()
  for (const script of (await readdir(assets)).filter((file) => file.endsWith('.js'))) {
    const code = await readFile(join(assets, script), 'utf8')
    const map = new SourceMap(JSON.parse(await readFile(join(assets, `${script}.map`), 'utf8')))
    for (const at of callsIn(code)) {
      const { line, column } = placeOf(code, at)
      const entry = map.findEntry(line, column)
      if (!('originalSource' in entry)) continue
      const file = relative(process.cwd(), resolve(assets, entry.originalSource))
      if (!/^src\/(app|features)\/.*\.tsx$/.test(file)) continue
      const lines = sources.get(file) ?? (await readFile(file, 'utf8')).split('\n')
      sources.set(file, lines)
      const tag = tagAt(lines, entry.originalLine, entry.originalColumn)
      if (tag && isControl(tag)) found.push({ place: `${file}:${entry.originalLine + 1} ${tag.name}`, script, at })
    }
  }
  return found
}

function placeOf(code: string, at: number): { line: number; column: number } {
  const before = code.slice(0, at)
  return { line: before.split('\n').length - 1, column: at - (before.lastIndexOf('\n') + 1) }
}

interface Tag {
  name: string
  /** Names of what it is given. */
  props: string[]
}

/** The opening tag that begins at a place of the source. */
function tagAt(lines: readonly string[], line: number, column: number): Tag | null {
  const text = [lines[line]!.slice(column), ...lines.slice(line + 1, line + 60)].join('\n')
  const name = /^<([\w.]+)/.exec(text)?.[1]
  if (!name) return null
  const props: string[] = []
  let depth = 0
  for (let i = name.length + 1; i < text.length; i++) {
    const letter = text[i]!
    if (letter === '{') depth++
    else if (letter === '}') depth--
    else if (depth === 0 && letter === '>') break
    else if (depth === 0 && letter === '"') i = text.indexOf('"', i + 1)
    else if (depth === 0) {
      const prop = /^\s([a-zA-Z-]+)(?==|\s|>|\/)/.exec(text.slice(i))?.[1]
      if (prop) props.push(prop)
    }
  }
  return { name, props }
}

const NATIVE = new Set(['a', 'button', 'input', 'select', 'textarea', 'summary'])

/** What answers a hand: by nature, or because it tells somebody when it is used. */
const isControl = ({ name, props }: Tag): boolean => NATIVE.has(name) || props.some((prop) => /^on[A-Z]/.test(prop))
