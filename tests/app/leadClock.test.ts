import { expect, it } from 'vitest'
import { createLeadClock } from '#app/leadClock.ts'

function clocks() {
  const at = { mono: 1000, wall: 1_000_000 }
  const clock = createLeadClock({ timeOrigin: 999_000, now: () => at.mono, wall: () => at.wall })
  return {
    clock,
    pass: (mono: number, wall = mono) => {
      at.mono += mono
      at.wall += wall
      return clock.instantOf(at.mono)
    },
  }
}

it('puts a timestamp on the calendar, fractions kept', () => {
  const { clock } = clocks()
  expect(clock.instantOf(16.625)).toBe(999_016.625)
})

it('does not follow a wall clock that is set, drifts or goes back', () => {
  const { pass } = clocks()
  expect(pass(1000, 1900)).toBe(1_001_000)
  expect(pass(1000, -5_000_000)).toBe(1_002_000)
  for (let i = 0; i < 3600; i++) pass(1000, 1000.5)
  expect(pass(0)).toBe(1_002_000 + 3_600_000)
})

it('begins at the wall where the page’s origin does not know of a sleep', () => {
  const clock = createLeadClock({ timeOrigin: 900_000, now: () => 1000, wall: () => 1_000_000.5 })
  expect(clock.instantOf(1000)).toBe(1_000_000.5)
})

it('goes on while the machine sleeps, which the page’s own clock does not', () => {
  const { pass, clock } = clocks()
  expect(pass(10, 60_010)).toBe(1_060_010)
  expect(pass(1000)).toBe(1_061_010)
  expect(clock.instantOf(clock.now())).toBe(1_061_010)
})
