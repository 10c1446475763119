import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { speakingSeconds } from '#engine/cues/speechRate.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import { addCues } from '#plan/commands/addCues.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { setSong } from '#plan/commands/setSong.ts'
import type { CueMoment } from '#plan/model.ts'
import { BEHIND, rehearsing, settle } from './rehearsing.ts'

describe('a rehearsal', () => {
  it('plays from any point, stops where it was heard, and goes on from there', async () => {
    const { rehearsal, pass, phase, card } = await rehearsing()
    const playing = rehearsal.playFrom(20)
    expect(phase()).toBe('opening')
    await playing
    expect(phase()).toBe('playing')
    pass(4)
    expect(rehearsal.timeAt()).toBeCloseTo(24 - BEHIND, 6)
    rehearsal.toggle()
    expect(phase()).toBe('still')
    expect(rehearsal.timeAt()).toBeCloseTo(24 - BEHIND, 6)
    pass(10)
    expect(rehearsal.timeAt()).toBeCloseTo(24 - BEHIND, 6)
    await rehearsal.playFrom(rehearsal.timeAt())
    expect(card.songs().at(-1)!.offset).toBeCloseTo(24.5 - BEHIND, 6)
  })

  it('plays songs whose file is there under clicks, and clicks alone where it is not', async () => {
    const { rehearsal, pass, card, store } = await rehearsing()
    store.getState().setRehearsalHabits({ click: false })
    await rehearsal.playFrom(90)
    expect(card.songs()).toMatchObject([{ offset: 90.5 }])
    expect(card.clicks()).toEqual([])
    pass(12)
    // The second song, from 98 s on: beats at 120 a minute, and a file that stopped at 96 s.
    expect(card.songs()[0]!.stop - card.songs()[0]!.when).toBeCloseTo(6, 6)
    const clicks = card.clicks().map(({ when }) => when - card.songs()[0]!.when + 90)
    expect(clicks.slice(0, 3)).toEqual([98, 98.5, 99].map((at) => expect.closeTo(at, 6)))
  })

  it('jumps to the next block and back, at the pace it is asked for', async () => {
    const { rehearsal, pass, store } = await rehearsing()
    await rehearsal.playFrom(0)
    rehearsal.next()
    await settle()
    expect(rehearsal.timeAt()).toBe(32)
    await rehearsal.playFrom(40)
    store.getState().setRehearsalHabits({ speed: 0.5 })
    pass(10)
    expect(rehearsal.timeAt()).toBeCloseTo(45, 1)
    rehearsal.back()
    expect(rehearsal.timeAt()).toBe(32)
    rehearsal.pause()
    rehearsal.back()
    expect(rehearsal.timeAt()).toBe(0)
    rehearsal.seek(200)
    expect(rehearsal.timeAt()).toBe(200)
  })

  it('repeats a block until told to go on, and the music never stops at its start', async () => {
    const { rehearsal, pass } = await rehearsing()
    await rehearsal.playFrom(60)
    rehearsal.toggleRepeat()
    expect(rehearsal.snapshot().way).toEqual({ kind: 'block', blockId: 'b', round: 1 })
    pass(10)
    expect(rehearsal.timeAt()).toBeCloseTo(38 - BEHIND, 6)
    pass(32)
    expect(rehearsal.timeAt()).toBeCloseTo(38 - BEHIND, 6)
    rehearsal.toggleRepeat()
    pass(32)
    expect(rehearsal.timeAt()).toBeCloseTo(70 - BEHIND, 5)
  })

  it('waits at each section where it is asked to, and goes on when told', async () => {
    const { rehearsal, pass, store, phase } = await rehearsing()
    store.getState().setRehearsalHabits({ waits: true })
    await rehearsal.playFrom(90)
    pass(8)
    expect(phase()).toBe('waiting')
    expect(rehearsal.timeAt()).toBe(96)
    await rehearsal.playFrom(rehearsal.timeAt())
    pass(5)
    expect(phase()).toBe('playing')
    expect(rehearsal.timeAt()).toBeCloseTo(101 - BEHIND, 6)
  })

  it('ends with the ride, and begins anew after it', async () => {
    const { rehearsal, pass, phase, card, store } = await rehearsing()
    const { total } = store.getState().report!.overall
    await rehearsal.playFrom(total - 2)
    pass(3)
    expect(phase()).toBe('ended')
    expect(rehearsal.timeAt()).toBe(total)
    expect(card.ticks).toBe(false)
    await rehearsal.playFrom(rehearsal.timeAt())
    expect(rehearsal.timeAt()).toBe(0)
  })

  it('goes with the ride when it changes: the song is not touched, the blocks move around it', async () => {
    const { rehearsal, pass, card, store, phase } = await rehearsing()
    const run = (command: Parameters<ReturnType<typeof store.getState>['run']>[0]) => store.getState().run(command)
    await rehearsal.playFrom(10)
    pass(5)
    run(patchRide({ briefingSeconds: 60 }))
    expect(rehearsal.timeAt()).toBeCloseTo(75 - BEHIND, 6)
    run(moveBeats(store.getState().ride!, { sectionId: 'one', seconds: 0.02 }))
    expect(rehearsal.timeAt()).toBeCloseTo(74.98 - BEHIND, 6)
    store.getState().preview(patchRide({ briefingSeconds: 0 }))
    pass(1)
    store.getState().commitPreview()
    pass(1)
    expect(rehearsal.timeAt()).toBeCloseTo(16.98 - BEHIND, 6)
    expect(card.songs()).toHaveLength(1)
    expect(card.songs()[0]!.stop).toBeGreaterThan(card.now)
    expect(phase()).toBe('playing')
    store.getState().undo()
    expect(rehearsal.timeAt()).toBeCloseTo(76.98 - BEHIND, 6)
    expect(card.songs()).toHaveLength(1)
    run(setSong(store.getState().ride!, { sectionId: 'one', song: null }))
    expect(card.songs()[0]!.stop).toBeLessThan(card.now + 0.05)
  })

  it('clicks each beat once, also where the ride is changed in between', async () => {
    const { rehearsal, card, store } = await rehearsing()
    await rehearsal.playFrom(200)
    const begun = card.now + 0.06
    await rehearsal.playFrom(100)
    const start = card.now + 0.06
    expect(start).toBe(begun)
    for (let i = 0; i < 60; i++) {
      card.pass(0.1)
      if (i % 7 === 0) store.getState().run(patchRide({ title: `change ${i}` }))
    }
    const clicks = card.clicks().map(({ when }) => when - start)
    expect(clicks).toEqual(Array.from({ length: clicks.length }, (_, i) => expect.closeTo(i / 2, 6)))
    expect(clicks.length).toBeGreaterThan(11)
  })

  it('marks the block that is ridden as shaky, and plays the shaky ones each after an eight', async () => {
    const { rehearsal, pass, store, phase } = await rehearsing()
    await rehearsal.playFrom(70)
    expect(rehearsal.toggleShaky()).toBe(true)
    await rehearsal.playFrom(120)
    expect(rehearsal.toggleShaky()).toBe(true)
    expect(store.getState().ride!.shaky).toEqual(['c', 'ease'])
    rehearsal.playShaky()
    await settle()
    expect(rehearsal.timeAt()).toBe(60)
    rehearsal.next()
    await settle()
    expect(rehearsal.timeAt()).toBe(110)
    await settle()
    pass(21)
    expect(phase()).toBe('ended')
    expect(rehearsal.timeAt()).toBe(130)
    await rehearsal.playFrom(70)
    rehearsal.toggleShaky()
    expect(store.getState().ride!.shaky).toEqual(['ease'])
  })

  it('leaves a course whose block is deleted, and ends when another ride is opened or the place is left', async () => {
    const { rehearsal, store, phase, card, leave, pass } = await rehearsing()
    await rehearsal.playFrom(40)
    rehearsal.toggleRepeat()
    store.getState().run(deleteItems(store.getState().ride!, ['b']))
    expect(rehearsal.snapshot().way).toEqual({ kind: 'ride' })
    expect(phase()).toBe('playing')
    const { ride } = store.getState()
    store.getState().openRide({ ...ride!, id: 'other' })
    expect(rehearsal.snapshot()).toMatchObject({ open: false, phase: 'still' })
    await rehearsal.playFrom(3)
    pass(1)
    leave()
    expect(card.state.closed).toBe(true)
    expect(rehearsal.snapshot().open).toBe(false)
  })
})

