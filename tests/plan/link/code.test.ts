import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bitReader, bitWriter } from '#plan/link/format1/bits.ts'
import { bestCode, readCode, readNumber, writeCode, writeNumber } from '#plan/link/format1/code.ts'
import { readVarint, writeVarint } from '#plan/link/varint.ts'

const bitsOf = (write: (to: ReturnType<typeof bitWriter>) => void) => {
  const to = bitWriter()
  write(to)
  return to
    .bytes()
    .map((byte) => byte.toString(2).padStart(8, '0'))
    .join('')
}

describe('whole numbers in bits', () => {
  it('by Rice: so many ones, a zero, the low bits', () => {
    const code = { rice: true, shift: 0, low: 2 }
    expect(bitsOf((to) => writeNumber(to, 9, code))).toBe('11001000')
    expect(bitsOf((to) => writeNumber(to, 18, { ...code, shift: 1 }))).toBe('11001000')
  })

  it('by Elias: as many zeros as the number has bits behind its first', () => {
    expect(bitsOf((to) => writeNumber(to, 4, { rice: false, shift: 0, low: 0 }))).toBe('00101000')
    expect(bitsOf((to) => writeNumber(to, 0, { rice: false, shift: 0, low: 0 }))).toBe('10000000')
  })

  const list = fc.array(
    fc.oneof(
      fc.nat(9),
      fc.nat(4000),
      fc.maxSafeNat().map((value) => Math.floor(value / 2)),
      fc.nat(60).map((eights) => eights * 8),
    ),
    { minLength: 1, maxLength: 30 },
  )

  it('come back as they were, in the code found best for them', () => {
    fc.assert(
      fc.property(list, (values) => {
        const code = bestCode(values)
        const to = bitWriter()
        writeCode(to, code)
        for (const value of values) writeNumber(to, value, code)
        const from = bitReader(Uint8Array.from(to.bytes()))
        expect(readCode(from)).toEqual(code)
        expect(values.map(() => readNumber(from, code))).toEqual(values)
      }),
    )
  })

  it('come back from close under a power of two, where the logarithm rounds up', () => {
    for (const value of [2 ** 52 - 12, 2 ** 51 - 1, 2 ** 50 - 1, 2 ** 49]) {
      const code = { rice: false, shift: 0, low: 0 }
      const to = bitWriter()
      writeNumber(to, value, code)
      expect(readNumber(bitReader(Uint8Array.from(to.bytes())), code)).toBe(value)
    }
  })

  it('get the code that writes them shortest', () => {
    expect(bestCode([8, 0, 8, 16])).toEqual({ rice: true, shift: 3, low: 0 })
    expect(bestCode([0, 0, 0, 1000])).toMatchObject({ rice: false, low: 0 })
    expect(bestCode([5, 6, 7, 4])).toEqual({ rice: true, shift: 0, low: 2 })
  })
})

describe('whole numbers in bytes', () => {
  it('come back as they were', () => {
    fc.assert(
      fc.property(fc.maxSafeNat(), (value) => {
        const bytes: number[] = []
        writeVarint(bytes, value)
        expect(readVarint(Uint8Array.from(bytes), 0)).toEqual({ value, next: bytes.length })
      }),
    )
  })

  it('end with their bytes and at 2⁵³ − 1', () => {
    expect(readVarint(Uint8Array.of(0x80), 0)).toBeUndefined()
    expect(readVarint(Uint8Array.of(255, 255, 255, 255, 255, 255, 255, 255, 255, 1), 0)).toBeUndefined()
  })
})
