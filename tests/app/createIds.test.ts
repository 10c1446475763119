import { describe, expect, it } from 'vitest'
import { createIds } from '#app/createIds.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { blankRide } from '#plan/newRide.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'

const fillWith = (value: number) => (bytes: Uint8Array<ArrayBuffer>) => bytes.fill(value)

describe('createIds', () => {
  it('never makes one id twice', () => {
    const newId = createIds((bytes) => crypto.getRandomValues(bytes))
    expect(new Set(Array.from({ length: 5000 }, newId)).size).toBe(5000)
  })

  it('differs from page to page by its beginning', () => {
    expect(createIds(fillWith(1))()).not.toBe(createIds(fillWith(2))())
  })

  it('makes ids a ride may have, whatever is drawn', () => {
    for (const value of [0, 31, 255]) {
      const ride = blankRide({ newId: createIds(fillWith(value)), title: '' })
      expect(decodeLink(encodeLink(ride))).toEqual({ ok: true, ride })
    }
  })
})
