/** Steps as part of a whole: their shares, 0 to 1, become `from` to `from + share`. */
export function* scaled<T>(steps: Generator<number, T>, from: number, share: number): Generator<number, T> {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
    yield from + step.value * share
  }
}
