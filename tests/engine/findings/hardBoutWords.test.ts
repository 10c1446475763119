import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** What is offered for an effort of so many seconds that is announced without its length. */
function offered(seconds: number): string[] {
  const cues = [{ id: 'c', moment: 'announce' as const, lead: { seconds: 4 }, text: 'Push, all out.' }]
  const blocks = [
    aBlock('before', { ...inSeconds(120), effort: { from: 3, to: 3 } }),
    aBlock('push', { ...inSeconds(seconds), effort: { from: 9, to: 9 }, cues }),
    aBlock('after', { ...inSeconds(600), effort: { from: 3, to: 3 } }),
  ]
  const { findings } = computeRide({ ...smallRide(), sections: [aSection('s', { blocks })] })
  return findings.filter(({ rule }) => rule === 'hardBoutWords').flatMap(({ fixes }) => fixes.map(({ label }) => told(label)))
}

it.each([
  [23, 'twenty-three seconds'],
  [24, 'twenty-four seconds'],
  [25, 'twenty-five seconds'],
  [32, 'thirty seconds'],
  [58, 'one minute'],
  [62, 'one minute'],
  [88, 'ninety seconds'],
  [122, 'two minutes'],
  [180, 'three minutes'],
])('the length of an effort of %d s is offered as “%s”', (seconds, words) => {
  expect(offered(seconds)).toEqual([`Say “${words}”`])
})
