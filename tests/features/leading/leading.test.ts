import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { bookedSlot } from '#features/leading/bookedSlot.ts'
import { dueWords } from '#features/leading/dueWords.ts'
import { leadView } from '#features/leading/view/leadView.ts'
import type { Block } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { arbitraryEvents, lateLog, leadRide, logOf, planOf } from '#tests/support/leading.ts'

const spark = planOf(demoRide('spark'))
const withOpening = (block: Block, opening: string): Block => ({
  ...block,
  cues: block.cues.map((cue) => ({ ...cue, text: opening + cue.text })),
})
const at = (time: number, led = ledClass(spark, logOf())) => leadView(led, stateOf(led, time))

it('quotes of the next block what is said first, and its form where nobody calls it', () => {
  const next = (cues: Block['cues']) => {
    const ride = demoRide('spark')
    Object.assign(ride.sections[3]!.blocks[1]!, { cues })
    const plan = planOf(ride)
    const before = plan.report.blocks.find(({ block }) => block.id === 's4b1')!
    return at(before.from + 1, ledClass(plan, logOf())).texts.nextRest
  }
  const cue = (id: string, moment: 'announce' | 'preview' | 'form', counts: number) => ({
    id,
    moment,
    lead: { counts },
    text: `${id} words.`,
  })
  expect(next([cue('form', 'form', 60), cue('call', 'announce', 4), cue('preview', 'preview', 24)])).toContain('“preview words.”')
  expect(next([cue('end', 'form', 8), cue('form', 'form', 40)])).toContain('“form words.”')
})

describe('the screen', () => {
  it('shows now, next, the eights left and the clocks', () => {
    // Three eights and two counts into the standing run of the third song.
    const run = spark.report.blocks[15]!
    const { texts, bar, beat, spoken } = at(run.from + (26.5 * 60) / 158)
    expect(texts).toEqual({
      clock: '6:29',
      total: 'of 19:36',
      slack: '24 s to spare',
      song: 'Tin Orchard Run',
      songLeft: '3:29',
      songEight: 'eight 8 of 76',
      round: '',
      name: 'Standing run',
      meta: 'Left foot on beat 1\u00a0· standing, hands\u00a0wide\u00a0· effort\u00a07',
      resistanceLabel: 'turns on · +¾',
      resistance: '1½',
      cadenceLabel: 'cadence',
      cadence: '79',
      upForLabel: 'standing',
      upFor: '15 s',
      feel: '',
      count: '5',
      countLabel: 'eights left\u00a0· 15 s',
      cue: '',
      nextWhen: 'next:',
      nextName: 'jumps on 8',
      nextRest: ', stay (1½) — “Eight up, eight down, four of each.”',
      nextTime: '8 eights · 6:44',
    })
    expect(bar).toEqual({ done: 3, of: 8 })
    expect(beat).toMatchObject({ count: 3, of: 8 })
    expect(spoken).toBe('Standing run, 5 eights, three quarters on.')
  })

  it('says a coming block’s name once', () => {
    const named = { ...demoRide('spark') }
    named.sections = named.sections.map((section) => ({
      ...section,
      blocks: section.blocks.map((item) => (item.id === 's3b3' && 'cues' in item ? withOpening(item, 'Jumps next. ') : item)),
    }))
    const led = ledClass(planOf(named), logOf())
    const run = led.report.blocks[15]!
    expect(at(run.from + 0.1, led).texts.nextRest).toBe(', stay (1½) — “Eight up, eight down, four of each.”')
  })

  it('counts in, and says the words when they are due', () => {
    const jumps = spark.report.blocks[16]!
    const before = (counts: number) => at(jumps.from - (counts * 60) / 158 + 1e-6).texts
    expect([5, 4, 3, 2, 1].map((count) => before(count).nextWhen)).toEqual(['next:', 'in 4', 'in 3', 'in 2', 'in 1'])
    const line = spark.report.cues.lines.find(({ block }) => block === 16)!
    expect(at(line.from - 0.01).texts.cue).toBe('')
    expect(at(line.from).texts.cue).toBe(line.cue.text)
    // Words that stand large are not said twice.
    expect(at(line.from).texts.nextRest).toBe(', stay (1½)')
  })

  it('says who leads and who speaks where it is not the first leader', () => {
    const ride = leadRide()
    const leaders = [
      { id: 'o', name: 'Odalys Thornquill', wordsPerMinute: 140 },
      { id: 'r', name: 'Remy Castellane-Voss', wordsPerMinute: 140 },
    ]
    const blocks = ride.sections[0]!.blocks.map((block, i) => ({ ...block, ...[{}, { leader: 'r' }, { leader: 'r', mic: 'o' }][i] }))
    const led = ledClass(planOf({ ...ride, leaders, sections: ride.sections.with(0, { ...ride.sections[0]!, blocks }) }), logOf())
    const rounds = [10, 40, 70, 110].map((time) => leadView(led, stateOf(led, time)).texts.round)
    expect(rounds).toEqual(['', 'Remy leads', 'Remy leads, Odalys speaks', 'round 1 of 3'])
  })

  it('has words for the moments without a block', () => {
    const plan = planOf({ ...leadRide(), briefingSeconds: 30, clearUpSeconds: 20 })
    const led = ledClass(plan, logOf())
    const texts = (time: number) => leadView(led, stateOf(led, time)).texts
    expect(texts(10)).toMatchObject({ name: 'Welcome', count: '20', nextName: '“first”: a' })
    expect(texts(127)).toMatchObject({
      name: 'second',
      meta: 'Next song.',
      count: '1',
      countLabel: 'seconds to beat 1',
    })
    expect(texts(230)).toMatchObject({
      name: 'X',
      count: '24',
      countLabel: 'seconds left',
      songEight: '',
    })
    expect(texts(318)).toMatchObject({ name: 'Off the bikes', nextWhen: '' })
    expect(texts(340)).toMatchObject({
      name: 'That’s class!',
      meta: 'Stop your wheels; stretch both sides.',
    })
    const open = ledClass(plan, logOf({ kind: 'next', at: 45 }))
    expect(leadView(open, stateOf(open, 120)).texts).toMatchObject({
      name: 'The song plays on',
      count: '2',
      countLabel: 'eights left\u00a0· 6 s',
    })
  })

  it('closes with the last words of the riding', () => {
    const end = spark.report.sections.at(-1)!.to
    expect(at(end - 1).texts.cue).toMatch(/wheel stopped, both sides equal/)
    expect(at(end - 30).texts.cue).not.toMatch(/wheel stopped, both sides equal/)
  })

  it('says in plain words that the class runs over', () => {
    const led = ledClass(spark, lateLog(60))
    expect(leadView(led, stateOf(led, 10))).toMatchObject({ overrun: true, texts: { slack: '1:00 behind, 36 s over class time' } })
  })

  it('says what is held, and for how long', () => {
    const led = ledClass(spark, logOf({ kind: 'hold', at: 30 }))
    expect(leadView(led, stateOf(led, 42)).texts).toMatchObject({ round: 'holding, 12 s', nextWhen: 'next:' })
  })

  it('says no time that is over for what comes after a hold', () => {
    const plan = planOf(leadRide())
    const next = (hold: number, time: number) => {
      const led = ledClass(plan, logOf({ kind: 'hold', at: hold }))
      return leadView(led, stateOf(led, time)).texts.nextTime
    }
    // The first eight of “a” comes again and again: “b” begins seven eights after it.
    expect([3, 13, 41].map((time) => next(3, time))).toEqual(['8 eights · 0:32', '8 eights · 0:44', '8 eights · 1:12'])
    // Without beats the clock of the block stands still.
    expect(next(200, 260)).toBe('30 s · 4:44')
    expect([270, 300].map((time) => next(270, time))).toEqual(['4:46', '5:00'])
  })

  it('speaks of another bike in that bike’s words, now and next', () => {
    const ride = demoRide('spark')
    const led = ledClass({ ride, report: onAnotherBike(ride, computeRide(ride), LEVELS_BIKE) }, logOf({ kind: 'one', at: 150 }))
    const run = led.report.blocks.find(({ block }) => block.label === 'standing run')!
    const line = led.report.cues.lines.find(({ block }) => block === run.index)!
    expect(at(line.from, led).texts).toMatchObject({
      cue: expect.stringMatching(/^To about \w+, up light, twenty-four seconds\.$/),
      nextRest: `, ${run.ledger.call}`,
    })
    const soon = at(line.from - 1, led).texts.nextRest
    expect(soon).toBe(`, ${run.ledger.call} — “Up light, twenty-four seconds.”`)
    expect(soon).toMatch(/^, to about \w+, \w+ hill/)
    // Words that speak of no knob are as they were written.
    const stretch = led.report.cues.lines.at(-1)!
    expect(stretch.cue.text).toBe('Roll the neck, open the chest.')
  })

  it('shortens a long title, never the call after it', () => {
    const ride = leadRide()
    const title = 'A song that goes on 🎵 and on and on (Extended Midnight Remix) [Remastered]'
    const led = ledClass(planOf({ ...ride, sections: ride.sections.with(1, { ...ride.sections[1]!, title }) }), logOf())
    expect(leadView(led, stateOf(led, 80)).texts).toMatchObject({
      nextName: '“A song that goes on 🎵 and on…”: push',
      nextRest: ', stay (0)',
    })
  })

  it('never shows a number that is none, for any ride and any press', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryEvents(2000), fc.double({ min: 0, max: 600, noNaN: true }), (ride, events, later) => {
        const led = ledClass(planOf(ride), logOf(...events))
        const view = leadView(led, stateOf(led, (events.at(-1)?.at ?? 0) + later))
        expect(JSON.stringify(view)).not.toMatch(/NaN|undefined|Infinity|null/)
      }),
      { numRuns: 200 },
    )
  })
})

