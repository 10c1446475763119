/**
 * A value with 0 for every −0, which rounding and turning signs give and no file can say. What holds none is the very
 * same object. Cost: that of what is another object than before.
 *
 * @param before what the value was; the same parts are taken as they are
 */
export function plainZeros<Value>(before: unknown, value: Value): Value {
  if (value === before && !Object.is(value, -0)) return value
  if (Object.is(value, -0)) return 0 as Value
  if (typeof value !== 'object' || value === null) return value
  const was = Object(before) as Record<string, unknown>
  const changed = Object.entries(value).flatMap(([key, held]) => {
    const plain: unknown = plainZeros(was[key], held)
    return Object.is(plain, held) ? [] : [[key, plain] as const]
  })
  if (changed.length === 0) return value
  return Object.assign(Array.isArray(value) ? [...value] : { ...value }, Object.fromEntries(changed)) as Value
}
