import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readFont } from '#tests/support/readFont.ts'
import { ROOT, readRepositoryFile, repositoryFiles } from '#tests/support/repositoryFiles.ts'

const FILES = [...readRepositoryFile('src/ui/fonts.css').matchAll(/url\("(@fontsource[^"]+)"\)/g)].map((match) =>
  join(ROOT, 'node_modules', match[1]!),
)
const fonts = FILES.map(readFont)
/** Characters the font lacks and the page shows all the same, in the system's font: each set with its reason. */
const BORROWED = [
  { characters: '⅓⅔⅙⅚⅛⅜⅝⅞', reason: 'settings of bikes with three, six or eight steps a turn; rare, and never mixed into a word' },
  { characters: '←→↑↓⌘⇧', reason: 'the names of keys, as they stand on the keys' },
]
const isBorrowed = (character: string) => BORROWED.some(({ characters }) => characters.includes(character))
const hasGlyph = (character: string) => fonts.some((font) => font.characters.has(character.codePointAt(0)!))

test('the font has every character that instructors’ figures and words need', () => {
  const needed = [...'0123456789½¼¾+−–—×·•“”‘’…°%']
  expect(needed.filter((character) => !hasGlyph(character))).toEqual([])
})

test('no text the page shows uses a character the font lacks: a symbol is drawn, not typed', () => {
  const missing = repositoryFiles('src')
    // What a parser reads is typed by others, in whatever characters they have.
    .filter((path) => /\.tsx?$/.test(path) && !/\/parse\w+\.ts$|^src\/formats\//.test(path))
    .flatMap((path) =>
      [...charactersOfText(readRepositoryFile(path))]
        .filter((character) => !hasGlyph(character) && !isBorrowed(character))
        .map((character) => `${path}: ${character}`),
    )
  expect(missing).toEqual([])
})

test('every file of the font has the same measures, so mixed words stand level', () => {
  for (const { unitsPerEm, capitalHeight } of fonts) expect([unitsPerEm, capitalHeight]).toEqual([1000, 668])
})

/** Characters beyond ASCII in a source file, its comments left out. */
function charactersOfText(source: string): Set<string> {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '')
  return new Set([...code].filter((character) => character.codePointAt(0)! > 0x7e))
}
