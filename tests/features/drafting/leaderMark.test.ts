import { expect, it } from 'vitest'
import { leaderMarks } from '#features/drafting/stage/leaderMark.ts'
import { giveBlocks } from '#plan/commands/giveBlocks.ts'
import type { Ride } from '#plan/model.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const shared = (first: string, second: string): Ride => ({
  ...smallRide(),
  leaders: [
    { id: '1', name: first, wordsPerMinute: 140 },
    { id: '2', name: second, wordsPerMinute: 140 },
  ],
})
const given = (ride: Ride) => giveBlocks(ride, { blockIds: ['b'], leads: '2' }).apply(ride)

it('nothing is marked while one teaches alone or nothing is given over', () => {
  expect(leaderMarks(smallRide()).size).toBe(0)
  expect(leaderMarks(shared('Odalys', 'Remy')).size).toBe(0)
})

it('each block has the letter of who leads it, and of who speaks where that is another', () => {
  const ride = given(shared('Odalys', 'remy'))
  expect(leaderMarks(ride).get('a')).toEqual({ letter: 'O', spoken: 'Odalys leads' })
  expect(leaderMarks(ride).get('b')).toEqual({ letter: 'R', spoken: 'remy leads' })
  const apart = giveBlocks(ride, { blockIds: ['c'], speaks: '2' }).apply(ride)
  expect(leaderMarks(apart).get('c')).toEqual({ letter: 'O/R', spoken: 'Odalys leads, remy speaks' })
})

it('names that begin alike are told apart by two letters, and others by number', () => {
  expect(leaderMarks(given(shared('Rob', 'Remy'))).get('b')!.letter).toBe('Re')
  expect(leaderMarks(given(shared('Remy', 'Remi'))).get('b')!.letter).toBe('2')
})
