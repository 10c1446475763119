import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Block, Resistance, Ride, Section, Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSet, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const total = (turns: number): Resistance => ({ kind: 'total', from: turns * 4, to: turns * 4 })
const change = (turns: number): Resistance => ({ kind: 'change', mode: 'exact', steps: turns * 4 })
const effort = (level: number) => ({ effort: { from: level, to: level } })
const rideOf = (sections: Section[], more: Partial<Ride> = {}): Ride => ({ ...smallRide(), sections, ...more })
const named = (blocks: Partial<Block>[]): Block[] => blocks.map((block, i) => aBlock(`b${i + 1}`, block))
const under = (blocks: Partial<Block>[], song: Partial<Song> = {}, section: Partial<Section> = {}): Ride => {
  const counts = blocks.reduce((sum, { length }) => sum + (length && 'counts' in length ? length.counts : 64), 0)
  return rideOf([
    aSection('s', { song: aSong('m', { lengthSeconds: counts / 2, ...song }), lead: 'right', blocks: named(blocks), ...section }),
  ])
}
/** By the clock, a minute each at 80 rev/min unless said otherwise. */
const clocked = (blocks: Partial<Block>[], more: Partial<Ride> = {}): Ride =>
  rideOf(
    [aSection('s', { blocks: named(blocks.map((block) => ({ ...inSeconds(60), cadence: { rpm: 80 }, resistance: total(1), ...block }))) })],
    more,
  )

const found = (ride: Ride, rule: string) => computeRide(ride).findings.filter((finding) => finding.rule === rule)
const counts = (n: number): Partial<Block> => ({ length: { counts: n } })

interface Case {
  rule: string
  /** A ride that breaks the rule. */
  broken: Ride
  text: string
  fixes: string[]
  /** One beside it that does not. */
  kept: Ride
}

