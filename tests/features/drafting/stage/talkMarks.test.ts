import { expect, it } from 'vitest'
import type { CueReport } from '#engine/report.ts'
import { talkMarks } from '#features/drafting/stage/talkMarks.ts'

const marks = (spoken: [from: number, to: number][], quiet: [from: number, to: number][] = [], stretch = { from: 0, to: 1e6 }) =>
  talkMarks(
    {
      lines: spoken.map(([from, to]) => ({ from, to })) as unknown as CueReport['lines'],
      quiet: quiet.map(([from, to]) => ({ from, to, section: 0 })),
    },
    { pixelsPerSecond: 10 },
    stretch,
  )
/** Start and width of every bar of a path. */
const bars = (path: string) => [...path.matchAll(/M([\d.]+) \d+v-\d+h([\d.]+)/g)].map((found) => [Number(found[1]), Number(found[2])])

it('draws what is said as long as it takes, and nothing that collides where nothing does', () => {
  const { said, both } = marks([
    [0, 2.5],
    [2.5, 4],
  ])
  expect(bars(said)).toEqual([
    [0, 25],
    [25, 15],
  ])
  expect(both).toBe('')
})

it('marks exactly the time in which two or more speak', () => {
  const { both } = marks([
    [0, 10],
    [2, 4],
    [3, 6],
    [8, 12],
    [11, 13],
  ])
  expect(bars(both)).toEqual([
    [20, 40],
    [80, 20],
    [110, 20 - 10],
  ])
})

it('leaves even the shortest word to be seen, and draws quiet stretches as lines', () => {
  const { said, quiet } = marks([[5, 5.01]], [[1, 3]])
  expect(bars(said)).toEqual([[50, 1]])
  expect(quiet).toMatch(/^M10 \d+H30$/)
})

it('draws of a ride what lies in the stretch that is drawn', () => {
  const { said, quiet } = marks(
    [
      [0, 2],
      [4, 6],
      [9, 12],
    ],
    [
      [0, 3],
      [5, 20],
    ],
    { from: 4.5, to: 8 },
  )
  expect(bars(said)).toEqual([[40, 20]])
  expect(quiet).toBe('M50 11H200')
})
