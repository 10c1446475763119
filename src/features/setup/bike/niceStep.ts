/** A step between marks of an axis that reads well: 1, 2 or 5 times a power of ten, at least the given size. */
export function niceStep(least: number): number {
  if (!(least > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(least))
  return ([1, 2, 5, 10].find((factor) => factor * power >= least * (1 - 1e-9)) ?? 10) * power
}
