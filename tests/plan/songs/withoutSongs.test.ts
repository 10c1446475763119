import { expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { withoutSongs } from '#plan/songs/withoutSongs.ts'
import { newRideFrom } from '#store/copyOfRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const noteOf = ({ lengthSeconds, bpm }: { lengthSeconds: number; bpm?: number }) => `${lengthSeconds} s, ${bpm} bpm`

it('leaves a place by the clock for every song, with a note of what was there', () => {
  const ride = withoutSongs(smallRide(), noteOf)
  expect(ride.sections.map(({ song }) => song)).toEqual([null, null, null])
  expect(ride.sections.map(({ notes }) => notes)).toEqual(['240 s, 120 bpm', undefined, '240 s, 120 bpm'])
  expect(ride.sections[0]!.blocks.map((item) => 'length' in item && item.length)).toEqual([
    { seconds: 32 },
    { seconds: 32 },
    { seconds: 32 },
  ])
  expect(parseRide(JSON.parse(JSON.stringify(ride))).ok).toBe(true)
})

it('a new ride from one has its own id and title, no time of a class, and knows what it was made from', () => {
  const ride = newRideFrom({ ...smallRide(), startsAt: '18:30', ancestors: ['0123456789abcdef'] }, { id: 'other', title: 'Other' })
  expect(ride).toMatchObject({ id: 'other', title: 'Other', parent: { rideId: 'ride' } })
  expect(ride.startsAt).toBeUndefined()
  expect(ride.ancestors).toBeUndefined()
  expect(ride.sections).toEqual(smallRide().sections)
})
