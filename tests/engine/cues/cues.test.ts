import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { offerFormPoints } from '#engine/cues/formPoints.ts'
import type { Finding } from '#engine/report.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Block, Cue, Ride, SetBlock } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { told } from '#tests/support/told.ts'

type Name = 'spark' | 'ridge'

/** A demo ride with one block changed. */
function withBlock(name: Name, blockId: string, change: (block: Block) => Partial<Block>): Ride {
  const ride = structuredClone(demoRide(name))
  for (const section of ride.sections) {
    Object.assign(section, {
      blocks: section.blocks.map((block) => (block.id === blockId ? ({ ...block, ...change(block as Block) } as Block) : block)),
    })
  }
  return ride
}

const cue = (text: string, more: Partial<Cue> = {}): Cue => ({ id: 'c', moment: 'announce', lead: { counts: 8 }, text, ...more })
const saying = (text: string, blockId = 's4b2', name: Name = 'spark', more: Partial<Cue> = {}) =>
  withBlock(name, blockId, () => ({ cues: [cue(text, more)] }))
const found = (ride: Ride, rule: string): Finding[] => computeRide(ride).findings.filter((finding) => finding.rule === rule)
const lineOf = (ride: Ride, id = 'c') => computeRide(ride).cues.lines.find((line) => line.cue.id === id)!
const applied = (ride: Ride, finding: Finding, index = 0): Ride => finding.fixes[index]!.command.apply(ride)
const textOf = (ride: Ride, id = 'c') => lineOf(ride, id).cue.text

describe('when words are spoken', () => {
  it('ends them as many counts before the change as the cue says, and starts them as much earlier as they take', () => {
    const ride = saying('Light hands, long back, eyes up.', 's4b3')
    const report = computeRide(ride)
    const line = lineOf(ride)
    const { from } = report.blocks[line.block]!
    const beat = 60 / 184
    expect(line.to).toBeCloseTo(from - 8 * beat, 9)
    // Six syllables with thirteen consonants and two commas for a leader of 140 words a minute, slower at a strain of 7 and more.
    expect(line.strain).toBeLessThan(7)
    expect(line.to - line.from).toBeCloseTo(6 * 0.08 + 13 * 0.09 + 2 * 0.44 + 0.23 + 0.4, 9)
    expect(line.lead).toBeCloseTo(8, 9)
  })

  it('slows a leader who works hard, and not one off the bike', () => {
    const text = 'Hold this all the way.'
    const calm = 5 * 0.08 + 8 * 0.09 + 0.23
    const working = lineOf(saying(text, 's5b9', 'spark'))
    expect(working.strain).toBeGreaterThan(7)
    expect(working.to - working.from).toBeCloseTo(calm * (2.3 / 1.8) + 0.4, 9)
    const walking = lineOf(withBlock('spark', 's5b9', () => ({ cues: [cue(text)], walk: true })))
    expect(walking.to - walking.from).toBeCloseTo(calm + 0.4, 9)
  })

  it('uses the rate of whoever has the microphone', () => {
    const ride = withBlock('spark', 's4b3', () => ({ cues: [cue('Six words are spoken right here.')], mic: 'remy' }))
    Object.assign(ride.leaders[1]!, { wordsPerMinute: 100 })
    expect(lineOf(ride)).toMatchObject({ speaker: 'remy' })
    expect(lineOf(ride).to - lineOf(ride).from).toBeCloseTo((7 * 0.08 + 16 * 0.09 + 0.23) * (140 / 100) + 0.4, 9)
  })

  it('puts a call in seconds on the nearest beat, half a beat off at most', () => {
    const ride = saying('Ready.', 's4b2', 'spark', { lead: { seconds: 5 } })
    const line = lineOf(ride)
    expect(line.lead).toBeCloseTo(Math.round(line.lead), 9)
    expect(Math.abs(line.change - 5 - line.to)).toBeLessThanOrEqual(30 / 184 + 1e-9)
  })

  it('counts in over the last four or eight counts, however many words', () => {
    for (const count of [4, 8] as const) {
      const line = lineOf(saying('Here we go', 's4b2', 'spark', { moment: 'countIn', lead: { counts: 0 }, count }))
      expect(line.to - line.from).toBeCloseTo((count * 60) / 184, 9)
      expect(line.to).toBe(line.change)
    }
  })

  it('places form and story inside their block, counted back from its end', () => {
    const ride = withBlock('spark', 's4b3', (block) => ({
      cues: [...block.cues, cue('Long back.', { moment: 'form', lead: { counts: 64 } })],
    }))
    const line = lineOf(ride)
    const { from, to } = computeRide(ride).blocks[line.block]!
    expect(line.change).toBe(to)
    expect(line.from).toBeGreaterThan(from)
  })

  it('on any ride keeps every line inside the ride’s start and no line before its words', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3, items: 5 }), (ride) => {
        const { lines, talk } = computeRide(ride).cues
        for (const { from, to } of lines) {
          expect(from).toBeGreaterThanOrEqual(-1e-9)
          expect(to).toBeGreaterThanOrEqual(from)
        }
        for (const { share } of talk) {
          expect(share).toBeGreaterThanOrEqual(0)
          expect(share).toBeLessThanOrEqual(1 + 1e-9)
        }
      }),
      { numRuns: 80 },
    )
  })
})

