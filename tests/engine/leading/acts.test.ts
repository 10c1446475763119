import { describe, expect, it } from 'vitest'
import type { LeadEvent } from '#engine/leading/leadLog.ts'
import { ledAsPlanned } from '#engine/leading/led.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { playLog } from '#engine/leading/playLog.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { leadRide, leadStateAt, logOf, planOf } from '#tests/support/leading.ts'
import { told } from '#tests/support/told.ts'

const plan = planOf(leadRide())
const led = (...events: LeadEvent[]) => ledClass(plan, logOf(...events))
/** The blocks as they come, with their times: "a 0–32". */
const course = (...events: LeadEvent[]): string[] =>
  led(...events).report.blocks.map(({ block, from, to }) => `${block.label} ${Math.round(from * 10) / 10}–${Math.round(to * 10) / 10}`)
const ones = (...events: LeadEvent[]): number[] => led(...events).report.sections.map(({ one }) => one)

it('stands as planned', () => {
  expect(course()).toEqual([
    ...['a 0–32', 'b 32–64', 'c 64–96'],
    ...['push 98–114', 'ease 114–130', 'push 130–146', 'ease 146–162', 'push 162–178', 'ease 178–194'],
    ...['x 194–224', 'y 224–254', 'z 254–286'],
  ])
})

describe('the one is heard', () => {
  it('before a song: it starts the song, and the class follows', () => {
    expect(ones({ kind: 'one', at: 96.5 })).toEqual([0, 96.5, 192.5, 252.5])
    expect(leadStateAt(plan, logOf({ kind: 'one', at: 96.5 }), 96.5)).toMatchObject({ phase: 'block', block: 3 })
  })

  it('in the first phrase and near no eight: the song starts late', () => {
    expect(ones({ kind: 'one', at: 104 })).toEqual([0, 104, 200, 260])
    expect(told(led({ kind: 'one', at: 104 }).said)).toBe('On beat 1: the song is 6 s later than shown.')
  })

  it('anywhere else: the nearest eight', () => {
    // Eights of the second song start every four seconds from 98.
    expect(ones({ kind: 'one', at: 138.3 })[1]).toBeCloseTo(98.3, 9)
    expect(ones({ kind: 'one', at: 137.7 })[1]).toBeCloseTo(97.7, 9)
    // An early tap that fits an eight confirms it.
    expect(ones({ kind: 'one', at: 102.2 })[1]).toBeCloseTo(98.2, 9)
  })

  it('refines with every tap: the median of the last three', () => {
    const taps = [138.3, 142.1, 146.2, 150.5].map((at): LeadEvent => ({ kind: 'one', at }))
    const one = (count: number) => ones(...taps.slice(0, count))[1]
    expect(one(1)).toBeCloseTo(98.3, 9)
    expect(one(2)).toBeCloseTo(98.2, 9)
    expect(one(3)).toBeCloseTo(98.2, 9)
    expect(one(4)).toBeCloseTo(98.2, 9)
  })

  it('starts over when a tap is elsewhere in the music', () => {
    const taps = [138.1, 142.1, 147.4].map((at): LeadEvent => ({ kind: 'one', at }))
    expect(ones(...taps)[1]).toBeCloseTo(99.4, 9)
  })

  it('moves this song alone and what comes after', () => {
    expect(ones({ kind: 'one', at: 138.3 })[0]).toBe(0)
    const [, second, third] = ones({ kind: 'one', at: 138.3 })
    expect(third! - second!).toBeCloseTo(96, 9)
  })

  it('says so where no beats are known, but starts a stretch again in its first seconds', () => {
    expect(told(led({ kind: 'one', at: 220 }).said)).toBe('No beat is known here, so there’s no beat 1 to set.')
    expect(course({ kind: 'one', at: 220 })).toEqual(course())
    expect(ones({ kind: 'one', at: 200 })).toEqual([0, 98, 200, 260])
  })
})