const CASES: Case[] = [
  {
    rule: 'openTail',
    broken: under([counts(64)], { lengthSeconds: 40 }),
    text: 'Nothing is planned for the last 2 eights of “m”.',
    fixes: ['Extend “b1” by 2 eights', 'End the song with its last block'],
    kept: under([counts(64)]),
  },
  {
    rule: 'beyondOut',
    broken: under([counts(64), counts(32)], {}, { outCount: 80 }),
    text: 'The blocks of “m” run 2 eights past its end point.',
    fixes: ['End the song with its last block', 'Shorten “b2” by 2 eights'],
    kept: under([counts(64), counts(16)], {}, { outCount: 80 }),
  },
  {
    rule: 'deepCrossfade',
    broken: rideOf([
      aSection('a', { blocks: named([inSeconds(60), inSeconds(5)]) }),
      aSection('b', { title: 'next', leadInSeconds: -8, blocks: [aBlock('z', inSeconds(60))] }),
    ]),
    text: 'The crossfade into “next” takes 8 s off song 1, more than its last block.',
    fixes: ['Shorten the crossfade to 5 s'],
    kept: rideOf([
      aSection('a', { blocks: named([inSeconds(60), inSeconds(5)]) }),
      aSection('b', { leadInSeconds: -5, blocks: [aBlock('z', inSeconds(60))] }),
    ]),
  },
  {
    rule: 'outPastSong',
    broken: under([counts(64)], { lengthSeconds: 32 }, { outCount: 72 }),
    text: 'The end point of “m” is 1 eight past the end of the music.',
    fixes: ['End at the last whole eight of the song'],
    kept: under([counts(64)], { lengthSeconds: 32 }, { outCount: 64 }),
  },
  {
    rule: 'nothingRidden',
    broken: under([counts(64)], { lengthSeconds: 120 }, { inCount: 64, outCount: 32 }),
    text: 'Nothing is left of “m” between its start point and its end point.',
    fixes: ['End at the last whole eight of the song'],
    kept: under([counts(64)], { lengthSeconds: 120 }, { inCount: 64 }),
  },
  {
    rule: 'noSections',
    broken: rideOf([]),
    text: 'This ride has no songs yet.',
    fixes: [],
    kept: clocked([{}]),
  },
  {
    rule: 'noBlocks',
    broken: rideOf([aSection('s')]),
    text: 'Song 1 has no blocks yet.',
    fixes: [],
    kept: clocked([{}]),
  },
  {
    rule: 'crookedBlock',
    broken: under([counts(60), counts(64)]),
    text: '“b1” is 7 eights + 4, not whole eights.',
    fixes: ['Make it 8 eights', 'Snap every block of the song to eights'],
    kept: under([counts(56), counts(64)]),
  },
  {
    rule: 'slotOverrun',
    broken: clocked([inSeconds(1260)], { slotMinutes: 20 }),
    text: 'The ride is 1:00 over the class length of 20:00.',
    fixes: [],
    kept: clocked([inSeconds(1200)], { slotMinutes: 20 }),
  },
  {
    rule: 'slotUnused',
    broken: clocked([inSeconds(1000)], { slotMinutes: 20 }),
    text: '3:20 of class time is still empty.',
    fixes: [],
    kept: clocked([inSeconds(1100)], { slotMinutes: 20 }),
  },
  {
    rule: 'warmUp',
    broken: clocked(
      [
        { ...inSeconds(60), ...effort(4) },
        { ...inSeconds(800), ...effort(7) },
        { ...inSeconds(340), ...effort(2) },
      ],
      { slotMinutes: 20 },
    ),
    text: 'The warm-up lasts 1:00; 2:24 is usual for this class.',
    fixes: ['Extend “b1” by 1:36'],
    kept: clocked(
      [
        { ...inSeconds(150), ...effort(4) },
        { ...inSeconds(800), ...effort(7) },
        { ...inSeconds(250), ...effort(2) },
      ],
      { slotMinutes: 20 },
    ),
  },
  {
    rule: 'coolDown',
    broken: clocked(
      [
        { ...inSeconds(1140), ...effort(5) },
        { ...inSeconds(60), ...effort(2) },
      ],
      { slotMinutes: 20 },
    ),
    text: 'The cool-down lasts 1:00; 1:48 is usual for this class.',
    fixes: ['Extend “b2” by 53 s'],
    kept: clocked(
      [
        { ...inSeconds(1080), ...effort(5) },
        { ...inSeconds(120), ...effort(2) },
      ],
      { slotMinutes: 20 },
    ),
  },
  {
    rule: 'workShare',
    broken: clocked(
      [
        { ...inSeconds(500), ...effort(7) },
        { ...inSeconds(500), ...effort(3) },
      ],
      { level: 'mixed' },
    ),
    text: '50% of the riding is at effort 7 or higher; 30% is usual in mixed classes.',
    fixes: [],
    kept: clocked(
      [
        { ...inSeconds(300), ...effort(7) },
        { ...inSeconds(700), ...effort(3) },
      ],
      { level: 'mixed' },
    ),
  },
  {
    rule: 'recoveryDebt',
    broken: clocked(
      [
        { ...inSeconds(40), ...effort(8) },
        { ...inSeconds(15), ...effort(4) },
        { ...inSeconds(60), ...effort(6) },
      ],
      { level: 'mixed' },
    ),
    text: '“b1” is 40 s at effort 8 with 15 s of recovery after it; it needs 40 s.',
    fixes: ['Extend “b2” by 25 s'],
    kept: clocked(
      [
        { ...inSeconds(40), ...effort(8) },
        { ...inSeconds(40), ...effort(4) },
        { ...inSeconds(60), ...effort(6) },
      ],
      { level: 'mixed' },
    ),
  },
  {
    rule: 'recoveriesShrink',
    broken: clocked([20, 80, 30, 60, 40, 45].map((seconds, i) => ({ ...inSeconds(seconds), ...effort(i % 2 === 0 ? 8 : 3) }))),
    text: 'Hard efforts get longer (20 s, 30 s, 40 s) while recoveries get shorter (1:20, 1:00, 45 s).',
    fixes: [],
    kept: clocked([20, 45, 30, 60, 40, 80].map((seconds, i) => ({ ...inSeconds(seconds), ...effort(i % 2 === 0 ? 8 : 3) }))),
  },
  {
    rule: 'longStanding',
    broken: clocked([
      { ...inSeconds(200), posture: 'standing' },
      { ...inSeconds(120), posture: 'standing' },
      { ...inSeconds(60), posture: 'standing' },
    ]),
    text: 'Riders are out of the saddle for 6:20 without sitting down; 5:00 is the most.',
    fixes: ['Keep “b1” seated'],
    kept: clocked([{ ...inSeconds(300), posture: 'standing' }]),
  },
  {
    rule: 'knobLoose',
    broken: clocked([{ resistance: change(-2.25) }]),
    text: '“b1” takes off ¼ turn more than the knob has.',
    fixes: ['Stop at the knob’s minimum'],
    kept: clocked([{ resistance: change(-2) }]),
  },
  {
    rule: 'knobTight',
    broken: clocked([{ resistance: total(18.5) }]),
    text: '“b1” asks for ½ turn more than the knob has.',
    fixes: ['Cap it at the knob’s maximum'],
    kept: clocked([{ resistance: { kind: 'change', mode: 'atLeast', steps: 4 } }]),
  },
  {
    rule: 'checkpointMissed',
    broken: clocked([
      { resistance: total(1) },
      { resistance: { kind: 'change', mode: 'exact', steps: 2, checkpoint: { from: 8, to: 10 } } },
    ]),
    text: '“b2” says riders should be at 2–2½, but the calls lead to 1½: the change is off by +½.',
    fixes: ['Add ½ turn', 'Set the checkpoint to 1½'],
    kept: clocked([{ resistance: total(1) }, { resistance: { kind: 'change', mode: 'exact', steps: 4, checkpoint: { from: 8, to: 10 } } }]),
  },
  {
    rule: 'checkpointLoose',
    broken: clocked([
      { resistance: { kind: 'total', from: 2, to: 8 } },
      { resistance: { kind: 'change', mode: 'exact', steps: 2, checkpoint: { from: 6, to: 12 } } },
    ]),
    text: '“b2” says riders should be at 1½–3; the calls leave them anywhere from 1 to 2½.',
    fixes: [],
    kept: clocked([
      { resistance: { kind: 'total', from: 4, to: 8 } },
      { resistance: { kind: 'change', mode: 'exact', steps: 2, checkpoint: { from: 6, to: 12 } } },
    ]),
  },
  {
    rule: 'underBase',
    broken: clocked([{ resistance: total(-0.5) }]),
    text: '“b1” is ½ turn below base.',
    fixes: ['Add ½ turn'],
    kept: clocked([{ resistance: total(0) }]),
  },
  {
    rule: 'allOff',
    broken: clocked([{ resistance: { kind: 'allOff' } }]),
    text: '“b1” has no resistance and asks for a cadence: the pedals could run away.',
    fixes: ['Keep it at base'],
    kept: clocked([{ resistance: { kind: 'allOff' }, cadence: 'legsStill' }]),
  },
  {
    rule: 'lightStanding',
    broken: clocked([{ posture: 'standing', resistance: total(0.5) }]),
    text: '“b1” stands at ½ turn over base; it takes at least 1 turn over base for riders to stay in control.',
    fixes: ['Add ½ turn'],
    kept: clocked([{ posture: 'standing', resistance: total(1) }]),
  },
  {
    rule: 'lightPush',
    broken: clocked([{ terrain: 'push', resistance: total(0) }]),
    text: '“b1” goes hard at base; it takes at least 1 turn over base for riders to stay in control.',
    fixes: ['Add 1 turn'],
    kept: clocked([{ terrain: 'flat', resistance: total(0) }]),
  },
  {
    rule: 'lightMove',
    broken: clocked([{ move: { name: 'jumps', counts: 8 }, resistance: total(0.25) }]),
    text: '“b1” jumps at ¼ turn over base; it takes at least 1 turn over base for riders to stay in control.',
    fixes: ['Add ¾ turn'],
    kept: clocked([{ move: { name: 'shoulder roll', counts: 8 }, resistance: total(0.25) }]),
  },
  {
    rule: 'fastLegs',
    broken: clocked([{ cadence: { rpm: 105 }, resistance: total(0) }]),
    text: '“b1” pedals fast at base; it takes at least ¼ turn over base for riders to stay in control.',
    fixes: ['Add ¼ turn'],
    kept: clocked([{ cadence: { rpm: 95 }, resistance: total(0) }]),
  },
  {
    rule: 'largestAdded',
    broken: clocked([{}, { resistance: change(2) }]),
    text: '“b2” adds 2 turns in one call; 1½ turns is the most riders find safely.',
    fixes: ['Take ½ turn off'],
    kept: clocked([{}, { resistance: change(1.5) }]),
  },
  {
    rule: 'easyTotal',
    broken: clocked([{ ...effort(3), resistance: total(1), cadence: { rpm: 60 } }]),
    text: '“b1” is planned at 3 of 10, but its resistance is 1 turn over base; ¾ turn over base is the most for that.',
    fixes: ['Take ¼ turn off'],
    kept: clocked([{ ...effort(4), resistance: total(1) }]),
  },
  {
    rule: 'wideSpread',
    broken: clocked([{ ...inSeconds(250), resistance: { kind: 'total', from: 0, to: 13 } }]),
    text: 'For 4:10 riders may be 3¼ turns apart; say where they should be.',
    fixes: ['Call where to be: 0'],
    kept: clocked([{ ...inSeconds(240), resistance: { kind: 'total', from: 0, to: 13 } }]),
  },
  {
    rule: 'openEnd',
    broken: clocked([{ ...inSeconds(250), resistance: { kind: 'change', mode: 'atLeast', steps: 4 } }, { resistance: change(-0.5) }]),
    text: '“b2” builds on “1 or more”, which has been open for 4:10; say where riders should be.',
    fixes: ['Call where to be: ½'],
    kept: clocked([{ ...inSeconds(240), resistance: { kind: 'change', mode: 'atLeast', steps: 4 } }, { resistance: change(-0.5) }]),
  },
  {
    rule: 'endsHeavy',
    broken: clocked([{ resistance: total(0.75) }]),
    text: 'The class ends ¾ turn over base; ½ turn over base or less lets the legs roll out.',
    fixes: ['Take ¼ turn off'],
    kept: clocked([{ resistance: total(0.5) }]),
  },
  {
    rule: 'cadenceBounds',
    broken: under([{ posture: 'standing', resistance: total(1.5) }], { grid: gridOfTempo(184) }),
    text: '“b1” is ridden standing at 92 rpm; 60–85 rpm is usual standing.',
    fixes: ['Ride it seated'],
    kept: under([{ posture: 'standing', resistance: total(1.5) }], { grid: gridOfTempo(170) }),
  },
  {
    rule: 'cadenceUnknown',
    broken: under([{ strikesPerBeat: null }]),
    text: '“b1” is off the beat and no cadence is set.',
    fixes: ['Ride it on the beat', 'Ride it at 80 rpm'],
    kept: under([{ strikesPerBeat: null, cadence: { rpm: 70 } }]),
  },
  {
    rule: 'offBeatCadence',
    broken: under([{ cadence: { rpm: 64 } }]),
    text: '“b1” is set to 64 rpm, but on this beat the legs turn at 60 rpm.',
    fixes: ['Ride it on the beat', 'Mark it off the beat'],
    kept: under([{ cadence: { rpm: 63 } }]),
  },
  {
    rule: 'footFlips',
    broken: under([counts(63), counts(65)]),
    text: 'The left foot lands on beat 1 of “b2”: “b1” has an odd number of strokes.',
    fixes: ['Lead with the right foot'],
    kept: under([counts(62), counts(66)]),
  },
  {
    rule: 'noFootOnOne',
    broken: under([counts(63), counts(65)], { strikesPerBeat: 0.5 }),
    text: 'No foot lands on beat 1 of “b2”: the block before it leaves the feet between two strokes.',
    fixes: ['Lead with the right foot', 'Lead with the left foot'],
    kept: under([counts(62), counts(66)], { strikesPerBeat: 0.5 }),
  },
  {
    rule: 'leadOpen',
    broken: under([counts(64), { strikesPerBeat: null, cadence: { rpm: 70 } }, counts(64)]),
    text: 'The lead foot of “b3” is open: the block before it leaves the beat.',
    fixes: ['Lead with the right foot', 'Lead with the left foot'],
    kept: under([counts(64), { strikesPerBeat: null, cadence: { rpm: 70 } }, { ...counts(64), lead: 'left' }]),
  },
  {
    rule: 'leadUnset',
    broken: under([{ ...counts(64), move: { name: 'jumps', counts: 8 } }], {}, { lead: undefined }),
    text: 'No lead foot is set for “m”, so the accents of “b1” count for neither leg.',
    fixes: ['Lead with the right foot', 'Lead with the left foot'],
    kept: under([{ ...counts(64), move: { name: 'side leans', counts: 8 } }], {}, { lead: undefined }),
  },
  {
    rule: 'sideBalance',
    broken: under([{ ...counts(64), move: { name: 'travel-back', counts: 4 }, resistance: total(2) }]),
    text: 'Accents: 16 on the right foot, 0 on the left.',
    fixes: [],
    kept: under([
      { ...counts(64), move: { name: 'travel-back', counts: 4 } },
      { ...counts(64), lead: 'left', move: { name: 'travel-back', counts: 4 } },
    ]),
  },
  {
    rule: 'holdBalance',
    broken: under([
      { ...counts(384), move: { name: 'single-leg drill', counts: 384, side: 'left' }, resistance: total(2) },
      { ...counts(64), move: { name: 'single-leg drill', counts: 64, side: 'right' } },
    ]),
    text: 'One-sided holds add up to 3:12 on the left and 32 s on the right.',
    fixes: ['Alternate sides in “b1”'],
    kept: under([
      { ...counts(192), move: { name: 'single-leg drill', counts: 192, side: 'left' }, resistance: total(2) },
      { ...counts(192), move: { name: 'single-leg drill', counts: 192, side: 'right' } },
    ]),
  },
  {
    rule: 'handsForPosture',
    broken: clocked([{ posture: 'seated', hands: 'ends' }]),
    text: '“b1” is seated with hands at the ends; that reach is for standing climbs.',
    fixes: ['Hands wide'],
    kept: clocked([{ posture: 'standing', hands: 'ends' }]),
  },
  {
    rule: 'walkMoment',
    broken: clocked([{ ...inSeconds(45), walk: true }]),
    text: '“b1” lasts 45 s; walking the room takes 1:00.',
    fixes: ['Stay on the bike'],
    kept: clocked([{ ...inSeconds(60), walk: true }]),
  },
  {
    rule: 'water',
    broken: clocked([inSeconds(700), inSeconds(700)]),
    text: 'No water break for 23:20. In a warm room, sooner is better.',
    fixes: ['Drink in “b2”'],
    kept: clocked([inSeconds(700), { ...inSeconds(700), water: true }]),
  },
  {
    rule: 'hearing',
    broken: clocked([inSeconds(5000)], { room: 'studio', slotMinutes: 90 }),
    text: 'At the 93.1 dB measured in such classes, 74 minutes are a day’s worth of noise; keep the music down.',
    fixes: [],
    kept: clocked([inSeconds(5000)], { room: 'online', slotMinutes: 90 }),
  },
  {
    rule: 'briefing',
    broken: clocked([inSeconds(900)], { level: 'beginner', slotMinutes: 20 }),
    text: 'Newcomers need the brake, their base, and the bike setup explained before the first song.',
    fixes: ['Add a welcome of 2:30'],
    kept: clocked([inSeconds(900)], { level: 'beginner', slotMinutes: 20, briefingSeconds: 60 }),
  },
]

