import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { speakBlock } from '#features/drafting/stage/BlockCard.tsx'
import { POSTURES } from '#plan/model.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

it('a block is heard in words, its posture too', () => {
  const blocks = POSTURES.map((posture, i) => aBlock(`b${i}`, { ...inSeconds(60), posture }))
  const report = computeRide({ ...smallRide(), sections: [aSection('s', { blocks })] })
  const heard = report.blocks.map((played) => speakBlock(played, 0, '1 min').split(', ')[1])
  expect(heard).toEqual(['seated', 'standing', 'hovering', 'off the bike'])
})