describe('spoken cues', () => {
  const cue = (id: string, blockId: string, text: string, moment: CueMoment = 'announce', count?: 4) =>
    addCues([{ blockId, cue: { id, moment, lead: { counts: moment === 'countIn' ? 0 : 8 }, text, ...(count && { count }) } }])

  it('end as planned at the leader’s words a minute, whatever the pace of the ride', async () => {
    for (const speed of [1, 0.5]) {
      const { rehearsal, pass, store, said, card } = await rehearsing((ride) =>
        cue('c1', 'b', 'One turn on and stay down with it').apply(ride),
      )
      store.getState().setRehearsalHabits({ speaks: true, speed })
      const { wordsPerMinute } = store.getState().ride!.leaders[0]!
      await rehearsal.playFrom(20)
      const begun = card.now + 0.06
      pass(10 / speed)
      expect(said).toMatchObject([{ text: 'One turn on and stay down with it', rate: expect.closeTo(wordsPerMinute / 180, 9) }])
      // Words end two seconds and two more before 32 s: eight counts at 120.
      const rules = constantsOf(store.getState().ride!)
      const seconds = speakingSeconds(utteranceOf('One turn on and stay down with it'), wordsPerMinute / 60, rules)
      const heardAt = 20 + (said[0]!.at - begun - 0.02) * speed
      expect(heardAt + seconds * speed).toBeGreaterThanOrEqual(28 - 1e-6)
      expect(heardAt + seconds * speed).toBeLessThan(28 + 0.06 * speed + 0.03)
    }
  })

  it('are said to a voice by the pace it is heard to have', async () => {
    const { rehearsal, pass, store, said } = await rehearsing((ride) =>
      cue('c2', 'c', 'and now once more the same').apply(cue('c1', 'b', 'One turn on and stay down with it').apply(ride)),
    )
    store.getState().setRehearsalHabits({ speaks: true })
    await rehearsal.playFrom(20)
    pass(10)
    // Eight words in 8 s at that rate: a slow voice.
    said[0]!.onSaid(8)
    pass(32)
    expect(said).toHaveLength(2)
    expect(said[1]!.rate).toBeGreaterThan(said[0]!.rate * 1.2)
  })

  it('are said in every round of a block that is repeated', async () => {
    const { rehearsal, pass, store, said } = await rehearsing((ride) => cue('c1', 'b', 'Down now', 'form').apply(ride))
    store.getState().setRehearsalHabits({ speaks: true })
    await rehearsal.playFrom(40)
    rehearsal.toggleRepeat()
    pass(32 * 3)
    expect(said).toHaveLength(3)
  })

  it('count in on the beats, are broken off on stopping and going elsewhere, and silent unless asked for', async () => {
    const { rehearsal, pass, store, said, state } = await rehearsing((ride) => cue('c1', 'b', '', 'countIn', 4).apply(ride))
    await rehearsal.playFrom(28)
    pass(4.2)
    expect(said).toEqual([])
    store.getState().setRehearsalHabits({ speaks: true })
    await rehearsal.playFrom(28)
    pass(3)
    expect(said.map(({ text }) => text)).toEqual(['4', '3'])
    const before = state.hushed
    rehearsal.seek(60)
    expect(state.hushed).toBeGreaterThan(before)
    await settle()
    rehearsal.pause()
    expect(state.hushed).toBeGreaterThan(before + 1)
    pass(4)
    expect(said).toHaveLength(2)
  })
})
