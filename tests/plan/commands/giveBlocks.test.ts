import { describe, expect, it } from 'vitest'
import { giveBlocks } from '#plan/commands/giveBlocks.ts'
import { isSet, type Leader, type Ride } from '#plan/model.ts'
import { frozen } from '#tests/support/frozen.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const LEADERS: Leader[] = [
  { id: 'o', name: 'Odalys', wordsPerMinute: 140 },
  { id: 'r', name: 'Remy', wordsPerMinute: 140 },
]
const ride: Ride = frozen({ ...smallRide(), leaders: LEADERS })
const rolesIn = ({ sections }: Ride) =>
  Object.fromEntries(
    sections
      .flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
      .filter(({ leader, mic }) => leader || mic)
      .map(({ id, leader, mic }) => [id, [leader, mic]]),
  )

describe('giving blocks to a leader', () => {
  it('gives the lead and with it the microphone, parts of sets included', () => {
    const command = giveBlocks(ride, { blockIds: ['a', 'push'], leads: 'r' })
    expect(told(command.label)).toBe('Gave a and push to Remy')
    expect(rolesIn(command.apply(ride))).toEqual({ a: ['r', undefined], push: ['r', undefined] })
  })

  it('gives the microphone alone, and takes it back with nothing left behind', () => {
    const apart = giveBlocks(ride, { blockIds: ['a'], speaks: 'r' })
    expect(told(apart.label)).toBe('Gave the microphone for a to Remy')
    const given = apart.apply(ride)
    expect(rolesIn(given)).toEqual({ a: [undefined, 'r'] })
    expect(giveBlocks(given, { blockIds: ['a'], speaks: 'o' }).apply(given)).toEqual(ride)
    expect(giveBlocks(given, { blockIds: ['a'], leads: 'o' }).apply(given)).toEqual(ride)
  })

  it('is the very same ride where nothing changes, or nobody is called that', () => {
    expect(giveBlocks(ride, { blockIds: ['a'], leads: 'o' }).apply(ride)).toBe(ride)
    expect(giveBlocks(ride, { blockIds: ['a'], leads: 'nobody' }).apply(ride)).toBe(ride)
    expect(giveBlocks(ride, { blockIds: ['gone'], leads: 'r' }).apply(ride)).toBe(ride)
  })
})