describe.each(CASES)('$rule', ({ rule, broken, text, fixes, kept }) => {
  it('is said once, with its place, its source and its repairs', () => {
    const findings = found(broken, rule)
    expect(findings.map((finding) => told(finding.text))).toEqual([text])
    expect(findings[0]!.proposed.map(({ label }) => told(label))).toEqual(fixes)
    expect(told(findings[0]!.why)).not.toBe('')
  })

  it('is not said of a ride that keeps to it', () => {
    expect(found(kept, rule)).toEqual([])
  })

  it('is mended by each repair', () => {
    for (const { command } of found(broken, rule)[0]!.proposed) {
      const left = found(command.apply(broken), rule)[0]
      if (left) expect(left.amount).toBeLessThan(found(broken, rule)[0]!.amount!)
    }
  })
})

describe('findings', () => {
  it('come in the order of the ride, each id once, and keep their ids while the cause stays', () => {
    const { findings } = computeRide(smallRide())
    expect(findings.map(({ at }) => at)).toEqual(findings.map(({ at }) => at).sort((a, b) => a - b))
    expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length)
    expect(computeRide({ ...smallRide(), title: 'renamed' }).findings.map(({ id }) => id)).toEqual(findings.map(({ id }) => id))
  })

  it('speak once for a part that a set plays several times, of the round that is worst off', () => {
    const part = aBlock('part', { ...inSeconds(60), ...effort(3), resistance: total(1), cadence: { rpm: 60 } })
    const ride = rideOf([aSection('s', { blocks: [aSet('set', [part], { rounds: 3, perRound: { steps: 1 } })] })])
    const [finding, ...others] = found(ride, 'easyTotal')
    expect(others).toEqual([])
    expect(finding).toMatchObject({ amount: 3, block: 2 })
    expect(found(finding!.proposed[0]!.command.apply(ride), 'easyTotal')).toEqual([])
  })

  it('turn the lead foot of the song that evens out the legs best', () => {
    const moves = (id: string, eights: number) =>
      aBlock(id, { ...counts(eights * 8), move: { name: 'travel-back', counts: 8 }, resistance: total(2) })
    const section = (id: string, eights: number) =>
      aSection(id, { song: aSong(id), lead: 'right', outCount: eights * 8, blocks: [moves(`${id}1`, eights)] })
    const ride = rideOf([section('first', 4), section('second', 9), section('third', 6)])
    const [finding] = found(ride, 'sideBalance')
    expect(finding!.proposed.map(({ label }) => told(label))).toEqual(['Lead “second” with the left foot'])
    expect(computeRide(finding!.proposed[0]!.command.apply(ride)).balance).toMatchObject({ right: 10, left: 9 })
  })

  it('even out one-sided holds by the block that does it best, in every round of it', () => {
    const held = (id: string, n: number, side: 'left' | 'right') =>
      aBlock(id, { ...counts(n), move: { name: 'single-leg drill', counts: n, side }, resistance: total(2) })
    const ride = rideOf([
      aSection('s', {
        song: aSong('m', { lengthSeconds: 400 }),
        blocks: [held('a', 128, 'left'), aSet('set', [held('b', 64, 'left')], { rounds: 3 })],
      }),
    ])
    const [finding] = found(ride, 'holdBalance')
    expect(finding).toMatchObject({ severity: 'warning', amount: 1 })
    expect(told(finding!.text)).toBe('One-sided holds add up to 2:40 on the left and none on the right.')
    expect(finding!.proposed.map(({ label }) => told(label))).toEqual(['Alternate sides in “b”', 'Go to the right in “a”'])
    const [turned, other] = finding!.proposed.map(({ command }) => computeRide(command.apply(ride)).balance.holdSeconds)
    expect([turned, other]).toEqual([
      { left: 112, right: 48 },
      { left: 96, right: 64 },
    ])
  })

  it('snap a whole song by the least movement', () => {
    const ride = under([counts(61), counts(66), counts(33)])
    const snap = found(ride, 'crookedBlock')[0]!.proposed[1]!
    expect(snap.command.apply(ride).sections[0]!.blocks.map((item) => 'length' in item && item.length)).toEqual([
      { counts: 64 },
      { counts: 64 },
      { counts: 32 },
    ])
  })

  it('judge turns on a bike with levels by what weighs the same', () => {
    const wheel = {
      ...smallRide().bike,
      unit: 'level',
      stepsPerUnit: 1,
      min: 1,
      max: 24,
      base: 5,
      points: [
        [1, 6],
        [5, 48],
        [12, 170],
        [24, 500],
      ] as [number, number][],
    }
    const at = (level: number) => clocked([{ posture: 'standing', resistance: { kind: 'total', from: level, to: level } }], { bike: wheel })
    // One turn over base of the knob is 110 W: level 8.6, to the nearest step 4 over base.
    expect(told(found(at(3), 'lightStanding')[0]!.text)).toContain('at least 4 levels over base')
    expect(found(at(4), 'lightStanding')).toEqual([])
  })
})