describe('on to the next', () => {
  it('from the nearest eight, the rest of the song earlier, the song as long as it is', () => {
    expect(course({ kind: 'next', at: 13 }).slice(0, 4)).toEqual(['a 0–12', 'b 12–44', 'c 44–76', 'push 98–114'])
    expect(course({ kind: 'next', at: 15 }).slice(0, 2)).toEqual(['a 0–16', 'b 16–48'])
    const log = logOf({ kind: 'next', at: 15 })
    expect(leadStateAt(plan, log, 15.9)).toMatchObject({ block: 0, eights: { left: 1 } })
    expect(leadStateAt(plan, log, 16)).toMatchObject({ block: 1, eights: { left: 8 } })
    expect(leadStateAt(plan, log, 82)).toMatchObject({ phase: 'openTail', eights: { left: 4 }, next: { block: 3 } })
  })

  it('twice before it has begun skips that one too', () => {
    expect(course({ kind: 'next', at: 14.5 }, { kind: 'next', at: 14.8 }).slice(0, 2)).toEqual(['a 0–16', 'c 16–48'])
    expect(course({ kind: 'next', at: 13 }, { kind: 'next', at: 13.2 }).slice(0, 2)).toEqual(['a 0–12', 'c 12–44'])
  })

  it('before a song is its one', () => expect(ones({ kind: 'next', at: 96.5 })[1]).toBe(96.5))

  it('after the last block of a song is the next song', () => {
    expect(course({ kind: 'next', at: 80.5 }).slice(2, 4)).toEqual(['c 64–80.5', 'push 82.5–98.5'])
  })

  it('without beats at once', () => {
    expect(course({ kind: 'next', at: 200.5 }).slice(9)).toEqual(['x 194–200.5', 'y 200.5–230.5', 'z 230.5–262.5'])
  })
})

describe('back', () => {
  it('starts a song whose first block runs', () => expect(ones({ kind: 'back', at: 109 })).toEqual([0, 109, 205, 265]))

  it('repeats a block, and what no longer fits falls off the end of the song', () => {
    const event: LeadEvent = { kind: 'back', at: 48.2 }
    expect(course(event).slice(0, 4)).toEqual(['a 0–32', 'b 32–48', 'b 48–80', 'c 80–96'])
    expect(course({ kind: 'back', at: 56 }).slice(1, 4)).toEqual(['b 32–56', 'b 56–88', 'c 88–96'])
  })

  it('in a block’s first eight goes to the one before', () => {
    expect(course({ kind: 'back', at: 33 }).slice(0, 4)).toEqual(['a 0–32', 'a 32–64', 'b 64–96', 'push 98–114'])
    expect(told(led({ kind: 'back', at: 33 }).said)).toBe('“a” again; “c” falls off the end of the song.')
  })
})

describe('once more', () => {
  it('repeats the round, counts it, and says what falls off', () => {
    const event: LeadEvent = { kind: 'again', at: 135 }
    const class_ = led(event)
    expect(course(event).slice(3, 9)).toEqual(course().slice(3, 9))
    expect(told(class_.said)).toBe('This round once more; “push” and “ease” fall off the end of the song.')
    expect(class_.blocks[7]!.round).toEqual({ round: 3, of: 3 })
  })

  it('grows a stretch without music', () => {
    expect(course({ kind: 'again', at: 200 }).slice(9)).toEqual(['x 194–224', 'x 224–254', 'y 254–284', 'z 284–316'])
  })
})

