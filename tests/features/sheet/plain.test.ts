import { expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { LARGE, PHONE_SCREENS } from '#features/sheet/jobs.ts'
import { plainContents } from '#features/sheet/plain/plainContents.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'

test('ten lines of minutes and efforts, by the clock on the wall too', () => {
  const ride = demoRide('spark')
  const { lines } = plainContents(ride, computeRide(ride), 'today')
  expect(lines).toHaveLength(10)
  expect(lines[0]).toMatchObject({ from: '0:00', to: '1:30', clock: '12:10 PM', level: '2 to 3', words: 'chatty' })
  expect(lines.find(({ words }) => words.startsWith('3 times'))).toMatchObject({
    level: '3 / 9',
    words: '3 times 20 s at 9, hanging on; the rest at 3, chatty',
  })
})

test('hard efforts of different lengths are not told as alike ones', () => {
  const hard = (id: string, seconds: number) => aBlock(id, { ...inSeconds(seconds), effort: { from: 8, to: 8 } })
  const easy = (id: string) => aBlock(id, { ...inSeconds(30), effort: { from: 3, to: 3 } })
  const blocks = Array.from({ length: 10 }, (_, i) => [hard(`a${i}`, 160), easy(`b${i}`), hard(`c${i}`, 55), easy(`d${i}`)]).flat()
  const ride = { ...smallRide(), sections: [aSection('s', { blocks })] }
  const said = plainContents(ride, computeRide(ride), 'today').lines.map(({ words }) => words)
  expect(said).toEqual(Array(5).fill('2 times 2:40 and 2 times 55 s at 8, one word at a time; the rest at 3, chatty'))
})

test('large type and telephones have the capitals that are promised: 22 minutes of arc at 0.7 and 0.5 m', () => {
  // 2·d·tan(11′), and a screen of 360 CSS pixels (95.25 mm) shown 66 mm wide.
  expect(LARGE.least).toBe(4.48)
  expect(PHONE_SCREENS.least * (66 / 95.25)).toBeGreaterThanOrEqual(2 * 500 * Math.tan((11 / 60) * (Math.PI / 180)))
})