describe('numbers that are spoken', () => {
  it('finds none wrong in the demo rides', () => {
    for (const name of ['spark', 'ridge'] as const) expect(computeRide(demoRide(name)).cues.mismatches).toEqual([])
  })

  it.each([
    ['One turn on. Go.', 's4b2', 'One and a quarter turns on. Go.'],
    ['Add one. Go.', 's4b2', 'Add one and a quarter. Go.'],
    ['1 turn on. Go.', 's4b2', '1¼ turns on. Go.'],
    ['Quarter turn on.', 's4b3', 'One and a half turns off.'],
    ['Take one off.', 's4b3', 'Take one and a half off.'],
    ['Half turn off, then.', 's2b2', 'Half turn on, then.'],
    ['One and a quarter on. Thirty seconds.', 's4b2', 'One and a quarter on. Twenty-one seconds.'],
    ['One and a quarter on. 45 seconds.', 's4b2', 'One and a quarter on. 21 seconds.'],
    ['One turn off. Four pushes next.', 's3b10', 'One turn off. Three pushes next.'],
    ['Two pushes, twenty seconds, forty easy.', 's4b1', 'Three pushes, twenty seconds, forty easy.'],
    ['Push three.', 's4b2', 'Push one.'],
    ['One left.', 's4b3', 'Two left.'],
    ['Rise. Hips home, on eights.', 's2b5', 'Rise. Hips home, on fours.'],
    ['Four up, four down.', 's3b3', 'Eight up, eight down.'],
    ['Three of each.', 's3b3', 'Four of each.'],
  ])('puts %j in %s right: %j', (text, blockId, right) => {
    const ride = saying(text, blockId)
    const [wrong] = found(ride, 'cueNumbers')
    expect(wrong).toBeDefined()
    const after = applied(ride, wrong!)
    expect(textOf(after)).toBe(right)
    expect(found(after, 'cueNumbers')).toEqual([])
  })

  it.each([
    ['Same gear. Go.', 's4b2', 'one and a quarter on'],
    ['Take half a turn off. Go.', 's4b2', 'one and a quarter on'],
    ['Last push.', 's4b4', 'one left after it'],
    ['Nearly two minutes of this.', 's4b2', 'twenty-one seconds'],
  ])('tells what the plan has where %j in %s would have to be another sentence', (text, blockId, plan) => {
    const [wrong] = found(saying(text, blockId), 'cueNumbers')
    expect(told(wrong!.text)).toContain(`the plan is “${plan}”`)
    expect(wrong?.fixes).toEqual([])
  })

  it.each(['Two hands on the bar. One and a quarter on.', 'One and a quarter on, up in four.', 'Four more breaths.'])(
    'lets %j be',
    (text) => {
      expect(found(saying(text), 'cueNumbers')).toEqual([])
    },
  )

  it('takes “last one” out of words that are spoken in every round, and counts the rounds down by itself', () => {
    const ride = structuredClone(demoRide('spark'))
    const section = ride.sections[3]!
    const [setUp, push, rest] = section.blocks as Block[]
    const set: SetBlock = {
      id: 'set',
      rounds: 3,
      parts: [
        { ...push!, label: 'push', cues: [cue('Last one. Go.')] },
        { ...rest!, cues: [] },
      ],
    }
    Object.assign(section, { blocks: [setUp!, set] })
    const report = computeRide(ride)
    expect(report.cues.repeats.map(({ words }) => words)).toEqual(['three', 'two', 'last one'])
    const [wrong] = found(ride, 'cueNumbers')
    expect(textOf(applied(ride, wrong!))).toBe('Go.')
  })

  it('on any demo cue with its numbers changed offers a text that holds', () => {
    const amounts = ['half turn', 'quarter turn', 'three quarters', 'one turn', 'one and a half', 'two turns']
    const places = (['spark', 'ridge'] as const).flatMap((name) =>
      demoRide(name).sections.flatMap(({ blocks }) => blocks.map(({ id }) => ({ name, id }))),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        fc.constantFrom(...amounts),
        fc.constantFrom('on', 'off'),
        ({ name, id }, amount, direction) => {
          const ride = saying(`Sit. ${amount} ${direction}. Breathe.`, id, name)
          const [wrong] = found(ride, 'cueNumbers')
          for (const { command } of wrong?.fixes ?? []) expect(found(command.apply(ride), 'cueNumbers')).toEqual([])
        },
      ),
      { numRuns: 80 },
    )
  })
})

