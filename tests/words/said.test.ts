import { describe, expect, it } from 'vitest'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'
import { setLocale } from '#words/locale.ts'
import { say, tellIn } from '#words/said.ts'

type Tree = { [key: string]: unknown }

describe('a text by its name', () => {
  const text = say('names.setOf', { parts: [say('names.terrain', { terrain: 'push' }), 'Rest'] })

  it('is told in each language, with the texts among its values', () => {
    expect(tellIn(en, text)).toBe('set of push and Rest')
    setLocale('de-DE')
    expect(tellIn(de, text)).toBe('Satz aus Push und Rest')
    setLocale('en-US')
  })

  it('is told the same after it went through a worker or a file', () => {
    expect(tellIn(en, structuredClone(text))).toBe('set of push and Rest')
    expect(tellIn(en, JSON.parse(JSON.stringify(text)))).toBe('set of push and Rest')
  })

  it('is an error in a string, not “[object Object]”', () => {
    expect(() => `${text}`).toThrow('names.setOf')
  })

  it('somebody wrote is told as it stands', () => expect(tellIn(de, 'flat')).toBe('flat'))

  it('keeps a name that runs the other way apart from our words, and no other', () => {
    expect(tellIn(en, say('names.quoted', { name: 'שיר' }))).toBe('“\u2068שיר\u2069”')
    expect(tellIn(en, say('names.list', { items: ['أغنية', 'Low Tide'] }))).toBe('\u2068أغنية\u2069 and Low Tide')
  })
})

describe('the catalogues', () => {
  const paths = (value: object, at = ''): string[] =>
    Object.entries(value).flatMap(([key, entry]) =>
      // How many ways there are to type a thing, and which numbers have words, is each language's own.
      Array.isArray(entry) || /^lineWords\.(numbers|additions)$/.test(`${at}${key}`)
        ? [`${at}${key}: list`]
        : typeof entry === 'object'
          ? paths(entry, `${at}${key}.`)
          : [`${at}${key}: ${typeof entry}`],
    )

  it('have the same entries in every language', () => expect(paths(de).sort()).toEqual(paths(en).sort()))

  it('are translated: no German text of several words is the English one', () => {
    const entry = (catalogue: object, path: string): unknown => path.split('.').reduce((at, key) => at[key] as Tree, catalogue as Tree)
    const same = paths(en)
      .filter((path) => path.endsWith(': string'))
      .map((path) => path.slice(0, path.indexOf(':')))
      .filter((path) => / \w+ /.test(String(entry(en, path))) && entry(en, path) === entry(de, path))
    expect(same).toEqual([])
  })
})
