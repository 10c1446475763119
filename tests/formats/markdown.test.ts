import fc from 'fast-check'
import { lexer, parseInline, type Tokens } from 'marked'
import { expect, test } from 'vitest'
import { escapeMarkdown, markdownTable } from '#formats/markdown/markdown.ts'

/** The words a reader sees: the text of what a renderer makes of it, its own escapes for HTML undone. */
const seen = (html: string) =>
  html.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&')

test('text says the same after a renderer has read it', () => {
  const marks = fc.string({ unit: fc.constantFrom(...'ab*_`[]()<>#|~\\&!-1.'), minLength: 1, maxLength: 20 })
  fc.assert(
    fc.property(marks, (text) => {
      expect(seen(parseInline(escapeMarkdown(text)) as string)).toBe(text)
    }),
  )
})

test('a table is read back as its cells', () => {
  const rows = [
    ['1½', 'Half | turn `on`'],
    ['2', '*Sit*, then_go'],
  ]
  const table = lexer(markdownTable(['total', 'words'], rows, new Set([0])))[0] as Tokens.Table
  expect(table.type).toBe('table')
  expect(table.align).toEqual(['right', null])
  expect(
    table.rows.map((cells) => cells.map(({ tokens }) => seen(tokens.map((token) => ('text' in token ? token.text : token.raw)).join('')))),
  ).toEqual(rows)
})

test.each(['- no list', '1. no list', '+ no list'])('%s', (text) => {
  const [token] = lexer(escapeMarkdown(text))
  expect(token!.type).toBe('paragraph')
})
