import process from 'node:process'
import { afterEach, expect, it } from 'vitest'
import { isoDay } from '#app/isoDay.ts'

const own = process.env.TZ
afterEach(() => {
  if (own === undefined) delete process.env.TZ
  else process.env.TZ = own
})

it('is the day on the wall: an evening in the west is not yet tomorrow, a morning in the east no longer yesterday', () => {
  const evening = Date.UTC(2026, 10, 26, 1, 30)
  process.env.TZ = 'America/Denver'
  expect(isoDay(evening)).toBe('2026-11-25')
  process.env.TZ = 'Pacific/Auckland'
  expect(isoDay(Date.UTC(2026, 10, 24, 20))).toBe('2026-11-25')
})
