import { describe, expect, it } from 'vitest'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { editBlocksOf } from '#plan/edits.ts'
import { decodeLink } from '#plan/link/decodeLink.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { open, seal } from '#plan/link/envelope.ts'
import { pack as packFormat1 } from '#plan/link/format1/pack.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { countedIds } from '#tests/support/smallRide.ts'

const ride = demoRide('spark')
const picky = { ...ride, avoidMoves: ['jump', 'travel-back', 'Käfer'] }

describe('a link of format 2', () => {
  it('is written only where format 1 does not hold the ride', () => {
    expect(encodeLink(ride)).toMatch(/^r1\./)
    expect(encodeLink(picky)).toMatch(/^r2\./)
    expect(encodeLink({ ...ride, avoidMoves: undefined })).toBe(encodeLink(ride))
  })

  it('gives the ride back with what it gained', () => {
    expect(decodeLink(encodeLink(picky))).toStrictEqual({ ok: true, ride: picky })
  })

  it('gives every block back the total its leader rides, parts of sets too', () => {
    const own = (place: number) => ({ ...ride, sections: withOwnTotal(ride, place, 9) })
    const places = blocksOf(ride).length
    for (const place of [0, 7, places - 1]) {
      const link = encodeLink(own(place))
      expect(link).toMatch(/^r2\./)
      expect(decodeLink(link)).toStrictEqual({ ok: true, ride: own(place) })
    }
    const set = groupIntoSet(ride, {
      ids: ride.sections[0]!.blocks.slice(0, 2).map(({ id }) => id),
      rounds: 2,
      newId: countedIds('set'),
    }).apply(ride)
    const inSet = { ...set, sections: withOwnTotal(set, 1, -1) }
    expect(decodeLink(encodeLink(inSet))).toStrictEqual({ ok: true, ride: inSet })
  })

  it('is damaged where its first part is cut, is no JSON, or names what a ride has not', () => {
    const bytesOf = (text: string) => [...new TextEncoder().encode(text)]
    const rest = [...packFormat1(ride)]
    const link = (first: number[], length = first.length) => seal(Uint8Array.from([length, ...first, ...rest]), 2)
    const damaged = decodeLink(link([], 120).slice(0, 60))
    expect(damaged.ok).toBe(false)
    for (const text of ['{"avoidMoves":', 'null', '7']) {
      expect(decodeLink(link(bytesOf(text)))).toMatchObject({
        ok: false,
        problems: [{ sentence: 'This link is damaged; ask for it again.' }],
      })
    }
    expect(decodeLink(link(bytesOf('{"title":"another","__proto__":{"x":1}}')))).toStrictEqual({ ok: true, ride })
    expect(decodeLink(link(bytesOf('{"avoidMoves":[7]}')))).toMatchObject({ ok: false, problems: [{ path: 'avoidMoves[0]' }] })
    expect(decodeLink(link(bytesOf('{"ownTotals":{"0":0.5}}')))).toMatchObject({
      ok: false,
      problems: [{ path: 'sections[0].blocks[0].ownTotal' }],
    })
    expect(decodeLink(link(bytesOf('{"ownTotals":{"9999":2}}')))).toStrictEqual({ ok: true, ride })
    expect(decodeLink(link(bytesOf('{"ownTotals":3}')))).toStrictEqual({ ok: true, ride })
    const payload = open(encodeLink(ride))
    expect(payload.ok && decodeLink(seal(payload.payload, 2)).ok).toBe(false)
  })
})

const blocksOf = ({ sections }: Ride) => sections.flatMap(({ blocks }) => blocks).flatMap((item) => (isSet(item) ? item.parts : [item]))

/** The sections with one block's leader on another total, by its place among all blocks. */
function withOwnTotal(ride: Ride, place: number, ownTotal: number) {
  let at = 0
  return ride.sections.map((section) => editBlocksOf(section, (block) => (at++ === place ? { ...block, ownTotal } : block)))
}
