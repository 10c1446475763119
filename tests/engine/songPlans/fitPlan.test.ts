import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { playedIn } from '#engine/songPlans/cutItems.ts'
import { fitPlan } from '#engine/songPlans/fitPlan.ts'
import { takePlan } from '#plan/commands/takePlan.ts'
import { editBlocksOf } from '#plan/edits.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { standingBefore } from '#plan/ledger/standingBefore.ts'
import { type Block, type Item, isCounted, isSet, type Ride, type Section } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { joinPlans, plansIn, type SongPlan, withoutIds } from '#plan/songPlans/songPlan.ts'
import { countsOf, eightOf, gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { aBlock, aSection, aSet, aSong, countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const plansOf = (ride: Ride): SongPlan[] => joinPlans(plansIn({ ride, at: 1 }), [])

const blocksIn = (items: readonly Item[]): readonly Block[] => items.flatMap((item) => (isSet(item) ? item.parts : [item]))

const totalsIn = (items: readonly Item[]): number[] =>
  blocksIn(items).flatMap(({ resistance: call, ownTotal }) => [
    ...('from' in call ? [call.from, call.to] : []),
    ...('aim' in call && call.aim !== undefined ? [call.aim] : []),
    ...('checkpoint' in call && call.checkpoint ? [call.checkpoint.from, call.checkpoint.to] : []),
    ...(ownTotal === undefined ? [] : [ownTotal]),
  ])

const offered = (section: Section): number =>
  countsOf(section) ?? (section.song ? Math.floor(section.song.lengthSeconds) : Number.POSITIVE_INFINITY)

const total = (at: number): Block['resistance'] => ({ kind: 'total', from: at, to: at })

const eights = (id: string, count: number, change: Partial<Block> = {}) => aBlock(id, { length: { counts: count * 8 }, ...change })

/** A ride of one song of 60 eights at 120, and of the blocks over it. */
const rideWith = (blocks: readonly Item[], change: Partial<Section> = {}, ride: Partial<Ride> = {}): Ride => ({
  ...blankRide({ newId: () => 'ride', title: 'then' }),
  sections: [aSection('song', { song: aSong('first'), blocks, ...change })],
  ...ride,
})

const planOf = (ride: Ride): SongPlan => plansOf(ride)[0]!

const fitted = (ride: Ride, into: Ride, sectionId = into.sections.at(-1)!.id) =>
  fitPlan(planOf(ride), into, into.sections.find(({ id }) => id === sectionId)!)!

const lengths = (items: readonly Item[]) => items.map((item) => playedIn([item]) / 8)

describe('a plan over its own song', () => {
  it('in the same place is what it was, and nothing is said', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        for (const [index, section] of ride.sections.entries()) {
          if (!section.song || section.blocks.length === 0) continue
          const plan = plansIn({ ride, at: 1 }).find((one) => one.plan.id === `${ride.id}.${section.id}`)!.plan
          // Random songs may play on past their end, and state totals that no knob has: those are cut, and bounded.
          const { floor, ceiling } = limitsOf(ride)
          if (playedIn(section.blocks) > offered(section) || totalsIn(section.blocks).some((at) => at < floor || at > ceiling)) continue
          if (standingBefore(ride, section.id, 0) < floor || ride.sections.findIndex(({ id }) => id === section.id) !== index) continue
          const found = fitPlan(plan, ride, section)!
          expect(withoutIds(found.items)).toEqual(withoutIds(section.blocks))
          expect(found.song).toEqual(section.song)
          expect(found.isThere).toBe(true)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('is cut to the part that is used, and every change stays where it falls in the music', () => {
    const then = rideWith([eights('a', 8), eights('b', 16), eights('c', 8)])
    const now = rideWith([], { inCount: 16, outCount: 28 * 8 })
    const { items, said } = fitted(then, now)
    expect(lengths(items)).toEqual([6, 16, 4])
    expect(said.map(told)).toEqual(['Cut to fit: 2 eights off the start, 4 eights off the end.'])
  })

  it('goes on from where the part that is cut off left riders', () => {
    const then = rideWith([
      eights('a', 8, { resistance: total(6) }),
      eights('b', 8, { resistance: { kind: 'change', mode: 'exact', steps: 1 } }),
    ])
    const now = rideWith([], { inCount: 64 })
    const { items, said } = fitted(then, now)
    // Riders come from base and not from 6: the block says what its change came to.
    expect(blocksIn(items)[0]!.resistance).toEqual(total(7))
    expect(said.map(told).join(' ')).toContain('says its own: 1¾ turns')
  })

  it('that begins later in the song starts with the song, and moves no change', () => {
    const then = rideWith([eights('a', 8), eights('b', 8)], { inCount: 32 })
    const { items, said } = fitted(then, rideWith([]))
    expect(lengths(items)).toEqual([12, 8])
    expect(said.map(told)[0]).toContain('4 eights earlier')
  })

  it('plays out a set that lies across the end', () => {
    const then = rideWith([aSet('set', [eights('push', 4), eights('ease', 4)], { rounds: 4, perRound: { steps: 1 } })])
    const { items } = fitted(then, rideWith([], { outCount: 20 * 8 }))
    expect(lengths(items)).toEqual([4, 4, 4, 4, 4])
    expect(items.some(isSet)).toBe(false)
  })

  it('is nothing where none of it lies in the used part', () => {
    const then = rideWith([eights('a', 8)])
    const now = rideWith([], { inCount: 20 * 8 })
    expect(fitPlan(planOf(then), now, now.sections[0]!)).toBeNull()
  })
})

it('over its song whose tempo turned out to be twice as fast keeps its time and its legs', () => {
  const then = rideWith([eights('a', 8), eights('b', 4)], { song: aSong('first', { grid: gridOfTempo(60), strikesPerBeat: 2 }) })
  const { items, song, said } = fitted(then, rideWith([], { outCount: 24 * 8 }))
  expect(lengths(items)).toEqual([16, 8])
  expect(song!.strikesPerBeat).toBe(1)
  expect(said).toEqual([])
})

it('says that its cues are in another language', () => {
  const cues: Block['cues'] = [{ id: 'q', moment: 'action', lead: { counts: 0 }, text: 'Los' }]
  const then = rideWith([eights('a', 60, { cues })], {}, { language: 'de' })
  expect(fitted(then, rideWith([])).said.map(told)).toEqual(['Its cues are in another language than this ride’s.'])
  expect(fitted(then, rideWith([], {}, { language: 'de' })).said).toEqual([])
})

describe('a plan for riders who come in elsewhere', () => {
  const entering = (at: number, level: Ride['level'] = 'mixed') =>
    rideWith(
      [],
      {},
      {
        level,
        sections: [
          aSection('before', { blocks: [aBlock('x', { length: { seconds: 60 }, resistance: total(at) })] }),
          aSection('song', { song: aSong('first') }),
        ],
      },
    )

  it('moves as a whole where they come in a little heavier', () => {
    const then = rideWith([eights('a', 8), eights('b', 8, { resistance: total(4) })])
    const { items, said } = fitted(then, entering(1))
    expect(blocksIn(items).map(({ resistance }) => resistance)).toEqual([{ kind: 'keep' }, total(5)])
    expect(said.map(told)).toEqual(
      ['Riders come in heavier, so all resistance goes up ¼ turn.', 'The last 44 eights of the song stay empty.'].toReversed(),
    )
  })

  it('says its total where they come from far, and the rest stays', () => {
    const then = rideWith([eights('a', 8), eights('b', 8, { resistance: total(4) })])
    const { items } = fitted(then, entering(12))
    expect(blocksIn(items).map(({ resistance }) => resistance)).toEqual([total(0), total(4)])
  })

  it('stays as it is where it begins with a total of its own', () => {
    const then = rideWith([eights('a', 8, { resistance: total(4) })])
    expect(blocksIn(fitted(then, entering(1)).items)[0]!.resistance).toEqual(total(4))
  })
})

it('asks an easier class for no more than its level, and a harder one for what it was', () => {
  const then = rideWith([eights('a', 60, { effort: { from: 6, to: 9 } })])
  const easier = fitted(then, rideWith([], {}, { level: 'beginner' }))
  expect(blocksIn(easier.items)[0]!.effort).toEqual({ from: 6, to: 7 })
  expect(easier.said.map(told)).toEqual(['Effort is capped at 7 for a beginner class, in 1 block.'])
  expect(blocksIn(fitted(then, rideWith([], {}, { level: 'advanced' })).items)[0]!.effort).toEqual({ from: 6, to: 9 })
})

describe('a plan over another song', () => {
  const other = (bpm: number, seconds: number, change = {}) =>
    rideWith([], { song: aSong('another', { grid: gridOfTempo(bpm), lengthSeconds: seconds, ...change }) })

  it('keeps its counts, says what stays empty, and finds the strokes nearest to the old cadence', () => {
    const then = rideWith([eights('a', 8), eights('b', 4, { strikesPerBeat: 0.5 })], {
      song: aSong('first', { grid: gridOfTempo(60), strikesPerBeat: 2 }),
    })
    const { items, song, said } = fitted(then, other(124, 240))
    expect(lengths(items)).toEqual([8, 4])
    expect(song!.strikesPerBeat).toBe(1)
    expect(blocksIn(items)[1]!.strikesPerBeat).toBe(0.5)
    expect(said.map(told)).toEqual(['The last 50 eights of the song stay empty.', 'Cadence is 62 rpm (on the beat), was 60.'])
  })

  it('is shortened only where it is too long, by whole eights, and what is locked is not', () => {
    const then = rideWith([eights('a', 16), eights('b', 8, { locked: true })])
    const { items, said } = fitted(then, other(120, 64))
    expect(lengths(items)).toEqual([8, 8])
    expect(said.map(told)).toEqual(['Shortened to fit: “a” from 16 eights to 8 eights.'])
  })

  it('is cut off where it cannot be shortened', () => {
    const then = rideWith([eights('a', 8, { locked: true }), eights('b', 8, { locked: true })])
    const { items, said } = fitted(then, other(120, 40))
    expect(lengths(items)).toEqual([8, 2])
    expect(said.map(told)).toEqual(['Cut to fit: 6 eights off the end.'])
  })

  it('that has no beat becomes seconds', () => {
    const { items } = fitted(rideWith([eights('a', 8)]), rideWith([], { song: aSong('clockwork', { grid: undefined }) }))
    expect(blocksIn(items)[0]!.length).toEqual({ seconds: 32 })
    expect(blocksIn(items)[0]!.cadence).toEqual({ rpm: 60 })
  })
})

it('wherever it goes, it fits the part that is used, in whole eights, on the knob, and the ride opens again', () => {
  const wholeEights = (section: Section): Section => {
    const eight = eightOf(section.song?.grid)
    const { inCount, outCount, ...rest } = section
    const at = (counts: number) => Math.max(1, Math.round(counts / eight)) * eight
    const placed = { ...rest, ...(inCount !== undefined && { inCount: at(inCount) - eight }) }
    return editBlocksOf(placed, (block) => ('counts' in block.length ? { ...block, length: { counts: at(block.length.counts) } } : block))
  }
  fc.assert(
    fc.property(arbitraryRide(), arbitraryRide(), fc.boolean(), (from, to, same) => {
      const then = { ...from, sections: from.sections.map(wholeEights) }
      for (const plan of plansOf(then)) {
        for (const one of to.sections) {
          const song = plan.clip.ride.sections[0]!.song!
          // In another part of its own song as well.
          const section = wholeEights(same ? { ...one, song: { ...song, id: 'own' }, blocks: [] } : { ...one, blocks: [] })
          const into = { ...to, sections: to.sections.map((other) => (other.id === one.id ? section : other)) }
          const found = fitPlan(plan, into, section)
          if (!found) continue
          expect(playedIn(found.items)).toBeLessThanOrEqual(offered(section))
          const { floor, ceiling } = limitsOf(into)
          for (const at of totalsIn(found.items)) expect(at >= floor && at <= ceiling).toBe(true)
          const eight = eightOf(section.song?.grid)
          if (isCounted(section))
            for (const { length } of blocksIn(found.items)) expect('counts' in length && length.counts % eight).toBe(0)
          const command = takePlan(into, { ...found, sectionId: section.id, rideTitle: 'then', newId: countedIds('new-') })
          expect(command.apply(into)).not.toBe(into)
        }
      }
    }),
    { numRuns: 150 },
  )
})
