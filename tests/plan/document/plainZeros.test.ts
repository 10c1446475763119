import { expect, test } from 'vitest'
import { markSong } from '#plan/commands/markSong.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { plainZeros } from '#plan/document/plainZeros.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { frozen } from '#tests/support/frozen.ts'

test('every −0 becomes 0, and what holds none stays the very same', () => {
  const kept = { list: [1, 2], text: '0' }
  const value = { kept, list: [-0, 3, { deep: -0 }], zero: -0, gone: undefined }
  const plain = plainZeros({}, value)
  expect(plain).toStrictEqual({ kept, list: [0, 3, { deep: 0 }], zero: 0, gone: undefined })
  expect(plain.kept).toBe(kept)
  expect(plainZeros({}, kept)).toBe(kept)
  expect(plainZeros(value, value)).toBe(value)
  expect(plainZeros(0, -0)).toBe(0)
})

test('a command that was given −0 leaves a ride that reads as it is', () => {
  const ride = frozen(demoRide('spark'))
  const commands = [
    markSong(ride, { sectionId: 's2', count: -0, label: 'verse' }),
    patchBlock(ride, { blockId: 's2b2', patch: { effort: { from: -0, to: 4 } } }),
  ]
  for (const command of commands) {
    const after = command.apply(ride)
    expect(after).not.toBe(ride)
    expect(parseRide(after)).toStrictEqual({ ok: true, ride: after })
    expect(after.sections[0]).toBe(ride.sections[0])
  }
})
