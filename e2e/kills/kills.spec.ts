import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { killAgainAndAgain, type Pace, sayTotals } from '#e2e/support/killing.ts'

/** How often, and how old a lost edit may be, in milliseconds. `KILLS=10` makes ten of each. */
const RUNS: readonly { pace: Pace; kills: number; oldest: number }[] = [
  { pace: 'apart', kills: Number(process.env.KILLS ?? 60), oldest: 500 },
  { pace: 'steady', kills: Number(process.env.KILLS ?? 30), oldest: 1000 },
]

for (const { pace, kills, oldest } of RUNS) {
  test(`${kills} kills while edits are made, ${pace}`, async ({ baseURL }) => {
    const profile = await mkdtemp(join(tmpdir(), 'ridewright-kills-'))
    try {
      const totals = await killAgainAndAgain(profile, baseURL!, { kills, pace })
      console.log(sayTotals(pace === 'apart' ? 'edits more than a second apart' : 'steady editing', totals))
      expect(totals.ridesLost).toBe(0)
      expect(totals.notReopened).toBe(0)
      expect(totals.oldestLost).toBeLessThanOrEqual(oldest)
    } finally {
      await rm(profile, { recursive: true, force: true })
    }
  })
}
