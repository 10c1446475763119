/** Samples with silence before and after, so that a window may reach beyond both ends at no cost to each read. */
export function padded(samples: Float32Array, before: number, after: number): Float32Array {
  const out = new Float32Array(before + samples.length + after)
  out.set(samples, before)
  return out
}
