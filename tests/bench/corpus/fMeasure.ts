/**
 * Harmonic mean of precision and recall of times against the true ones, each matched at most once within the
 * tolerance; the first seconds are not judged (the usual measure of beat trackers: Davies, Degara and Plumbley 2009,
 * ±70 ms and five seconds). All in seconds, rising. 1 where there is nothing to find and nothing was found.
 */
export function fMeasure(found: readonly number[], truth: readonly number[], tolerance = 0.07, skipped = 5): number {
  const got = found.filter((second) => second >= skipped)
  const wanted = truth.filter((second) => second >= skipped)
  let at = 0
  let hits = 0
  for (const second of wanted) {
    while (at < got.length && got[at]! < second - tolerance) at++
    if (at < got.length && got[at]! <= second + tolerance) {
      hits++
      at++
    }
  }
  return got.length + wanted.length === 0 ? 1 : (2 * hits) / (got.length + wanted.length)
}
