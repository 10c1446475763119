import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Block, Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { say } from '#words/said.ts'

const clocked = (id: string, change: Partial<Block> = {}) => aBlock(id, { ...inSeconds(60), cadence: { rpm: 80 }, ...change })
const online = (blocks: Block[], more: Partial<Ride> = {}): Ride => ({
  ...smallRide(),
  room: 'online',
  slotMinutes: 10,
  sections: [aSection('s', { blocks })],
  ...more,
})
const found = (ride: Ride, rule: string) => computeRide(ride).findings.filter((finding) => finding.rule === rule)
const cue = (text: string, change = {}) => ({ id: `c${text.length}`, moment: 'announce' as const, lead: { seconds: 4 }, text, ...change })

describe('a class to a camera', () => {
  it('gives every change of resistance a feel, from the feel words of the bike or of the ladder', () => {
    const resistance = { kind: 'total', from: 8, to: 8 } as const
    const ride = online([clocked('a'), clocked('b', { resistance })])
    const [finding, ...more] = found(ride, 'feelWithChange')
    expect(more).toEqual([])
    expect(finding).toMatchObject({ blockId: 'b', fixes: [{ label: say('checksCues.sayFeel', { feel: 'solid hill' }) }] })
    expect(found(finding!.fixes[0]!.command.apply(ride), 'feelWithChange')).toEqual([])
    const anchored = { ...ride, bike: { ...ride.bike, feelAnchors: [{ feel: 'wet sand', setting: 4 }] } }
    expect(told(found(anchored, 'feelWithChange')[0]!.fixes[0]!.label)).toBe('Say it feels like “wet sand”')
    expect(found(online([clocked('b', { resistance, cues: [cue('Two on, feels like wet sand.')] })]), 'feelWithChange')).toEqual([])
  })

  it('offers a seat wherever riders stand, beside the option there is', () => {
    const ride = online([clocked('up', { posture: 'standing', easier: { text: 'half the turn' } })])
    const [finding] = found(ride, 'seatedOption')
    const mended = finding!.fixes[0]!.command.apply(ride)
    expect(mended.sections[0]!.blocks[0]).toMatchObject({ easier: { text: 'half the turn; or stay seated' } })
    expect(found(mended, 'seatedOption')).toEqual([])
  })

  it('asks for a feel of new loads alone', () => {
    const at = (steps: number) => ({ kind: 'total', from: steps, to: steps }) as const
    const told = (blocks: Block[]) => found(online(blocks), 'feelWithChange').map(({ blockId }) => blockId)
    const heavy = clocked('heavy', { resistance: at(8), cues: [cue('Two on, thick and heavy.')] })
    const ease = clocked('ease', { terrain: 'recover', effort: { from: 3, to: 3 }, resistance: at(1) })
    // Told once, found again within a step; taken off to go easy.
    expect(told([heavy, ease, clocked('again', { resistance: at(9) })])).toEqual([])
    expect(told([heavy, ease, clocked('new', { resistance: at(10) }), clocked('more', { resistance: at(10) })])).toEqual(['new'])
    expect(told([clocked('off', { cadence: 'legsStill', resistance: at(6) })])).toEqual([])
  })

  it('takes a seat told in a cue, once a song, and asks none of jumps or of a stopped wheel', () => {
    const up = (id: string, change: Partial<Block> = {}) => clocked(id, { posture: 'standing', ...change })
    const asked = (blocks: Block[]) => found(online(blocks), 'seatedOption').map(({ blockId }) => blockId)
    expect(asked([up('a'), up('b'), up('c')])).toEqual(['a'])
    expect(asked([up('a', { cues: [cue('Up, or stay seated.')] }), up('b')])).toEqual([])
    expect(asked([up('a', { cues: [cue('Up, out of the saddle.')] })])).toEqual(['a'])
    // A crossfade that leaves a block no time leaves it no riders either.
    const next = { title: 'next', leadInSeconds: -90, blocks: [clocked('d')] }
    const cut = { ...online([]), sections: [aSection('s', { blocks: [clocked('b'), up('c')] }), aSection('t', next)] }
    expect(found(cut, 'seatedOption')).toEqual([])
    const sat = (text: string) => up('s', { posture: 'seated', cues: [cue(text)] })
    expect(asked([sat('First hill, stay in the saddle.'), up('a')])).toEqual(['a'])
    expect(asked([sat('Up next; stay in the saddle if you like.'), up('a')])).toEqual([])
    expect(asked([up('a', { cues: [cue('Stay in the saddle, any of you.')] })])).toEqual([])
    expect(asked([up('a', { terrain: 'jumps', move: { name: 'jump', counts: 8 } }), up('b', { cadence: 'legsStill' })])).toEqual([])
  })

  it('has no room to walk and nobody to mirror', () => {
    const ride = online([clocked('a', { walk: true }), clocked('b', { cues: [cue('Follow me up.')] })])
    expect(found(ride, 'walkOnline')).toHaveLength(1)
    expect(found(ride, 'mirrorOnline').map(({ text }) => told(text))).toEqual([
      '“Follow me up.” in “b” says “Follow me”; riders at home listen more than they see, so say what to do.',
    ])
    const looks = (text: string) => found(online([clocked('a', { cues: [cue(text)] })]), 'mirrorOnline').length > 0
    expect(['Do it like me.', 'Lean with me, left and right.', 'Watch my hands.'].filter((text) => !looks(text))).toEqual([])
    expect(['Thank you for riding with me.', 'My legs are burning too.', 'Breathe with me: in, and out.'].filter(looks)).toEqual([])
  })

  it('plans the ending off the pedals, both sides as long', () => {
    const stretch = clocked('st', { terrain: 'stretch' })
    const turning = online([clocked('a'), stretch])
    const [finding] = found(turning, 'endsOffPedals')
    const still = finding!.fixes[0]!.command.apply(turning)
    expect(found(still, 'endsOffPedals')).toEqual([])
    const side = (id: string, side: 'left' | 'right', seconds: number) =>
      clocked(id, { terrain: 'stretch', cadence: 'legsStill', length: { seconds }, move: { name: 'stretch', counts: 8, side } })
    expect(found(online([side('l', 'left', 40), side('r', 'right', 20)]), 'stretchSides')[0]).toMatchObject({
      amount: 20,
      text: say('checksCues.stretchSides', { longer: 'left', most: 40, shorter: 'right', least: 20 }),
    })
    expect(found(online([side('l', 'left', 40), side('r', 'right', 40)]), 'stretchSides')).toEqual([])
  })

  it('ends its closing words inside the slot', () => {
    const blocks = [
      clocked('a', inSeconds(590)),
      clocked('b', { ...inSeconds(60), cues: [cue('See you next week, all of you.', { moment: 'story', lead: { seconds: 0 } })] }),
    ]
    const ride = online(blocks)
    const [late] = found(ride, 'closingWords')
    expect(late!.amount).toBe(50)
    expect(told(late!.text)).toBe('“See you next week, all of you.” in “b” ends 50 s after class time is over.')
    expect(found({ ...ride, slotMinutes: 11 }, 'closingWords')).toEqual([])
  })

  it('has a briefing as long as its opening card takes', () => {
    const ride = online([clocked('a')])
    const [finding] = found(ride, 'openingCard')
    expect(told(finding!.fixes[0]!.label)).toMatch(/^Make the welcome \d0|5 s$/)
    expect(found(finding!.fixes[0]!.command.apply(ride), 'openingCard')).toEqual([])
  })

  const RULES = new Set([
    'feelWithChange',
    'seatedOption',
    'walkOnline',
    'mirrorOnline',
    'endsOffPedals',
    'stretchSides',
    'closingWords',
    'openingCard',
  ])

  it('is asked of no class in a room', () => {
    for (const name of ['spark', 'ridge'] as const) {
      const ride = demoRide(name)
      expect(computeRide(ride).findings.filter(({ rule }) => RULES.has(rule))).toEqual([])
      expect(computeRide({ ...ride, room: 'online' }).findings.some(({ rule }) => RULES.has(rule))).toBe(true)
    }
  })

  it('every repair on any ride opens and takes its finding away or makes it smaller', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 4 }), (any) => {
        const ride: Ride = { ...any, room: 'online' }
        for (const { id, rule, amount, fixes } of computeRide(ride).findings.filter((finding) => RULES.has(finding.rule))) {
          for (const { label, command } of fixes) {
            const next = command.apply(ride)
            expect(parseRide(next).ok, `${id}: “${told(label)}” breaks the ride`).toBe(true)
            const left = found(next, rule).find((finding) => finding.id === id)
            if (left) expect(left.amount ?? 1, `${id}: “${told(label)}”`).toBeLessThan(amount ?? 1)
          }
        }
      }),
      { numRuns: 60 },
    )
  })
})
