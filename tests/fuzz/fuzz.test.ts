import { expect, it } from 'vitest'
import { readBackup } from '#plan/kept/backup.ts'
import { SEED } from '#tests/support/seed.ts'
import { fuzz } from './fuzz.ts'

const CASES = 1500

it('hostile links and files give a reason or a ride that keeps the rules, and touch nothing that is saved', async () => {
  // A failure names the number that makes its case again.
  const { broken, opened, refused } = await fuzz(SEED, CASES)
  expect(broken).toEqual([])
  expect(opened + refused).toBe(CASES)
  // Both happen often, or the cases are no test of either.
  expect(Math.min(opened, refused)).toBeGreaterThan(CASES / 50)
})

it('a backup that holds something nested without end is read for the rest of it', () => {
  const deep = JSON.parse(`${'['.repeat(50_000)}${']'.repeat(50_000)}`)
  const read = readBackup({ ridewright: 'backup', backup: 1, rides: [{ updated: 1, ride: deep }], versions: [deep], profiles: [deep] })
  expect(read).toMatchObject({ ok: true, unreadable: 3 })
})
