import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { bySection } from '#features/merging/bySection.ts'
import { sayDifference } from '#features/merging/words/sayDifference.ts'
import { sayValue } from '#features/merging/words/sayValue.ts'
import type { Command } from '#plan/commands/command.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { markSong } from '#plan/commands/markSong.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { setTempo } from '#plan/commands/setTempo.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRecipes, commandOf } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { aSong, countedIds, smallRide } from '#tests/support/smallRide.ts'
import { en } from '#words/en/index.ts'

const base = smallRide()

function told(mine: Ride, theirs: Ride) {
  const { conflicts, taken, own, alike, merged } = mergeRides(base, mine, theirs)
  const telling = { base, mine, theirs, bike: merged.bike, reports: { mine: computeRide(mine), theirs: computeRide(theirs) } }
  return [...conflicts, ...taken, ...own, ...alike].map((difference) => sayDifference(difference, telling))
}

const by = (...commands: Command[]): Ride => commands.reduce((ride, command) => command.apply(ride), base)
const patch = (blockId: string, change: Parameters<typeof patchBlock>[1]['patch']) => patchBlock(base, { blockId, patch: change })

describe('a difference in words', () => {
  it('says where, when, what it was and what either made of it', () => {
    const mine = by(patch('b', { resistance: { kind: 'total', from: 6, to: 6 } }))
    const theirs = by(patch('b', { resistance: { kind: 'change', mode: 'atLeast', steps: 3 } }))
    expect(told(mine, theirs)).toEqual([
      { sectionId: 'song', where: 'b', at: 32, what: 'resistance', base: 'stay', mine: 'to 1½', theirs: '+¾ or more' },
    ])
  })

  it('says steps on the bike of the merged ride, whichever bike either had', () => {
    const step = (ride: Ride, steps: number) =>
      patchBlock(ride, { blockId: 'b', patch: { resistance: { kind: 'total', from: steps, to: steps } } })
    const onLevels = setBike(base, LEVELS_BIKE).apply(base)
    const rows = told(step(base, 6).apply(base), step(onLevels, 9).apply(onLevels))
    expect(rows).toMatchObject([{ what: 'resistance', mine: 'to 2', theirs: 'to 9' }, { what: 'bike' }])
  })

  it.each([
    [
      'a nudged grid',
      setTempo(base, { sectionId: 'song', tempo: { bpm: 120, firstBeat: 0.51 } }),
      '120 bpm, 4 beats per bar, first beat at 0.51 s',
    ],
    [
      'a tempo by a hundredth',
      setTempo(base, { sectionId: 'song', tempo: { bpm: 120.04 } }),
      '120.04 bpm, 4 beats per bar, first beat at 0 s',
    ],
    ['a mark', markSong(base, { sectionId: 'song', count: 64, label: 'chorus' }), 'at the eights 9 chorus'],
    ['a house rule', patchRide({ houseRules: { longestStanding: 60 } }), '60 seconds'],
    ['a note for a substitute', patchRide({ standIn: { room: 'Key at the desk.' } }), '“Key at the desk.”'],
  ])('tells %s so that it can be told from what was', (_what, command, words) => {
    const [row] = told(base, by(command))
    expect(row).toMatchObject({ theirs: words })
    expect(row!.theirs).not.toBe(row!.mine)
  })

  it('calls a house rule what the page of rules calls it, and one of a newer page by its name', () => {
    const rules = patchRide({ houseRules: { longestStanding: 60, fromTomorrow: 3 } })
    expect(told(base, by(rules)).map(({ what }) => what)).toEqual([
      `studio rule “${en.rules.label({ name: 'longestStanding' })}”`,
      'studio rule “fromTomorrow”',
    ])
  })

  it('tells two bikes of one name, and two songs of one title, apart', () => {
    const bike = (watts: number) =>
      setBike(base, {
        ...base.bike,
        points: [
          [0, 5],
          [60, watts],
        ],
      })
    expect(told(by(bike(300)), by(bike(310)))).toMatchObject([{ what: 'bike', theirs: expect.stringContaining('with other details') }])
    const song = (id: string, lengthSeconds: number) =>
      setSong(base, { sectionId: 'song', song: aSong(id, { title: 'Low Tide', lengthSeconds }) })
    expect(told(by(song('m', 225)), by(song('t', 231)))).toMatchObject([
      { what: 'song', mine: expect.stringContaining('3:45'), theirs: expect.stringContaining('3:51') },
    ])
  })

  it('says what was done to a block that the other one deleted', () => {
    const mine = by(deleteItems(base, ['b']))
    const theirs = by(patch('b', { effort: { from: 7, to: 8 }, label: 'dear' }))
    expect(told(mine, theirs)).toMatchObject([{ what: 'block removed', mine: 'removed', theirs: 'there, changed: name, effort' }])
  })

  it('says where a block went, and the section only where it is another one', () => {
    const within = moveItem(base, { itemId: 'a', sectionId: 'song', index: 2 })
    const across = moveItem(base, { itemId: 'a', sectionId: 'clock', index: 0 })
    expect(told(base, by(within))).toMatchObject([{ what: 'moved', base: 'first', theirs: 'after c' }])
    expect(told(base, by(across))).toMatchObject([{ what: 'moved', base: 'first in first', theirs: 'first in song 2' }])
  })

  it.each([
    ['block', 'effort', { from: 6, to: 7.5 }, '6 to 7½'],
    ['block', 'length', { counts: 64 }, '8 eights'],
    ['block', 'length', { seconds: 45 }, '45 s'],
    // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
    ['block', 'move', { name: 'jump', counts: 8, side: 'left', then: 'alternate' }, 'jump on 8, left first'],
    ['block', 'cadence', 'legsStill', 'legs still'],
    ['block', 'strikesPerBeat', null, 'off the beat'],
    ['block', 'posture', 'offBike', 'off the bike'],
    ['block', 'water', true, 'yes'],
    ['block', 'label', undefined, 'none'],
    ['set', 'perRound', { steps: 2 }, '+½ per round'],
    ['ride', 'slotMinutes', 45, '45 min'],
    ['cue', 'text', 'Heels down.', '“Heels down.”'],
    ['section', 'song', { song: null }, 'no song'],
  ])('%s %s %j is “%s”', (of, field, value, words) => {
    expect(sayValue(of, field, value, base)).toBe(words)
  })

  it('is there for whatever two people do to a ride', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 3 }), arbitraryRecipes(), arbitraryRecipes(), (ride, ours, others) => {
        const work = (recipes: typeof ours, who: string) =>
          recipes.reduce((now, recipe) => commandOf(recipe, now, countedIds(who)).apply(now), ride)
        const [mine, theirs] = [work(ours, 'm'), work(others, 't')]
        const { conflicts, taken, own, merged } = mergeRides(ride, mine, theirs)
        const reports = { mine: computeRide(mine), theirs: computeRide(theirs) }
        const telling = { base: ride, mine, theirs, bike: merged.bike, reports }
        for (const difference of [...conflicts, ...taken, ...own]) {
          const words = sayDifference(difference, telling)
          expect(words.what).not.toBe('')
          if (difference.kind !== 'field') continue
          expect(words.mine + words.theirs).not.toContain('[object')
          if (difference.by === 'conflict') expect(words.mine, difference.id).not.toBe(words.theirs)
        }
      }),
      { numRuns: 40 },
    )
  })
})

describe('differences by section', () => {
  it('come ride first, then in the order of the ride and of the clock', () => {
    const entries = [
      { sectionId: 'waves', at: 300 },
      { sectionId: undefined },
      { sectionId: 'song', at: 64 },
      { sectionId: 'song', at: 0 },
      { sectionId: 'theirs', at: 1 },
    ]
    const groups = bySection(entries, [base, { ...base, sections: [{ ...base.sections[0]!, id: 'theirs', title: 'new one' }] }])
    expect(groups.map(({ name, entries: held }) => [name, held.map(({ at }) => at)])).toEqual([
      ['whole ride', [undefined]],
      ['first', [0, 64]],
      ['second', [300]],
      ['new one', [1]],
    ])
  })
})
