import type * as v from 'valibot'
import { describe, expect, it } from 'vitest'
import { placeOf } from '#plan/document/problemPlaces.ts'
import { problemText } from '#plan/document/problemText.ts'
import { rideSchema } from '#plan/document/schema.ts'
import { wrongIn } from '#plan/document/wrong.ts'
import type { Path } from '#plan/rules/rule.ts'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'
import { tellIn } from '#words/said.ts'

// biome-ignore lint/suspicious/noExplicitAny: schemas are walked by what they happen to hold.
type Loose = any

/** Every place a value of a ride can stand in, once for lists, with each message its schema has. */
function* placesIn(schema: Loose, path: Path = []): Generator<{ path: Path; messages: string[] }> {
  if (schema.choices) {
    for (const choice of schema.choices) yield* placesIn(choice, path)
    return
  }
  if (schema.wrapped) return yield* placesIn(schema.wrapped, path)
  const pipe: Loose[] = schema.pipe ?? [schema]
  yield { path, messages: pipe.flatMap(({ message }) => (typeof message === 'string' ? [message] : [])) }
  if (schema.options) for (const option of schema.options) if (typeof option === 'object') yield* placesIn(option, path)
  for (const [key, value] of Object.entries(schema.entries ?? {})) yield* placesIn(value, [...path, key])
  if (schema.item) yield* placesIn(schema.item, [...path, 0])
  for (const [i, item] of (schema.items ?? []).entries()) yield* placesIn(item, [...path, i])
  if (schema.value) yield* placesIn(schema.value, [...path, 'a rule of the room'])
}

const PLACES = [...placesIn(rideSchema satisfies v.GenericSchema)]

describe('every value of a ride', () => {
  it('is walked to', () => {
    const paths = PLACES.map(({ path }) => path.join('.'))
    for (const path of ['sections.0.blocks.0.parts.0.effort.from', 'riders.0.trials.0.watts', 'bike.points.0.1', 'standIn.room'])
      expect(paths).toContain(path)
    expect(PLACES.length).toBeGreaterThan(150)
  })

  it.each([
    ['English', en, /this entry$/],
    ['German', de, /Eintrag$/],
  ] as const)('has a name of its own in %s', (_, catalogue, unnamed) => {
    for (const { path } of PLACES) {
      // An entry of a list, or of a pair, is named by its number already.
      if (typeof path.at(-1) === 'number') continue
      const name = tellIn(catalogue, placeOf(path, {}))
      expect(name, path.join('.')).not.toMatch(unnamed)
    }
  })

  it.each([
    ['English', en],
    ['German', de],
  ] as const)('says what is wrong with it in %s', (_, catalogue) => {
    for (const { path, messages } of PLACES)
      for (const message of messages) {
        const sentence = tellIn(catalogue, problemText(placeOf(path, {}), wrongIn(message), 14))
        expect(sentence).toMatch(/^\S.*14\.$/u)
        expect(sentence).not.toMatch(/undefined|NaN|object/)
      }
  })
})

describe('in German', () => {
  it('a problem reads from its place to what was found', () => {
    const effort = ['sections', 2, 'blocks', 1, 'effort', 'from']
    const text = problemText(placeOf(effort, {}), { problem: 'between', low: 0, high: 10, unit: undefined }, 14)
    expect(tellIn(de, text)).toBe('Song 3, Block 2, Belastung: muss zwischen 0 und 10 liegen, ist aber 14.')
  })
})
