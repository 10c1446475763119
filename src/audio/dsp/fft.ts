/** A discrete Fourier transform of one size, in place on the real and imaginary halves of its values. */
type Fft = (re: Float64Array, im: Float64Array) => void

/**
 * The fast transform of a power of two: radix 2, decimation in time (Cooley and Tukey 1965), two of its rounds made as
 * one while that goes, with its tables made once. Forward, not scaled. A transform of n values takes n·log₂ n steps.
 *
 * @throws RangeError when the size is no power of two of at least 2
 */
export function makeFft(size: number): Fft {
  const bits = Math.log2(size)
  if (size < 2 || !Number.isInteger(bits)) throw new RangeError(`A transform of ${size} values is not of a power of two.`)
  const mirrored = new Uint32Array(size)
  for (let i = 1; i < size; i++) mirrored[i] = (mirrored[i >> 1]! >> 1) | ((i & 1) << (bits - 1))
  const cos = Float64Array.from({ length: size }, (_, i) => Math.cos((2 * Math.PI * i) / size))
  const sin = Float64Array.from({ length: size }, (_, i) => -Math.sin((2 * Math.PI * i) / size))

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
    let half = 1
    if (bits % 2 === 1) {
      twos(re, im)
      half = 2
    }
    for (; half < size; half *= 4) fours(re, im, half, cos, sin)
  }
}

/** The first round alone: sums and differences of neighbours. */
function twos(re: Float64Array, im: Float64Array): void {
  for (let a = 0; a < re.length; a += 2) {
    const r = re[a + 1]!
    const m = im[a + 1]!
    re[a + 1] = re[a]! - r
    im[a + 1] = im[a]! - m
    re[a]! += r
    im[a]! += m
  }
}

/** Two rounds at once: transforms of `half` values become transforms of four times as many. */
function fours(re: Float64Array, im: Float64Array, half: number, cos: Float64Array, sin: Float64Array): void {
  const size = re.length
  const stride = size / (4 * half)
  for (let k = 0; k < half; k++) {
    const c1 = cos[k * stride]!
    const s1 = sin[k * stride]!
    const c2 = cos[2 * k * stride]!
    const s2 = sin[2 * k * stride]!
    const c3 = cos[3 * k * stride]!
    const s3 = sin[3 * k * stride]!
    for (let a = k; a < size; a += 4 * half) {
      const b = a + half
      const c = b + half
      const d = c + half
      const br = re[b]! * c2 - im[b]! * s2
      const bi = re[b]! * s2 + im[b]! * c2
      const cr = re[c]! * c1 - im[c]! * s1
      const ci = re[c]! * s1 + im[c]! * c1
      const dr = re[d]! * c3 - im[d]! * s3
      const di = re[d]! * s3 + im[d]! * c3
      const er = re[a]! + br
      const ei = im[a]! + bi
      const fr = re[a]! - br
      const fi = im[a]! - bi
      const gr = cr + dr
      const gi = ci + di
      const hr = cr - dr
      const hi = ci - di
      re[a] = er + gr
      im[a] = ei + gi
      re[c] = er - gr
      im[c] = ei - gi
      re[b] = fr + hi
      im[b] = fi - hr
      re[d] = fr - hi
      im[d] = fi + hr
    }
  }
}
