import { expect, it } from 'vitest'
import { fuzz } from './fuzz.ts'

const CASES = 1500

it('hostile links and files give a reason or a ride that keeps the rules, and touch nothing that is saved', async () => {
  // Other cases at every run; a failure names the number that makes its case again.
  const from = Math.floor(Math.random() * 1e9)
  const { broken, opened, refused } = await fuzz(from, CASES)
  expect(broken).toEqual([])
  expect(opened + refused).toBe(CASES)
  // Both happen often, or the cases are no test of either.
  expect(Math.min(opened, refused)).toBeGreaterThan(CASES / 50)
}, 120_000)
