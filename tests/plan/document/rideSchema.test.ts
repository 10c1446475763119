import { readFileSync } from 'node:fs'
import Ajv2020 from 'ajv/dist/2020.js'
import fc from 'fast-check'
import type * as v from 'valibot'
import { describe, expect, expectTypeOf, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import type { rideSchema } from '#plan/document/schema.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { rideJsonSchema } from '#tests/support/rideJsonSchema.ts'

const PUBLISHED = 'public/ride.schema.json'

const read = (path: string) => JSON.parse(readFileSync(path, 'utf8'))
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(rideJsonSchema())

/** A type without its unit tags and locks, to compare field by field. */
type Untagged<T> = T extends number ? (number extends T ? number : T) : { -readonly [Key in keyof T]: Untagged<T[Key]> }

it('has the same fields of the same kinds as the model, or this does not compile', () => {
  expectTypeOf<Untagged<v.InferOutput<typeof rideSchema>>>().toEqualTypeOf<Untagged<Ride>>()
})

describe('the published schema', () => {
  it('is what the application reads by (to write it anew: npx vitest run tests/plan/document/rideSchema.test.ts -u)', async () => {
    await expect(`${JSON.stringify(rideJsonSchema(), null, 2)}\n`).toMatchFileSnapshot(`../../../${PUBLISHED}`)
  })

  it('takes the demo rides', () => {
    for (const name of ['twenty-minute-spark', 'ridge-and-return']) {
      validate(read(`public/demo/${name}.ride.json`))
      expect(validate.errors).toBeNull()
    }
  })

  it('takes every ride the application takes', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 3 }), (ride) => {
        validate(ride)
        expect(validate.errors).toBeNull()
      }),
      { numRuns: 60 },
    )
  })

  const demo = () => read('public/demo/twenty-minute-spark.ride.json')
  const BROKEN: [string, (ride: ReturnType<typeof demo>) => void][] = [
    ['no schema number', (ride) => delete ride.schema],
    ['a schema number to come', (ride) => (ride.schema = 3)],
    ['an effort of 11', (ride) => (ride.sections[0].blocks[0].effort.to = 11)],
    ['half a step of resistance', (ride) => (ride.sections[0].blocks[0].resistance.from = 0.5)],
    ['half a count', (ride) => (ride.sections[0].blocks[0].length = { counts: 8.5 })],
    ['no length', (ride) => delete ride.sections[0].blocks[0].length],
    ['an unknown posture', (ride) => (ride.sections[0].blocks[0].posture = 'lying')],
    ['an unknown kind of call', (ride) => (ride.sections[0].blocks[0].resistance = { kind: 'wobble' })],
    ['a set without parts', (ride) => (ride.sections[0].blocks[0] = { id: 'x', rounds: 2, parts: [] })],
    ['a grid of one anchor', (ride) => ride.sections[0].song.grid.anchors.pop()],
    ['three leaders', (ride) => ride.leaders.push({ id: 'third', name: 'Third', wordsPerMinute: 140 })],
    ['an id with a space', (ride) => (ride.sections[0].id = 's 1')],
    ['a bike that brakes by hope', (ride) => (ride.bike.brake = 'hope')],
  ]
  it.each(BROKEN)('refuses what the application refuses: %s', (_, breakIt) => {
    const ride = demo()
    breakIt(ride)
    expect(validate(ride)).toBe(false)
    expect(parseRide(ride).ok).toBe(false)
  })
})