describe('hold', () => {
  it('repeats the eight that is ridden until it is let go, on the beat', () => {
    const held: LeadEvent = { kind: 'hold', at: 45 }
    const at = (time: number) => leadStateAt(plan, logOf(held), time)
    expect(at(45)).toMatchObject({ block: 1, eights: { left: 5 }, beat: { count: 3 }, held: 0 })
    expect(at(57)).toMatchObject({ block: 1, eights: { left: 5 }, beat: { count: 3 }, held: 12 })
    expect(at(120)).toMatchObject({ block: 1, eights: { left: 5 }, songLeft: 0 })
    // Three eights more: from 44 to 56, let go in the last of them.
    expect(course(held, { kind: 'go', at: 57 }).slice(0, 4)).toEqual(['a 0–32', 'b 32–76', 'c 76–96', 'push 98–114'])
  })

  it('lets the song run on, which ends when it ends', () => {
    const state = leadStateAt(plan, logOf({ kind: 'hold', at: 45 }), 60)
    expect(state.songLeft).toBeCloseTo(36, 9)
    expect(state.total).toBe(286)
    expect(leadStateAt(plan, logOf({ kind: 'hold', at: 45 }), 106).total).toBe(296)
  })

  it('without beats stands still and puts the end off', () => {
    const log = logOf({ kind: 'hold', at: 200 })
    expect(leadStateAt(plan, log, 212)).toMatchObject({ secondsLeft: 24, total: 298 })
    expect(course({ kind: 'hold', at: 200 }, { kind: 'hold', at: 212 }).slice(9)).toEqual(['x 194–236', 'y 236–266', 'z 266–298'])
  })

  it('before a song waits', () => {
    expect(ones({ kind: 'hold', at: 97 }, { kind: 'go', at: 107 })[1]).toBe(108)
    expect(leadStateAt(plan, logOf({ kind: 'hold', at: 97 }), 105)).toMatchObject({ phase: 'leadIn', secondsLeft: 1 })
  })

  it('past the end of the song ends with the one of the next', () => {
    expect(ones({ kind: 'hold', at: 45 }, { kind: 'one', at: 120 })).toEqual([0, 120, 216, 276])
  })

  it('ends with whatever moves on, and stays through a tap', () => {
    expect(led({ kind: 'hold', at: 45 }, { kind: 'next', at: 56.2 }).led.hold).toBeUndefined()
    expect(led({ kind: 'hold', at: 45 }, { kind: 'one', at: 56.2 }).led.hold).toBeDefined()
    expect(course({ kind: 'hold', at: 45 }, { kind: 'next', at: 56.2 }).slice(0, 3)).toEqual(['a 0–32', 'b 32–56', 'c 56–88'])
  })
})

describe('skip the song', () => {
  it('ends it here; the gap to the next begins', () => {
    expect(course({ kind: 'skipSong', at: 40.3 }).slice(0, 3)).toEqual(['a 0–32', 'b 32–40.3', 'push 42.3–58.3'])
  })

  it('before it has begun leaves it out; the next comes after its own gap', () => {
    expect(course({ kind: 'skipSong', at: 97 }).slice(3)).toEqual(['x 97–127', 'y 127–157', 'z 157–189'])
  })

  it('of the last song ends the class', () => {
    expect(stateOf(led({ kind: 'skipSong', at: 270 }), 270).phase).toBe('finished')
  })
})

describe('the class ends here', () => {
  it('in a song: it ends now, and nothing comes after it', () => {
    expect(course({ kind: 'breakOff', at: 110.5 })).toEqual(['a 0–32', 'b 32–64', 'c 64–96', 'push 98–110.5'])
    expect(stateOf(led({ kind: 'breakOff', at: 110.5 }), 110.6).phase).toBe('finished')
  })

  it('in a gap: what was ridden stays as it was', () => {
    expect(course({ kind: 'breakOff', at: 97 })).toEqual(['a 0–32', 'b 32–64', 'c 64–96'])
  })

  it('in a hold: the hold is over with it', () => {
    const events: LeadEvent[] = [
      { kind: 'hold', at: 40 },
      { kind: 'breakOff', at: 60 },
    ]
    expect(course(...events)).toEqual(['a 0–32', 'b 32–60'])
    expect(led(...events).led.hold).toBeUndefined()
  })

  it('once, and nothing pressed later brings it back but undo', () => {
    const over: LeadEvent[] = [
      { kind: 'breakOff', at: 50 },
      { kind: 'next', at: 52 },
      { kind: 'breakOff', at: 53 },
    ]
    expect(course(...over)).toEqual(['a 0–32', 'b 32–50'])
    expect(told(led(...over).said)).toBe('No song is left: the class is over.')
  })
})

