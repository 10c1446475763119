import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, relative, sep } from 'node:path'
import type { Page } from '@playwright/test'
import type { Plugin } from 'vite'

/**
 * Which controls of the source have been drawn. Whatever answers a hand is given something to do (`onClick`, `onChange`,
 * `onCommit` …); the build that the census looks at notes each such place as it is drawn, and changes nothing else.
 */

/** A property that is told of a hand. */
const TELLS = /(?<=\s)on[A-Z]\w*(?==)/g

/** Sources whose controls are counted: the places and the shell. What they are made of is operated with them. */
const COUNTED = /^src\/(app|features)\/.*\.tsx$/

/** Every place of a source file that is told of a hand: "src/features/drafting/Tray.tsx:30 onClick". */
export const placesIn = (file: string, code: string): string[] =>
  [...code.matchAll(TELLS)].map(({ index, 0: name }) => placeAt(file, code, index, name))

const placeAt = (file: string, code: string, index: number, name: string): string =>
  `${file}:${code.slice(0, index).split('\n').length} ${name}`

/** Makes the page note what it draws. */
export function noteWhatIsDrawn(root: string): Plugin {
  return {
    name: 'ridewright:note-what-is-drawn',
    enforce: 'pre',
    transform(code, id) {
      const file = fileOf(root, id)
      if (!COUNTED.test(file)) return null
      const noted = code.replace(
        TELLS,
        (name, index: number) => `{...globalThis.noteDrawn?.(${JSON.stringify(placeAt(file, code, index, name))})} ${name}`,
      )
      return { code: noted, map: null }
    },
  }
}

const fileOf = (root: string, id: string): string => relative(root, id.split('?')[0]!).replaceAll(sep, '/')

/** All places there are. */
export async function allPlaces(root: string): Promise<string[]> {
  const files = (await readdir(join(root, 'src'), { recursive: true }))
    .map((file) => `src/${file.replaceAll(sep, '/')}`)
    .filter((file) => COUNTED.test(file))
  const found = await Promise.all(files.map(async (file) => placesIn(file, await readFile(join(root, file), 'utf8'))))
  return found.flat().sort()
}

/** To be put into a page before it is loaded; what was drawn before a reload is not forgotten. */
export function noteDrawnInPage(): void {
  const key = 'census.drawn'
  // A page that is none of ours has nothing to note, and no storage.
  if (!location.protocol.startsWith('http')) return
  const drawn = new Set<string>(JSON.parse(sessionStorage.getItem(key) ?? '[]'))
  Object.assign(globalThis, { drawn, noteDrawn: (place: string) => void drawn.add(place) })
  addEventListener('pagehide', () => sessionStorage.setItem(key, JSON.stringify([...drawn])))
}

/** Adds what a page has drawn so far. */
export async function addDrawn(page: Page, drawn: Set<string>): Promise<void> {
  const places = await page.evaluate(() => [...((globalThis as unknown as { drawn?: Set<string> }).drawn ?? [])])
  for (const place of places) drawn.add(place)
}

/** What a run of the census has seen so far comes together here: a worker that takes over from one that failed goes on with it. */
const folder = () => join(tmpdir(), `ridewright-census-${process.env.RIDEWRIGHT_RUN}`)

type Kind = 'drawn' | 'known'

export async function keep(kind: Kind, part: string, seen: ReadonlySet<string>): Promise<void> {
  await mkdir(folder(), { recursive: true })
  await writeFile(join(folder(), `${kind} ${part}.json`), JSON.stringify([...seen]))
}

/** What was kept of a part before; nothing at its start. */
export async function keptOf(kind: Kind, part: string): Promise<string[]> {
  return JSON.parse(await readFile(join(folder(), `${kind} ${part}.json`), 'utf8').catch(() => '[]'))
}

export async function drawnByAll(): Promise<Set<string>> {
  const files = (await readdir(folder()).catch(() => [])).filter((file) => file.startsWith('drawn '))
  const kept = await Promise.all(files.map(async (file) => JSON.parse(await readFile(join(folder(), file), 'utf8')) as string[]))
  return new Set(kept.flat())
}
