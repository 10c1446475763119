import { describe, expect, it } from 'vitest'
import { constantsOf } from '#engine/constants.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { speakingSeconds, speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { utteranceOf, utteranceOfCue } from '#engine/cues/utterance.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Cue } from '#plan/model.ts'
import measured from './measured.json' with { type: 'json' }

const rules = constantsOf({})
const AT = wordsPerSecond(140, 0, rules)
const secondsOf = (text: string): number => speakingSeconds(utteranceOf(text), AT, rules)

describe('how long words take, against a synthesiser at the same rate', () => {
  for (const [name, cues] of Object.entries(measured.sets)) {
    it(`is within 15 % for nine in ten cues of three to thirty words: ${name} set`, () => {
      expect(cues.length).toBeGreaterThanOrEqual(100)
      const apart = cues.map(([text, seconds]) => {
        const words = countWords(text as string)
        expect(words >= 3 && words <= 30, text as string).toBe(true)
        return secondsOf(text as string) / (seconds as number) - 1
      })
      expect(apart.filter((share) => Math.abs(share) <= 0.15).length / apart.length).toBeGreaterThanOrEqual(0.9)
      // Neither too long nor too short on the whole.
      expect(Math.abs(apart.reduce((sum, share) => sum + share, 0) / apart.length)).toBeLessThan(0.03)
    })
  }

  it('hears the stops: five words, and four seconds', () => {
    const text = 'Wheel stopped. Hips, hamstrings, calves.'
    expect(utteranceOf(text)).toEqual({ syllables: 6, consonants: 20, stops: 1, commas: 2 })
    const spoken = speechSeconds(utteranceOf(text), AT, rules)
    expect(spoken).toBeGreaterThan(4.1 / 1.15)
    expect(spoken).toBeLessThan(4.1 * 1.15)
  })
})

describe('what is counted', () => {
  it.each([
    ['ride', 1],
    ['the', 1],
    ['saddle', 2],
    ['settled', 2],
    ['breathes', 1],
    ['changes', 2],
    ['seated', 2],
    ['pushed', 1],
    ['something', 2],
    ['movement', 2],
    ['smoothly', 2],
    ['going', 2],
    ['trying', 2],
    ['radio', 3],
    ['motion', 2],
    ['special', 2],
    ['patient', 2],
    ['heavier', 3],
    ['piano', 3],
    ['rhythm', 2],
    ['recovery', 4],
    ['resistance', 3],
    ['hamstrings', 2],
    ['intensity', 4],
    ['everybody', 4],
    ['comfortable', 3],
    ['physically', 3],
    ["don't", 1],
    ["didn't", 2],
    ["we'll", 1],
    ["that'll", 2],
    ["o'clock", 2],
    ["y'all", 1],
    ['rpm', 3],
    ['hmm', 1],
    ['café', 2],
    ['вверх', 3],
  ])('%s has %d', (word, syllables) => {
    expect(utteranceOf(word).syllables).toBe(syllables)
  })

  it.each([
    ['90 rpm', 'ninety r p m'],
    ['1½ on', 'one and a half on'],
    ['¾ off', 'three quarters off'],
    ['+¼', 'plus a quarter'],
    ['1:30 to go', 'one thirty to go'],
    ['at 3/4 of it', 'at three quarters of it'],
    ['1.5 turns', 'one point five turns'],
    ['50 % more', 'fifty percent more'],
    ['125 watts', 'one hundred and twenty five watts'],
    ['2500 meters', 'two thousand five hundred meters'],
  ])('reads %s as “%s”', (figures, words) => {
    expect(utteranceOf(figures).syllables).toBe(utteranceOf(words).syllables)
  })

  it('counts pauses between words and not the stop at the end', () => {
    expect(utteranceOf('Up.')).toMatchObject({ stops: 0, commas: 0 })
    expect(utteranceOf('Up, down… Sit – breathe: go!')).toMatchObject({ stops: 1, commas: 3 })
    expect(utteranceOf('…')).toEqual({ syllables: 0, consonants: 0, stops: 0, commas: 0 })
  })

  it('takes no time where nothing is said, and all of it longer where the rate is lower', () => {
    expect(speechSeconds(utteranceOf(' – '), AT, rules)).toBe(0)
    const speech = utteranceOf('Sit, breathe. Shake it out.')
    expect(speakingSeconds(speech, AT / 2, rules)).toBeCloseTo(2 * speakingSeconds(speech, AT, rules), 9)
    expect(speechSeconds(speech, AT, rules) - speakingSeconds(speech, AT, rules)).toBeCloseTo(rules.speechPause, 9)
  })

  it('follows a text that is edited, cue by cue', () => {
    const cue: Cue = { id: 'c', moment: 'announce', text: 'Up.', lead: { counts: 4 } }
    expect(utteranceOfCue(cue, english).syllables).toBe(1)
    expect(utteranceOfCue({ ...cue, text: 'Standing up.' }, english).syllables).toBe(3)
  })

  it('is as quick on a long text as on a short one', () => {
    const text = `${'climb and breathe, '.repeat(20_000)}${'e'.repeat(20_000)} ${'sometimes'.repeat(2_000)}`
    expect(utteranceOf(text).commas).toBe(20_000)
  })
})
