import { expect, it } from 'vitest'
import { linkSongs, songsToLink } from '#plan/commands/linkSongs.ts'
import { isSet, type Ride, tempoOf } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { aBlock, aSection, aSong, countedIds, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const heard = (title: string, bpm: number): ShelfSong => ({
  id: title,
  song: aSong(title, { title, fingerprint: `file of ${title}`, grid: gridOfTempo(bpm, 0.4), lengthSeconds: 201.5 }),
})
const listed: ShelfSong = { id: 'listed', song: aSong('listed', { title: 'Listed' }) }

const ride: Ride = {
  ...smallRide(),
  sections: [
    aSection('typed', { song: aSong('t', { title: 'low TIDE', grid: gridOfTempo(64) }), blocks: [aBlock('a'), aBlock('b')] }),
    aSection('clock', { song: aSong('c', { title: 'Quay', grid: undefined, strikesPerBeat: null }), blocks: [aBlock('x', inSeconds(32))] }),
    aSection('own', { song: aSong('o', { title: 'Slate Roof', fingerprint: 'another file' }) }),
    aSection('listed', { song: aSong('l', { title: 'Listed' }) }),
    aSection('none', { blocks: [aBlock('y', inSeconds(30))] }),
  ],
}
const shelf = [heard('Low Tide', 127.6), heard('Quay', 120), heard('Slate Roof', 110), listed]

it('gives songs without a file the beats heard in the files of their names, as one change', () => {
  const command = linkSongs(ride, { shelf, newId: countedIds('new') })
  expect([songsToLink(ride, shelf), told(command.label)]).toEqual([2, 'Used the beats in my songs for 2 songs'])
  const [typed, clock, ...others] = command.apply(ride).sections
  // Read at the half it was typed at, and called as it was.
  expect(typed!.song).toMatchObject({ id: 't', title: 'low TIDE', fingerprint: 'file of Low Tide', lengthSeconds: 201.5 })
  expect(tempoOf(typed!.song!.grid!)).toBeCloseTo(63.8, 9)
  expect(typed!.blocks).toEqual(ride.sections[0]!.blocks)
  expect(clock!.blocks.map((item) => !isSet(item) && item.length)).toEqual([{ counts: 64 }])
  expect(others).toEqual(ride.sections.slice(2))
})

it('has nothing to do afterwards', () => {
  const command = linkSongs(ride, { shelf, newId: countedIds('new') })
  const linked = command.apply(ride)
  expect(songsToLink(linked, shelf)).toBe(0)
  expect(linkSongs(linked, { shelf, newId: countedIds() }).apply(linked)).toBe(linked)
})
