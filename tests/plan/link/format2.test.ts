import { describe, expect, it } from 'vitest'
import { decodeLink } from '#plan/link/decodeLink.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { open, seal } from '#plan/link/envelope.ts'
import { pack as packFormat1 } from '#plan/link/format1/pack.ts'
import { demoRide } from '#tests/support/demoRides.ts'

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
    const payload = open(encodeLink(ride))
    expect(payload.ok && decodeLink(seal(payload.payload, 2)).ok).toBe(false)
  })
})
