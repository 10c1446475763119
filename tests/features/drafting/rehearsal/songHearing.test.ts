import { describe, expect, it } from 'vitest'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { BEHIND, rehearsing } from './rehearsing.ts'

const songOf = ({ store }: Awaited<ReturnType<typeof rehearsing>>) => store.getState().ride!.sections[0]!.song!

describe('hearing a song', () => {
  it('plays its file from any second with a click on every beat, which can be left out', async () => {
    const { hearing, card, pass, store } = await rehearsing()
    await hearing.play('one', 10.1)
    pass(2)
    expect(card.songs()).toMatchObject([{ offset: 10.1 }])
    const start = card.songs()[0]!.when
    expect(card.clicks().map(({ when }) => when - start + 10.1)).toEqual(
      [10.5, 11, 11.5, 12, 12.5].slice(0, card.clicks().length).map((at) => expect.closeTo(at, 6)),
    )
    const count = card.clicks().length
    store.getState().setRehearsalHabits({ click: false })
    pass(3)
    expect(card.clicks().length).toBeLessThanOrEqual(count)
    expect(hearing.secondAt()).toBeCloseTo(15.1 - BEHIND, 6)
  })

  it('moves the click at once when the beats are nudged, and leaves the music alone', async () => {
    const { hearing, card, pass, store } = await rehearsing()
    await hearing.play('one', 10)
    const start = card.songs()[0]!.when
    pass(0.75)
    store.getState().run(moveBeats(store.getState().ride!, { sectionId: 'one', seconds: 0.1 }))
    pass(1.5)
    const at = card.clicks().map(({ when }) => when - start + 10)
    expect(at.slice(-3)).toEqual([11.1, 11.6, 12.1].map((second) => expect.closeTo(second, 6)))
    expect(card.songs()).toHaveLength(1)
    expect(card.songs()[0]!.stop).toBeGreaterThan(card.now)
  })

  it('takes the deck from the rehearsal, which stays where it was', async () => {
    const { hearing, rehearsal, pass, phase } = await rehearsing()
    await rehearsal.playFrom(50)
    pass(2)
    await hearing.play('one', 0)
    expect(phase()).toBe('still')
    expect(rehearsal.timeAt()).toBeCloseTo(52 - BEHIND, 6)
    expect(hearing.snapshot().phase).toBe('playing')
    await rehearsal.playFrom(rehearsal.timeAt())
    expect(hearing.snapshot().phase).toBe('still')
  })

  it('writes marks on the nearest eight or count, each as one step', async () => {
    const world = await rehearsing()
    const { hearing, pass, store } = world
    await hearing.play('one', 12)
    pass(1 + BEHIND)
    // 13 s is count 25: the eight that began at 24.
    expect(hearing.mark('chorus', 'eight')).toBe(24)
    expect(hearing.mark('drop', 'count')).toBe(25)
    expect(songOf(world).marks).toEqual([
      { count: 24, label: 'chorus' },
      { count: 25, label: 'drop' },
    ])
    store.getState().undo()
    expect(songOf(world).marks).toEqual([{ count: 24, label: 'chorus' }])
    hearing.quiet('eight')
    expect(hearing.snapshot().quietFrom).toBe(24)
    pass(8)
    hearing.quiet('eight')
    expect(songOf(world).quiet).toEqual([{ from: 24, to: 40 }])
    expect(hearing.snapshot().phase).toBe('playing')
  })

  it('follows a song that plays elsewhere from its tapped one, and is set right by another', async () => {
    const { hearing, card, pass } = await rehearsing()
    const now = () => card.now * 1000
    // The one of the second song was heard 0.3 s ago; nothing of it is at hand, so it clicks.
    await hearing.oneNow('set', now() - 300, now)
    expect(hearing.snapshot()).toMatchObject({ phase: 'playing', sounds: false })
    pass(2)
    expect(hearing.secondAt()).toBeCloseTo(2.3, 6)
    // Its eight came 0.1 s later than the clock says.
    pass(1.8)
    await hearing.oneNow('set', now(), now)
    expect(hearing.secondAt()).toBeCloseTo(4, 6)
    expect(card.songs()).toEqual([])
  })
})
