import { expect, test } from 'vitest'
import { withoutName } from '#engine/cues/withoutName.ts'
import { ENGLISH } from '#plan/patterns/words/english.ts'

test.each([
  ['Seated hill. Heavy, but smooth.', 'seated hill', 'Heavy, but smooth.'],
  ['Jumps next. Up slow, down slow, land soft.', 'jumps on 8', 'Up slow, down slow, land soft.'],
  ['Push next. Resistance first, then go.', 'push', 'Resistance first, then go.'],
  ['seated hill, heavy but smooth.', 'Seated Hill', 'Heavy but smooth.'],
  ['Surge.', 'surge 1', ''],
  ['Surge two.', 'surge 1', 'Surge two.'],
  ['Push, then go.', 'push', 'Push, then go.'],
  ['Push harder than before.', 'push', 'Push harder than before.'],
  ['Seated hill two minutes.', 'seated hill', 'Seated hill two minutes.'],
  ['Next. Breathe.', 'recover', 'Next. Breathe.'],
  ['Sit. Breathe.', 'recover', 'Sit. Breathe.'],
  ['', 'recover', ''],
  ['Anything at all.', '', 'Anything at all.'],
])('“%s” beside the name “%s” → “%s”', (words, name, expected) => {
  expect(withoutName(words, name)).toBe(expected)
})

test('no pattern’s own cue begins with its name where that stands before it', () => {
  for (const { name, cue } of Object.values(ENGLISH)) {
    const [first = ''] = name.split(' ')
    expect(withoutName(cue, name).toLowerCase().startsWith(first)).toBe(false)
  }
})
