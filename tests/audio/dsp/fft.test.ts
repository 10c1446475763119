import fc from 'fast-check'
import { expect, it } from 'vitest'
import { makeFft } from '#audio/dsp/fft.ts'

it('the fast transform gives what the sum over all pairs gives, at every size', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })), (bits, numbers) => {
      const size = 2 ** bits
      const re = Float64Array.from({ length: size }, () => numbers.next().value)
      const im = Float64Array.from({ length: size }, () => numbers.next().value)
      const sums = slowTransform(re, im)
      makeFft(size)(re, im)
      for (let k = 0; k < size; k++) {
        expect(re[k]).toBeCloseTo(sums.re[k]!, 10)
        expect(im[k]).toBeCloseTo(sums.im[k]!, 10)
      }
    }),
    { numRuns: 40 },
  )
})

it.each([0, 1, 3, 1000, -8, 2.5])('a size of %d is refused', (size) => {
  expect(() => makeFft(size)).toThrow(RangeError)
})

/** The definition of the discrete Fourier transform. */
function slowTransform(re: Float64Array, im: Float64Array): { re: number[]; im: number[] } {
  const size = re.length
  const at = (k: number, part: (r: number, m: number, cos: number, sin: number) => number) => {
    let sum = 0
    for (let i = 0; i < size; i++) {
      const turn = (2 * Math.PI * ((i * k) % size)) / size
      sum += part(re[i]!, im[i]!, Math.cos(turn), Math.sin(turn))
    }
    return sum
  }
  return {
    re: Array.from(re, (_, k) => at(k, (r, m, cos, sin) => r * cos + m * sin)),
    im: Array.from(re, (_, k) => at(k, (r, m, cos, sin) => m * cos - r * sin)),
  }
}