it('a repair of the cadence holds in every round of a set, whatever the tempo there', () => {
  // Slow at first, then fast: double time would be too quick for the second round.
  const grid = {
    anchors: [
      [0, 0],
      [32, 32],
      [64, 44],
    ] as [number, number][],
    beatsPerBar: 4 as const,
  }
  const set = aSet('set', [aBlock('part', counts(32))], { rounds: 2 })
  const rides = [grid, gridOfTempo(60)].map((beat) =>
    rideOf([aSection('s', { song: aSong('m', { grid: beat, lengthSeconds: 64 }), lead: 'right', blocks: [set] })]),
  )
  expect(rides.map((ride) => found(ride, 'cadenceBounds')[0]!.proposed.map(({ label }) => told(label)))).toEqual([
    [],
    ['Ride it in double time'],
  ])
})

it('a recovery in rounds is not lengthened by counts where the song’s tempo changes: rounds that move would last another time', () => {
  const rounds = (song: Partial<Song>) =>
    rideOf(
      [
        aSection('s', {
          song: aSong('m', song),
          lead: 'right',
          blocks: [
            aSet(
              'set',
              named([
                { ...counts(80), ...effort(8) },
                { ...counts(16), ...effort(3) },
              ]),
              { rounds: 3 },
            ),
          ],
        }),
      ],
      { level: 'mixed' },
    )
  const labels = (ride: Ride) => found(ride, 'recoveryDebt').flatMap(({ fixes }) => fixes.map(({ label }) => told(label)))
  expect(labels(rounds({ grid: gridOfTempo(120) }))).toContain('Extend “b2” by 8 eights')
  const changing: Song['grid'] = { anchors: [[0, 0], [96, 48], [300, 250]], beatsPerBar: 4 } // biome-ignore format: one row
  expect(found(rounds({ grid: changing }), 'recoveryDebt').length).toBeGreaterThan(0)
  expect(labels(rounds({ grid: changing }))).toEqual([])
})

it('standing, moves and pushes at base or under it are a problem, and over it a warning', () => {
  const weighed = (turns: number) =>
    found(clocked([{ terrain: 'push', resistance: total(turns) }]), 'lightPush').map(({ severity, amount }) => [severity, amount])
  expect([weighed(0), weighed(0.25), weighed(1)]).toEqual([[['problem', 4]], [['warning', 3]], []])
})
