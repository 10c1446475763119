import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const rideOf = (blocks: Parameters<typeof aBlock>[1][], change: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  slotMinutes: 10,
  ...change,
  sections: [aSection('s', { blocks: blocks.map((block, i) => aBlock(`b${i + 1}`, { ...inSeconds(60), ...block })) })],
})
const rules = (ride: Ride) => computeRide(ride).findings.map(({ rule }) => rule)
const find = (ride: Ride, rule: string) => computeRide(ride).findings.find((finding) => finding.rule === rule)

describe('what is said of the whole', () => {
  const hard = { effort: { from: 9, to: 9 } }

  it('is for later while the ride is far from filling its slot', () => {
    const started = rideOf([hard])
    const whole = computeRide(started).findings.filter(({ later }) => later)
    expect(whole.map(({ rule }) => rule).sort()).toEqual(
      (['coolDown', 'difficultyForLevel', 'warmUp', 'workShare'] as const).filter((rule) => rules(started).includes(rule)),
    )
    expect(whole.length).toBeGreaterThan(2)
    expect(find(started, 'slotUnused')).not.toHaveProperty('later')
  })

  it('counts once the ride fills four fifths of its slot, or the share the house has set', () => {
    const most = (seconds: number, houseRules?: Ride['houseRules']) =>
      rideOf([{ ...hard, ...inSeconds(seconds) }], houseRules && { houseRules })
    expect(find(most(479), 'coolDown')?.later).toBe(true)
    expect(find(most(480), 'coolDown')?.later).toBeUndefined()
    expect(find(most(480), 'coolDown')).toBeDefined()
    expect(find(most(301, { filledShare: 50 }), 'coolDown')?.later).toBeUndefined()
  })
})

describe('a ramp that ends easy is stretched so that its easy end is long enough', () => {
  const endingAt = (from: number, to: number) =>
    rideOf([
      { effort: { from: 5, to: 5 }, ...inSeconds(1080) },
      { effort: { from, to }, ...inSeconds(60) },
    ])

  it('by as much as the easy part of it asks for', () => {
    const ride = endingAt(4, 2)
    const finding = find(ride, 'coolDown')!
    expect(told(finding.text)).toBe('The cool-down lasts 30 s; 1:43 is usual for this class.')
    // Half of what is added is easy, and 9 % of it makes the class longer: 72.6 s missing ÷ (0.5 − 0.09).
    expect(finding.proposed.map(({ label }) => told(label))).toEqual(['Extend “b2” by 2:58'])
    expect(find(finding.proposed[0]!.command.apply(ride), 'coolDown')).toBeUndefined()
  })

  it('but not where most of it is hard', () => {
    expect(find(endingAt(8, 2), 'coolDown')?.proposed).toEqual([])
  })
})

describe('the very start of a ride', () => {
  const cue = (id: string, counts: number, moment: Cue['moment'] = 'announce'): Cue => ({
    id,
    moment,
    lead: { counts },
    text: 'Half a turn on and hands wide now.',
  })
  const ABOUT_TIME = ['cueLate', 'cueRoom', 'cueCollisions', 'unannounced', 'tooMuchTalk', 'quietKept']
  const start = (briefingSeconds: number, cues: Cue[]) => {
    const song = aSong('tune', { quiet: [{ from: 0, to: 32 }] })
    const first = aBlock('first', { resistance: { kind: 'change', mode: 'exact', steps: 2 }, cues })
    return { ...smallRide(), briefingSeconds, sections: [aSection('s', { song, blocks: [first] })] }
  }

  it('has no time before it, so nothing is said of when its words come', () => {
    for (const cues of [[], [cue('a', 0), cue('b', 0), cue('c', 4)]]) {
      expect(rules(start(0, cues)).filter((rule) => ABOUT_TIME.includes(rule))).toEqual([])
    }
  })

  it('has time before it after a briefing', () => {
    expect(rules(start(60, []))).toContain('unannounced')
    expect(rules(start(60, [cue('a', 0), cue('b', 0)]))).toEqual(expect.arrayContaining(['cueLate', 'cueCollisions']))
  })
})

describe('the trade’s cautions', () => {
  const hard = { effort: { from: 8, to: 8 } }

  it('come to a beginner class with its first hard effort, and to no other', () => {
    expect(find(rideOf([{}, hard], { level: 'beginner' }), 'newcomers')).toMatchObject({ severity: 'hint', at: 60 })
    expect(rules(rideOf([{}], { level: 'beginner' }))).not.toContain('newcomers')
    expect(rules(rideOf([{}, hard], { level: 'mixed' }))).not.toContain('newcomers')
  })

  it('come with the first all-out effort, once', () => {
    const ride = rideOf([{}, { ...hard, allOut: true }, {}, { ...hard, allOut: true }])
    const found = computeRide(ride).findings.filter(({ rule }) => rule === 'allOutCare')
    expect(found.map(({ blockId }) => blockId)).toEqual(['b2'])
    expect(told(found[0]!.text)).toContain('chest pain')
    expect(rules(demoRide('ridge'))).not.toContain('allOutCare')
  })
})

describe('the leader’s own total', () => {
  const range = { resistance: { kind: 'total' as const, from: 12, to: 16 } }

  it('is noticed outside the range the class is told, and brought to its nearer end', () => {
    const ride = rideOf([{ ...range, ownTotal: 22 }])
    const finding = find(ride, 'ownTotals')!
    expect(finding).toMatchObject({ severity: 'hint', amount: 6 })
    expect(told(finding.text)).toContain('at 5½ while the class is told 3–4')
    const next = finding.proposed[0]!.command.apply(ride)
    expect(next.sections[0]!.blocks[0]).toMatchObject({ ownTotal: 16 })
    expect(rules(next)).not.toContain('ownTotals')
    expect(find(rideOf([{ ...range, ownTotal: 10 }]), 'ownTotals')?.proposed.map(({ label }) => told(label))).toEqual(['Ride it at 3'])
  })

  it('may lie anywhere inside it, and beside a single total', () => {
    expect(rules(rideOf([{ ...range, ownTotal: 15 }]))).not.toContain('ownTotals')
    expect(rules(rideOf([{ resistance: { kind: 'total', from: 12, to: 12 }, ownTotal: 16 }]))).not.toContain('ownTotals')
  })
})
