import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { DEFAULT_LEADER } from '#plan/defaults.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  wpm: number
  beats: number
  bpm: number
}

const rules = constantsOf({})

/** Words the page takes to fill so many beats, without the pause it leaves after them. */
function wordsThatFit({ wpm, beats, bpm }: Inputs): number {
  const rate = wordsPerSecond(wpm, 0, rules)
  const aWord = speechSeconds(2, rate, rules) - speechSeconds(1, rate, rules)
  return (beats * 60) / bpm / aWord
}

checkRows('speech', rows, { 'cue.': wordsThatFit })

describe('the rate a leader starts with', () => {
  it('is the mean of what was measured in lectures, and calmer than what radio is advised', () => {
    const lecture = rows.find(({ id }) => id === 'speech.tauroza.lecture')!
    const radio = rows.find(({ id }) => id === 'speech.radio')!
    expect(DEFAULT_LEADER.wordsPerMinute).toBe((lecture.expected as number[])[2])
    expect(DEFAULT_LEADER.wordsPerMinute).toBeLessThan((radio.expected as number[])[0]!)
  })
})
