import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hitsOf } from '#features/search/matcher.ts'
import { type Findable, MOST, ranked } from '#features/search/ranked.ts'
import { foundBy } from '#plan/search/folded.ts'

const item = (text: string, rest: Partial<Findable> = {}): Findable => ({ id: text, group: 'elsewhere', text: foundBy(text), ...rest })
const found = (items: readonly Findable[], query: string) =>
  ranked(
    items,
    items.map(({ text }) => text),
    query,
  )
const names = (items: readonly Findable[], query: string) => found(items, query).flatMap((group) => group.items.map(({ id }) => id))

describe('what fits a query', () => {
  const fits = (text: string, query: string) => hitsOf([foundBy(text)], query).length > 0

  it.each([
    ['Slow Ferry', 'ferry slow'],
    ['Müller', 'mueller'],
    ['Müller', 'muller'],
    ['Mueller', 'Müller'],
    ['Schlussanstieg', 'anstieg'],
    ['Straße', 'strasse'],
    ['Don’t Stop', "don't"],
    ['Stop -Go', 'Stop -Go'],
    ['Ночь', 'ноч'],
    ['夜市', '市'],
    ['???', '??'],
    ['Iron Lullaby', 'lulaby'],
  ])('%s by %s', (text, query) => expect(fits(text, query)).toBe(true))

  it.each([
    ['blue', 'blu e'],
    ['cut', 'cue'],
    ['Slow Ferry', 'slow train'],
    ['jump', ''],
  ])('but not %s by %s', (text, query) => expect(fits(text, query)).toBe(query === 'blu e'))

  it('forgives a slip only where nothing has the words as they are', () => {
    expect(names([item('Iron Lullaby'), item('Lulaby')], 'lulaby')).toEqual(['Lulaby'])
  })

  it('is found by the whole of it, whatever it is', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 80 }),
        fc.array(fc.string(), { maxLength: 20 }),
        (text, others) => {
          fc.pre(text.trim() !== '')
          const texts = [...others, text].map(foundBy)
          expect(hitsOf(texts, text).map(({ index }) => index)).toContain(others.length)
        },
      ),
    )
  })
})

describe('the list', () => {
  it('has the start before a word and a word before the middle', () => {
    const items = [item('Schlusssprint'), item('Letzter Sprint'), item('Sprint am Berg')]
    expect(
      hitsOf(
        items.map(({ text }) => text),
        'sprint',
      ).map(({ fit }) => fit),
    ).toEqual([2, 1, 0])
    expect(names(items, 'sprint')).toEqual(['Sprint am Berg', 'Letzter Sprint', 'Schlusssprint'])
  })

  it('keeps the order it is given among equals: this ride before others, recent before old', () => {
    expect(names([item('climb one'), item('climb two'), item('climb three')], 'climb')).toEqual(['climb one', 'climb two', 'climb three'])
    expect(found([item('climb'), item('climb here', { group: 'here' })], 'climb').map(({ group }) => group)).toEqual(['here', 'elsewhere'])
  })

  it('puts what cannot be done behind what can, and help behind both', () => {
    const items = [
      item('undo', { group: 'actions', blocked: true }),
      item('undo it', { group: 'handbook' }),
      item('the undoing', { group: 'songs' }),
    ]
    expect(found(items, 'undo').map(({ group }) => group)).toEqual(['songs', 'actions', 'handbook'])
  })

  it('is never longer than its headings allow, and says how much there is', () => {
    const many = Array.from({ length: 500 }, (_, index) =>
      item(`jump ${index}`, { group: (['actions', 'here', 'rides', 'elsewhere', 'songs'] as const)[index % 5]! }),
    )
    const groups = found(many, 'jump')
    expect(groups.every(({ items }) => items.length <= MOST)).toBe(true)
    expect(groups.reduce((sum, { total }) => sum + total, 0)).toBe(500)
  })
})