describe('the slot', () => {
  const evening = new Date(2026, 0, 15, 18, 34).getTime()
  const slot = new Date(2026, 0, 15, 18, 30).getTime()

  it('is today’s where the class is near it, else none', () => {
    expect(bookedSlot('18:30', 45, evening)).toBe(slot)
    expect(bookedSlot('19:00', 45, evening)).toBe(new Date(2026, 0, 15, 19, 0).getTime())
    expect(bookedSlot('19:10', 45, evening)).toBeNull()
    expect(bookedSlot('18:00', 45, evening)).toBeNull()
    expect(bookedSlot(undefined, 45, evening)).toBeNull()
    const midnight = new Date(2026, 0, 16, 0, 5).getTime()
    expect(bookedSlot('23:55', 45, midnight)).toBe(new Date(2026, 0, 15, 23, 55).getTime())
    expect(bookedSlot('00:15', 45, midnight - 600_000)).toBe(new Date(2026, 0, 16, 0, 15).getTime())
  })

  it('says when beat 1 is due', () => {
    const ride = { slotMinutes: 45 }
    expect(dueWords(ride, slot, 60, slot - 20_000)).toBe('Class 6:30 PM–7:15 PM · beat 1 in 1:20')
    expect(dueWords(ride, slot, 0, slot)).toBe('Class 6:30 PM–7:15 PM · beat 1 is due now')
    expect(dueWords(ride, slot, 0, slot + 240_000)).toBe('Class 6:30 PM–7:15 PM · starting 4:00 late')
    expect(dueWords(ride, null, 0, slot)).toBe('45 minutes from beat 1.')
  })
})
