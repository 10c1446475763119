import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { wordsPerSecond } from '#engine/cues/speechRate.ts'
import { DEFAULT_LEADER } from '#plan/defaults.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  wpm: number
  beats: number
  bpm: number
}

const rules = constantsOf({})

/** Words the page counts to so many beats, calmly. */
const wordsThatFit = ({ wpm, beats, bpm }: Inputs): number => ((beats * 60) / bpm) * wordsPerSecond(wpm, 0, rules)

checkRows('speech', rows, { 'cue.': wordsThatFit })

describe('the rate a leader starts with', () => {
  it('is the mean of what was measured in lectures, and calmer than what radio is advised', () => {
    const lecture = rows.find(({ id }) => id === 'speech.tauroza.lecture')!
    const radio = rows.find(({ id }) => id === 'speech.radio')!
    expect(DEFAULT_LEADER.wordsPerMinute).toBe((lecture.expected as number[])[2])
    expect(DEFAULT_LEADER.wordsPerMinute).toBeLessThan((radio.expected as number[])[0]!)
  })
})