describe('cuts', () => {
  it('take what is still to come, and nothing else', () => {
    expect(course({ kind: 'cut', at: 10, cuts: [{ kind: 'song', section: 1 }] }).slice(2, 5)).toEqual(['c 64–96', 'x 96–126', 'y 126–156'])
    const late: LeadEvent = { kind: 'cut', at: 99, cuts: [{ kind: 'song', section: 1 }] }
    expect(course(late)).toEqual(course())
    expect(told(led(late).said)).toBe('That’s already over.')
  })

  it('shorten a song by rounds, by counts of a block, by its end', () => {
    expect(course({ kind: 'cut', at: 10, cuts: [{ kind: 'rounds', section: 1, setId: 'waves', rounds: 1 }] }).slice(6, 8)).toEqual([
      'ease 146–162',
      'x 162–192',
    ])
    expect(course({ kind: 'cut', at: 10, cuts: [{ kind: 'phrase', section: 0, block: 1, counts: 32 }] }).slice(0, 4)).toEqual([
      'a 0–32',
      'b 32–48',
      'c 48–80',
      'push 82–98',
    ])
    expect(course({ kind: 'cut', at: 10, cuts: [{ kind: 'outro', section: 0, counts: 32 }] }).slice(2, 4)).toEqual([
      'c 64–80',
      'push 82–98',
    ])
  })
})

describe('what had happened by a time', () => {
  const events: LeadEvent[] = [
    { kind: 'next', at: 13 },
    { kind: 'hold', at: 30 },
    { kind: 'go', at: 40 },
  ]
  const heldAt = (until: number) => playLog(plan, { events }, until).led.hold?.at

  it('is what was pressed up to then, that moment included, and nothing later', () => {
    expect([29.9, 30, 39.9, 40].map(heldAt)).toEqual([undefined, 30, 30, undefined])
    expect(playLog(plan, { events }, 12.9)).toEqual({ led: ledAsPlanned(plan), said: '' })
    expect(playLog(plan, { events })).toEqual(playLog(plan, { events }, 1e9))
  })

  it('says what the last act did', () => {
    expect(playLog(plan, { events }, 13).said).toEqual(led({ kind: 'next', at: 13 }).said)
    expect(playLog(plan, { events }, 13).said).not.toBe('')
    expect(playLog(plan, { events }, 30).said).toEqual(led(...events.slice(0, 2)).said)
  })
})

describe('an act while something is held', () => {
  const held: LeadEvent = { kind: 'hold', at: 45 }
  const heldThen = (event: LeadEvent) => led(held, event)

  it('lets go of it first, whatever moves on', () => {
    for (const kind of ['next', 'back', 'again', 'skipSong', 'breakOff'] as const) {
      const freed = led(held, { kind: 'go', at: 57 }, { kind, at: 57 })
      expect(heldThen({ kind, at: 57 }).led, kind).toEqual(freed.led)
    }
  })

  it('is a second press of hold, which lets go of it', () => {
    expect(heldThen({ kind: 'hold', at: 57 }).led).toEqual(heldThen({ kind: 'go', at: 57 }).led)
  })

  it('is a cut, which counts from where it is held: what would have begun since has not', () => {
    // The second song begins at 98; held since 45 it is still to come at 120.
    const cut: LeadEvent = { kind: 'cut', at: 120, cuts: [{ kind: 'song', section: 1 }] }
    expect(course(cut).some((block) => block.startsWith('push'))).toBe(true)
    expect(course(held, cut, { kind: 'go', at: 120 }).some((block) => block.startsWith('push'))).toBe(false)
    expect(heldThen(cut).led.hold).toEqual(led(held).led.hold)
  })

  it('is a one, which lets go only when the held song is over', () => {
    // The first song ends at 96.
    expect(heldThen({ kind: 'one', at: 95.9 }).led.hold).toBeDefined()
    expect(heldThen({ kind: 'one', at: 96 }).led.hold).toBeUndefined()
    expect(ones(held, { kind: 'one', at: 96 })[1]).toBe(96)
  })

  it('is a one before a song, which begins it', () => {
    const before: LeadEvent = { kind: 'hold', at: 97 }
    expect(led(before, { kind: 'one', at: 103 }).led.hold).toBeUndefined()
    expect(ones(before, { kind: 'one', at: 103 })[1]).toBe(103)
  })
})
