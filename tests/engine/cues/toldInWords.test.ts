import { describe, expect, it } from 'vitest'
import { tellsFeel } from '#engine/cues/feelWords.ts'
import { cueOffersSeat } from '#engine/cues/seatWords.ts'
import { english } from '#engine/speech/english/english.ts'
import type { Cue } from '#plan/model.ts'

const cue = (text: string): Cue => ({ id: 'q', moment: 'announce', lead: { counts: 8 }, text })

describe('a feel told in words', () => {
  it.each([
    'Half a turn on, feels like wet sand.',
    'Quarter turn on, heavy but smooth.',
    'Three quarters on, a real hill.',
    'Quarter on, brisk, you can still chat.',
    'One turn on, thick now.',
    'Almost nothing on.',
    'Half on. Short sentences only.',
  ])('is heard: %s', (text) => expect(tellsFeel(cue(text), english)).toBe(true))

  it.each([
    'Half a turn on.',
    'Quarter on, then up. Light hands.',
    'One turn on, shoulders easy.',
    'Land soft, hips back.',
    'Three pushes next.',
  ])('is not: %s', (text) => expect(tellsFeel(cue(text), english)).toBe(false))
})

describe('a seat offered in words', () => {
  it.each([
    'Quarter on, then up. Or stay seated.',
    'Option: seated, same load.',
    'The saddle is always there.',
    'Up, or ride it in the saddle.',
    'Seated works too.',
    'You can sit any time.',
  ])('is heard: %s', (text) => expect(cueOffersSeat(cue(text), true, english)).toBe(true))

  it.each([
    'Sit, keep it on.',
    'Rise. Hips to the saddle and home, on fours.',
    'Up, out of the saddle.',
    'Run tall, hips over the saddle.',
    'Stay strong.',
  ])('is not: %s', (text) => expect(cueOffersSeat(cue(text), true, english)).toBe(false))
})
