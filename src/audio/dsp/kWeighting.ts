/** A filter of second order: `y = b0·x + b1·x′ + b2·x″ − a1·y′ − a2·y″`, where each prime is one sample earlier. */
interface Biquad {
  b: readonly [number, number, number]
  a: readonly [number, number]
}

/**
 * The analogue filters whose bilinear transforms at 48 kHz are the two that ITU-R BS.1770-5 tabulates (annex 1, tables
 * 1 and 2): the shelf of a head's effect and the high-pass of the revised B-curve. Hz, dB and quality as De Man,
 * "Evaluation of Implementations of the EBU R128 Loudness Measurement" (2018), recovers them from the tables.
 */
const SHELF = { frequency: 1681.974450955533, gain: 3.999843853973347, quality: 0.7071752369554196, middle: 0.4996667741545416 }
const HIGH_PASS = { frequency: 38.13547087602444, quality: 0.5003270373238773 }

/** The shelf and the high-pass of K-weighting for any rate, Hz, of 8000 or more; apply one after the other. */
export function kWeighting(sampleRate: number): [Biquad, Biquad] {
  return [shelf(sampleRate), highPass(sampleRate)]
}

function shelf(sampleRate: number): Biquad {
  const { frequency, gain, quality, middle } = SHELF
  const k = Math.tan((Math.PI * frequency) / sampleRate)
  const high = 10 ** (gain / 20)
  const band = high ** middle
  const scale = 1 + k / quality + k * k
  return {
    b: [(high + (band * k) / quality + k * k) / scale, (2 * (k * k - high)) / scale, (high - (band * k) / quality + k * k) / scale],
    a: [(2 * (k * k - 1)) / scale, (1 - k / quality + k * k) / scale],
  }
}

function highPass(sampleRate: number): Biquad {
  const { frequency, quality } = HIGH_PASS
  const k = Math.tan((Math.PI * frequency) / sampleRate)
  const scale = 1 + k / quality + k * k
  return { b: [1, -2, 1], a: [(2 * (k * k - 1)) / scale, (1 - k / quality + k * k) / scale] }
}
