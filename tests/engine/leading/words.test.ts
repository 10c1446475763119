import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { speechSeconds } from '#engine/cues/speechRate.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import { clockWords } from '#engine/leading/clockWords.ts'
import { closingWords } from '#engine/leading/closingWords.ts'
import { cueDueAt } from '#engine/leading/cueDueAt.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { logOf, planOf } from '#tests/support/leading.ts'
import { told } from '#tests/support/told.ts'

it('says where the class stands in plain words', () => {
  const words = (behind: number, spare: number) => told(clockWords({ behind, spare }))
  expect(words(0, 23.7)).toBe('24 s to spare')
  expect(words(4.9, 77)).toBe('1:17 to spare')
  expect(words(240, -162.7)).toBe('4:00 behind, 2:43 over class time')
  expect(words(-70, 147)).toBe('1:10 ahead, 2:27 to spare')
  expect(words(0, 0.4)).toBe('ends on time')
  expect(words(0, -0.4)).toBe('ends on time')
})

it('closes so that the last word ends with the riding, inside the slot', () => {
  for (const name of ['ridge', 'spark'] as const) {
    const plan = planOf({ ...demoRide(name), clearUpSeconds: 10 })
    const { from, to, text } = closingWords(ledClass(plan, logOf()))
    expect(to).toBe(plan.report.sections.at(-1)!.to)
    expect(to - from).toBeCloseTo(speechSeconds(utteranceOf(text), 140 / 60, constantsOf(plan.ride)), 9)
    expect(to).toBeLessThan(plan.ride.slotMinutes * 60)
  }
})

describe('the words that are due', () => {
  const line = (from: number, to: number, change: number, moment: 'announce' | 'form' | 'action' = 'announce') =>
    ({ from, to, change, moment }) as Parameters<typeof cueDueAt>[0][number]
  const lines = [line(10, 14, 18), line(16, 17, 18), line(20, 24, 30, 'form'), line(30, 30, 30, 'action')]

  it('stand from their first word until the change, the later line over the earlier', () => {
    const due = (at: number) => cueDueAt(lines, at).cue
    expect([9.9, 10, 15.9, 16, 17.9, 18].map(due)).toEqual([undefined, 0, 0, 1, 1, undefined])
    expect([20, 23.9, 24].map(due)).toEqual([2, 2, undefined])
    expect([29.9, 30, 31.9, 32].map(due)).toEqual([undefined, 3, 3, undefined])
  })

  it('come in every class at the very moment the plan places them', () => {
    const { report } = planOf(demoRide('ridge'))
    for (const { from } of report.cues.lines) {
      const { cue } = cueDueAt(report.cues.lines, from)
      expect(report.cues.lines[cue!]!.from).toBe(from)
    }
  })
})
