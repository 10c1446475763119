import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { callWords } from '#engine/cues/callWords.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'
import { speakingSeconds } from '#engine/cues/speechRate.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import { german } from '#engine/speech/german/german.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { eveningRide } from '#tests/engine/cues/claims/spoken/spokenRides.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'

const TURNS = { unit: 'turn', stepsPerUnit: 4 }
const LEVELS = { unit: 'level', stepsPerUnit: 1 }
const at = (low: number | null, nominal: number, high: number | null) => ({ low, nominal, high })

describe('German numbers', () => {
  it('are said as they are counted', () => {
    expect([0, 1, 7, 12, 16, 17, 20, 21, 30, 45, 77, 100, 101, 120, 999].map(german.numbers.whole)).toEqual([
      ...['null', 'eins', 'sieben', 'zwölf', 'sechzehn', 'siebzehn', 'zwanzig', 'einundzwanzig', 'dreißig', 'fünfundvierzig'],
      ...['siebenundsiebzig', 'hundert', 'hunderteins', 'hundertzwanzig', 'neunhundertneunundneunzig'],
    ])
  })

  it('have halves and quarters of a turn', () => {
    expect([1, 2, 3, 4, 5, 6, 7, 8, 10].map((steps) => german.numbers.size(steps, TURNS))).toEqual([
      ...['eine viertel Umdrehung', 'eine halbe Umdrehung', 'eine dreiviertel Umdrehung', 'eine Umdrehung', 'eineinviertel Umdrehungen'],
      ...['anderthalb Umdrehungen', 'eindreiviertel Umdrehungen', 'zwei Umdrehungen', 'zweieinhalb Umdrehungen'],
    ])
    expect(german.numbers.size(2, LEVELS)).toBe('zwei Stufen')
    expect(german.numbers.size(13, { unit: 'gear', stepsPerUnit: 10 })).toBe('eins Komma drei Stufen')
  })
})

describe('German calls', () => {
  it('say changes, totals, and what is asked', () => {
    const { calls } = german
    expect([2, -4, 0].map((steps) => calls.change(steps, TURNS))).toEqual([
      'eine halbe Umdrehung mehr',
      'eine Umdrehung weniger',
      'Widerstand halten',
    ])
    expect(calls.total(at(12, 14, 16), TURNS, 'base')).toBe('auf drei bis vier')
    expect(calls.total(at(12, 12, null), TURNS, 'base')).toBe('auf mindestens drei')
    expect(calls.total(at(-1, -1, -1), TURNS, 'base')).toBe('auf einviertel unter Grundwiderstand')
    expect(calls.small.total(at(13, 13, null), { stepsPerUnit: 10 })).toBe('1,3 oder mehr')
    expect([3, 1].map(calls.round)).toEqual(['noch drei', 'letzte Runde'])
  })

  it('are those of a German ride', () => {
    const ride = { ...eveningRide(), language: 'de' as const }
    const report = computeRide(ride)
    const called = (id: string) => {
      const { index } = report.blocks.find(({ block }) => block.id === id)!
      return callWords(ride, report.blocks, report.cues.changes.find(({ block }) => block === index)!)
    }
    expect(called('rise')).toBe('Eine halbe Umdrehung mehr. Aufstehen.')
    expect(called('breathe')).toBe('Eineinviertel Umdrehungen weniger. Hinsetzen.')
    expect(called('roll')).toBe('Alles raus.')
  })

  it('are read in German as what they say', () => {
    for (let steps = -40; steps <= 40; steps++) {
      if (steps === 0) continue
      const [claim] = claimsIn(german.calls.change(steps, TURNS), 'turn', german)
      expect(claim?.meanings[0]).toEqual({ about: 'change', low: steps / 4, high: steps / 4 })
    }
  })
})

describe('what German words tell', () => {
  const { told } = german
  it.each(['Trinkt einen Schluck.', 'Wasser!', 'Flasche greifen.', 'Trinken nicht vergessen.'])('a drink: %s', (text) =>
    expect(told.drink(text)).toBe(true),
  )
  it.each(['Gleich könnt ihr trinken.', 'Noch nicht trinken.', 'Glatt wie Wasser.'])('no drink: %s', (text) =>
    expect(told.drink(text)).toBe(false),
  )
  it('the saddle as a choice, as a call, and as a place', () => {
    expect(told.seat('Oder bleib sitzen.')).toBe('always')
    expect(told.seat('Bleib im Sattel.')).toBe('whereRidersStand')
    expect(told.seat('Hinsetzen.')).toBe('never')
    expect(told.seat('Raus aus dem Sattel, wenn du kannst.')).toBe('never')
  })
  it('what resistance feels like, and not what hands do', () => {
    expect(['Schwer, aber rund.', 'Wie nasser Sand.', 'Du kannst noch plaudern.'].every(told.feel)).toBe(true)
    expect(['Hände locker.', 'Lockere Schultern.', 'Blick nach vorn.'].some(told.feel)).toBe(false)
  })
})

describe('how long German words take, against a synthesiser at the same rate', () => {
  const { sets }: { sets: Record<'fitted' | 'held', [string, number][]> } = JSON.parse(
    readFileSync(join(import.meta.dirname, 'measured.json'), 'utf8'),
  )
  const rules = constantsOf(eveningRide())
  const off = (set: [string, number][]) =>
    set.map(([text, seconds]) => speakingSeconds(utteranceOf(text, german), 140 / 60, rules) / seconds - 1)
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

  it('is told to 8 % on average and without bias, of cues nothing was fitted to', () => {
    expect(mean(off(sets.held).map(Math.abs))).toBeLessThan(0.08)
    expect(Math.abs(mean(off(sets.held)))).toBeLessThan(0.02)
  })

  it.each([
    ['beine', 2],
    ['häuser', 2],
    ['euer', 2],
    ['frei', 1],
    ['quer', 1],
    ['widerstand', 3],
    ['umdrehung', 3],
    ['fünfundvierzig', 4],
    ['rpm', 3],
    ['ride', 1],
  ])('%s has %i syllables', (word, syllables) => expect(german.sounds.syllables(word)).toBe(syllables))

  it('says figures as words', () => {
    for (const [figures, words] of [
      ['45', 'fünfundvierzig'],
      ['2,5', 'zwei komma fünf'],
      ['50 %', 'fünfzig prozent'],
      ['1½', 'eins einhalb'],
    ] as const)
      expect(utteranceOf(figures, german).syllables).toBeCloseTo(utteranceOf(words, german).syllables, 9)
  })
})

it('a ride is spoken in English unless it says otherwise', () => {
  expect([{}, { language: 'en' as const }, { language: 'de' as const }].map((ride) => speechOf(ride).language)).toEqual(['en', 'en', 'de'])
})

it('any ride can be spoken in German, with the same times and totals', () => {
  fc.assert(
    fc.property(arbitraryRide({ sections: 2, items: 3 }), (ride) => {
      const [english, spoken] = [computeRide(ride), computeRide({ ...ride, language: 'de' })]
      expect(spoken.blocks.map(({ from, to, ledger }) => [from, to, ledger.after])).toEqual(
        english.blocks.map(({ from, to, ledger }) => [from, to, ledger.after]),
      )
      expect(spoken.findings.map(({ text }) => text)).not.toContain(undefined)
    }),
    { numRuns: 40 },
  )
})