describe('what is noticed about cues', () => {
  it('a call too close to a change, moved to where it can be acted on', () => {
    const ride = saying('Half turn on, up in four. Thirty seconds.', 's2b3', 'spark', { lead: { counts: 2 } })
    const [late] = found(ride, 'cueLate')
    expect(told(late!.text)).toBe(
      '“Half turn on, up in four. Thirty seconds.” ends 2 counts before “standing climb”; resistance and then posture needs 8.',
    )
    const after = applied(ride, late!)
    expect(found(after, 'cueLate')).toEqual([])
    expect(lineOf(after).lead).toBeCloseTo(8, 9)
  })

  it('more words than there is room for', () => {
    const words =
      'Now this is the one we have been waiting for, so get ready, hands wide, eyes up, breathe deep and hold on to the beat all the way through until the very end of this long and heavy climb'
    const [tight] = found(saying(words, 's2b7'), 'cueRoom')
    expect(told(tight!.text)).toMatch(/ takes \d+(\.\d)? s to say and has \d+(\.\d)? s\.$/)
    expect(tight?.amount).toBeGreaterThan(0.25)
  })

  it('two cues at once, and brings the first forward where there is room', () => {
    const ride = withBlock('spark', 's4b4', () => ({
      cues: [
        cue('One and a half on, and here it comes now.', { id: 'a' }),
        cue('Go.', { id: 'b', moment: 'countIn', lead: { counts: 6 }, count: 4 }),
      ],
    }))
    const [clash] = found(ride, 'cueCollisions')
    expect(told(clash!.text)).toContain('before “One and a half on, and here it comes now.” is over')
    expect(found(applied(ride, clash!), 'cueCollisions')).toEqual([])
  })

  it('a change nobody calls, worded from the ledger', () => {
    const ride = withBlock('spark', 's2b3', () => ({ cues: [] }))
    const [silent] = found(ride, 'unannounced')
    expect(told(silent!.text)).toBe('No cue announces the change of resistance and posture into “standing climb”.')
    expect(told(silent!.fixes[0]!.label)).toBe('Announce “Half a turn on. Up.”')
    const after = applied(ride, silent!)
    expect(found(after, 'unannounced')).toEqual([])
    expect(found(after, 'cueNumbers')).toEqual([])
    expect(found(after, 'cueLate')).toEqual([])
  })

  it('a pace that changes without the knob', () => {
    const faster = withBlock('spark', 's4b3', () => ({ resistance: { kind: 'keep' }, strikesPerBeat: 0.5, cues: [] }))
    const change = computeRide(faster).cues.changes.find(({ block }) => computeRide(faster).blocks[block]!.block.id === 's4b3')
    expect(change?.pace).toMatchObject({ from: 92, to: 46, step: { kind: 'time', up: false } })
    const ramp = withBlock('spark', 's4b3', () => ({ resistance: { kind: 'keep' }, cadence: { rpm: 90, rampTo: 105 }, cues: [] }))
    const step = computeRide(ramp).cues.changes.find(({ pace }) => pace)?.pace?.step
    expect(step && english.calls.pace(step)).toBe('pick it up to 105')
    expect(told(found(ramp, 'unannounced')[0]!.fixes[0]!.label)).toContain('Pick it up to 105.')
  })

  it('a hard bout without a length, until “twenty seconds” is said', () => {
    const sprint = (text: string) => withBlock('ridge', 's11b2', () => ({ label: 'sprint', feel: undefined, cues: [cue(text)] }))
    const [hint, ...others] = found(sprint('One and a half on. Sprint!'), 'hardBoutWords').filter(({ blockId }) => blockId === 's11b2')
    expect(others).toEqual([])
    expect(told(hint!.text)).toBe('“sprint” is hard and the cues don’t say how long.')
    const said = applied(sprint('One and a half on. Sprint!'), hint!)
    expect(found(said, 'hardBoutWords').filter(({ blockId }) => blockId === 's11b2')).toEqual([])
    expect(
      found(sprint('One and a half on. Sprint! Twenty seconds.'), 'hardBoutWords').filter(({ blockId }) => blockId === 's11b2'),
    ).toEqual([])
  })

  it('the first showing of a move without a form point, and never a later one', () => {
    const ride = demoRide('spark')
    const jumps = found(ride, 'moveWithoutForm').filter(({ text }) => told(text).includes('The first “jump”'))
    expect(jumps).toHaveLength(1)
    const after = applied(ride, jumps[0]!)
    expect(found(after, 'moveWithoutForm').some(({ text }) => told(text).includes('The first “jump”'))).toBe(false)
    expect(computeRide(ride).cues.showings.find(({ move }) => move === 'jump')).toMatchObject({ first: 16, again: [19, 22] })
  })

  it('riders sent up before the resistance', () => {
    const ride = saying('Up in four. Half turn on.', 's2b3')
    const [early] = found(ride, 'resistanceFirst')
    expect(textOf(applied(ride, early!))).toBe('Half turn on. Up in four.')
    expect(found(applied(ride, early!), 'resistanceFirst')).toEqual([])
  })

  it('words over a quiet stretch, but not a count-in', () => {
    const ride = saying('One and a half on, this is it.', 's4b4')
    const line = lineOf(ride)
    const report = computeRide(ride)
    const count = report.blocks[line.block]!.countFrom!
    Object.assign(ride.sections[3]!.song!, { quiet: [{ from: count - 16, to: count }] })
    const [talk] = found(ride, 'quietKept')
    expect(told(talk!.text)).toContain('over a no-talk zone in “Quarter to Magnesium”')
    expect(found(applied(ride, talk!), 'quietKept')).toEqual([])
    const counted = saying('Go', 's4b4', 'spark', { moment: 'countIn', lead: { counts: 0 } })
    Object.assign(counted.sections[3]!.song!, { quiet: [{ from: count - 16, to: count }] })
    expect(found(counted, 'quietKept')).toEqual([])
  })

  it('half a minute that is mostly talk', () => {
    const text =
      'Keep the shoulders low and the hands light, look up, breathe in through the nose and out through the mouth, and find the beat with both feet'
    const ride = withBlock('spark', 's6b1', (block) => ({
      cues: [
        ...block.cues,
        cue(text, { id: 'a', moment: 'story', lead: { counts: 120 } }),
        cue(text, { id: 'b', moment: 'story', lead: { counts: 80 } }),
      ],
    }))
    expect(told(found(ride, 'tooMuchTalk')[0]!.text)).toMatch(/s of talking in 30 s, more than 15; the longest cue is “Keep the shoulders/)
    expect(found(demoRide('spark'), 'tooMuchTalk')).toEqual([])
  })

  it('many words for a leader out of breath', () => {
    const ride = saying('Sit now, take two and a half off and roll it all out', 's5b9')
    const line = lineOf(ride)
    expect(found(ride, 'breathlessWords')).toHaveLength(line.strain >= 8 ? 1 : 0)
    const strained = withBlock('spark', 's5b8', () => ({ effort: { from: 10, to: 10 } }))
    Object.assign(strained.sections[4]!.blocks, {
      8: {
        ...(strained.sections[4]!.blocks[8] as Block),
        cues: [cue('Sit now, take two and a half off and roll it all out')],
      },
    })
    const [long] = found(strained, 'breathlessWords')
    expect(told(long!.text)).toContain('up to 8 come out well')
    expect(long?.amount).toBe(13 - 8)
  })
})

describe('room for more than calls', () => {
  it('offers form points for longer holds in turn, from the leader’s own bank', () => {
    const report = computeRide(demoRide('ridge'))
    const offered = offerFormPoints(report.blocks, report.cues, ['one', 'two'])
    expect(offered.length).toBeGreaterThan(4)
    expect(offered.map(({ text }) => text)).toEqual(offered.map((_, i) => (i % 2 ? 'two' : 'one')))
    for (const { block } of offered) expect(report.blocks[block]!.to - report.blocks[block]!.from).toBeGreaterThanOrEqual(45)
    expect(offerFormPoints(report.blocks, report.cues, [])).toEqual([])
  })

  it('finds story windows where strain is low and nobody speaks', () => {
    const { cues, curves } = computeRide(demoRide('ridge'))
    expect(cues.storyWindows.length).toBeGreaterThan(3)
    for (const { from, to } of cues.storyWindows) {
      expect(to - from).toBeGreaterThanOrEqual(20)
      for (const line of cues.lines) expect(line.to <= from || line.from >= to).toBe(true)
      for (const at of [from, (from + to) / 2, to]) expect(strainAt(curves.strain, at)).toBeLessThanOrEqual(5 + 1e-2)
    }
  })
})
