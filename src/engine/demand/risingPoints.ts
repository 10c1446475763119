import type { Setting, Watts } from '#units/units.ts'

/** What was found at a setting. */
export interface Reading {
  setting: Setting
  watts: Watts
}

interface Pool {
  settings: Setting[]
  sum: Watts
  count: number
}

/**
 * Readings as points of rising settings and watts that never fall. Readings of one setting are
 * averaged; where a higher setting came out lower, the neighbours share their mean, which is
 * the nearest rising line in least squares (pool adjacent violators: Ayer M et al., Ann Math
 * Stat 1955;26(4):641-647, as told by de Leeuw J, Hornik K, Mair P, J Stat Softw 2009;32(5)). Cost: a sort and one pass.
 */
export function risingPoints(readings: readonly Reading[]): [Setting, Watts][] {
  const pools: Pool[] = []
  for (const next of bySetting(readings)) {
    pools.push(next)
    while (pools.length > 1 && mean(pools.at(-2)!) > mean(pools.at(-1)!)) {
      const upper = pools.pop()!
      const lower = pools.pop()!
      pools.push({ settings: [...lower.settings, ...upper.settings], sum: lower.sum + upper.sum, count: lower.count + upper.count })
    }
  }
  return pools.flatMap((pool) => pool.settings.map((setting): [Setting, Watts] => [setting, mean(pool)]))
}

const mean = ({ sum, count }: Pool): Watts => sum / count

function bySetting(readings: readonly Reading[]): Pool[] {
  const pools = new Map<Setting, Pool>()
  for (const { setting, watts } of readings) {
    const pool = pools.get(setting) ?? { settings: [setting], sum: 0, count: 0 }
    pools.set(setting, { ...pool, sum: pool.sum + watts, count: pool.count + 1 })
  }
  return [...pools.values()].sort((a, b) => a.settings[0]! - b.settings[0]!)
}
