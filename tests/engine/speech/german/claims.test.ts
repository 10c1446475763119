import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'
import type { Finding } from '#engine/report.ts'
import { german } from '#engine/speech/german/german.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { eveningRide } from '#tests/engine/cues/claims/spoken/spokenRides.ts'
import { GERMAN, REPAIRED, type Said, SILENT } from './sentences.ts'

const RIDE: Ride = { ...eveningRide(), language: 'de' }

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => ('parts' in item ? item.parts : [item])))

/** The ride with one cue in it, and no other. */
function saying({ block: id, moment = 'announce', lead = 4 }: Said, text: string): Ride {
  const copy = structuredClone(RIDE)
  const block = blocksOf(copy).find((one) => one.id === id)!
  const cue: Cue = { id: 'c', moment, lead: 'seconds' in block.length ? { seconds: lead } : { counts: lead }, text }
  Object.assign(block, { cues: [cue] })
  return copy
}

const noticed = (said: Said, text: string): Finding | undefined =>
  computeRide(saying(said, text)).findings.find(({ rule }) => rule === 'cueNumbers')

describe('numbers in German cues', () => {
  it('are more than a hundred and twenty sentences', () => {
    expect(GERMAN.flatMap(({ right = [], wrong = [] }) => [...right, ...wrong]).length).toBeGreaterThanOrEqual(120)
    expect(SILENT.length).toBeGreaterThanOrEqual(60)
  })

  it('that hold are left alone', () => {
    const flagged = GERMAN.flatMap((said) =>
      (said.right ?? []).filter((text) => noticed(said, text)).map((text) => `${said.block}: ${text}`),
    )
    expect(flagged).toEqual([])
  })

  it('that hold are understood, and not only left alone', () => {
    const unread = GERMAN.flatMap(({ right = [] }) => right.filter((text) => claimsIn(text, 'turn', german).length === 0))
    expect(unread).toEqual([])
  })

  it('that do not hold are told', () => {
    const missed = GERMAN.flatMap((said) =>
      (said.wrong ?? []).filter((text) => !noticed(said, text)).map((text) => `${said.block}: ${text}`),
    )
    expect(missed).toEqual([])
  })

  it('that claim nothing are not read', () => {
    const read = SILENT.flatMap((text) =>
      claimsIn(text, 'turn', german).map(({ from, to, meanings }) => `${text}: ${text.slice(from, to)} ${meanings[0].about}`),
    )
    expect(read).toEqual([])
  })

  it.each(['build', 'climb', 'push2', 'rest1', 'hop'])('that claim nothing give no alarm at %s', (block) => {
    expect(SILENT.filter((text) => noticed({ block }, text))).toEqual([])
  })
})

describe('repairs of German cues', () => {
  it.each(REPAIRED)('at %s: %s', (block, wrong, right) => {
    const finding = noticed({ block }, wrong)!
    const [fix] = finding?.fixes ?? []
    const text = fix && blocksOf(fix.command.apply(saying({ block }, wrong))).find(({ id }) => id === block)!.cues[0]!.text
    expect(text ?? null).toBe(right)
  })
})
