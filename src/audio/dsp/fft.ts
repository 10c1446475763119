/** A discrete Fourier transform of one size, in place on the real and imaginary halves of its values. */
export type Fft = (re: Float64Array, im: Float64Array) => void

/**
 * The fast transform of a power of two: radix 2, decimation in time (Cooley and Tukey 1965), with its tables made
 * once. Forward, not scaled. A transform of n values takes n·log₂ n steps.
 *
 * @throws RangeError when the size is no power of two of at least 2
 */
export function makeFft(size: number): Fft {
  const bits = Math.log2(size)
  if (size < 2 || !Number.isInteger(bits)) throw new RangeError(`A transform of ${size} values is not of a power of two.`)
  const mirrored = new Uint32Array(size)
  for (let i = 1; i < size; i++) mirrored[i] = (mirrored[i >> 1]! >> 1) | ((i & 1) << (bits - 1))
  const cos = Float64Array.from({ length: size / 2 }, (_, i) => Math.cos((2 * Math.PI * i) / size))
  const sin = Float64Array.from({ length: size / 2 }, (_, i) => -Math.sin((2 * Math.PI * i) / size))

  return (re, im) => {
    for (let i = 0; i < size; i++) {
      const j = mirrored[i]!
      if (j <= i) continue
      const r = re[i]!
      const m = im[i]!
      re[i] = re[j]!
      im[i] = im[j]!
      re[j] = r
      im[j] = m
    }
    for (let half = 1, stride = size / 2; half < size; half *= 2, stride /= 2) {
      for (let start = 0; start < size; start += 2 * half) {
        for (let k = 0, t = 0; k < half; k++, t += stride) {
          const a = start + k
          const b = a + half
          const r = re[b]! * cos[t]! - im[b]! * sin[t]!
          const m = re[b]! * sin[t]! + im[b]! * cos[t]!
          re[b] = re[a]! - r
          im[b] = im[a]! - m
          re[a]! += r
          im[a]! += m
        }
      }
    }
  }
}
