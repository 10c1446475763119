import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { folded, foundBy, spelledOut } from '#plan/search/folded.ts'
import { thingsIn, usesIn } from '#plan/search/things.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'

describe('what a text is found by', () => {
  it.each([
    ['Don’t — Stop!', 'dont stop'],
    ['Café Ünder Straße', 'cafe under strasse'],
    ['Łódź, Ærø', 'lodz aero'],
    ['夜 市', '夜 市'],
  ])('%s', (text, found) => expect(folded(text)).toBe(found))

  it('has umlauts both ways, and what is nothing but signs as it stands', () => {
    expect(foundBy('Übung')).toBe('ubung uebung')
    expect(foundBy('U\u0308bung')).toBe('ubung uebung')
    expect(foundBy('Blue Train')).toBe('blue train')
    expect(foundBy(' ??? ')).toBe('???')
    expect(spelledOut('MÜLLER')).toBe('mueller')
  })
})

describe('what a ride can be searched for', () => {
  const spark = demoRide('spark')

  it('has every song, set, block and part of it, each where it stands', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        const things = thingsIn(ride)
        const at = (...kinds: string[]) => things.filter(({ kind }) => kinds.includes(kind)).map(({ spot }) => spot.id)
        expect(at('song')).toEqual(ride.sections.map(({ id }) => id))
        const items = ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => ('parts' in item ? [item, ...item.parts] : [item])))
        expect(at('block', 'set').sort()).toEqual(items.map(({ id }) => id).sort())
      }),
    )
  })

  it('has a move once for each song, with how often, and words with the field they stand in', () => {
    const things = thingsIn(spark)
    const roll = things.find(({ kind, text }) => kind === 'move' && text === 'shoulder roll')!
    expect(roll.spot.id).not.toBeNull()
    expect(things.filter(({ kind }) => kind === 'cue').every(({ text, spot }) => spot.words === String(text).trim())).toBe(true)
    expect(things.find(({ kind, text }) => kind === 'note' && text === spark.aim)?.spot.id).toBeNull()
  })

  it('for other rides has own words alone, each once', () => {
    const uses = usesIn(spark)
    const keys = uses.map(({ kind, text, also }) => `${kind} ${foundBy(text)} ${also}`)
    expect(new Set(keys).size).toBe(keys.length)
    expect(uses.filter(({ kind }) => kind === 'song').map(({ text }) => text)).toEqual(
      spark.sections.map(({ song, title }) => title ?? song!.title),
    )
  })
})
