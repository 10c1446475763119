import { expect, test } from 'vitest'
import { withoutCall } from '#engine/cues/withoutCall.ts'

test.each([
  ['Half turn on. Heavy, but smooth.', 'half a turn on', 'Heavy, but smooth.'],
  ['Sit. One and a quarter off. Drink.', 'one and a quarter off', 'Sit. Drink.'],
  ['One and a quarter on, then go.', 'one and a quarter on', 'Then go.'],
  ['Stay down, half turn off. Leans next.', 'half a turn off', 'Stay down. Leans next.'],
  ['Quarter turn on.', 'a quarter turn on', ''],
  ['Quarter turn on and rise. Last thirty.', 'a quarter turn on', 'Quarter turn on and rise. Last thirty.'],
  ['Half turn on.', 'one turn on', 'Half turn on.'],
  ['Half turn off.', 'half a turn on', 'Half turn off.'],
  ['Sit softly.', 'stay', 'Sit softly.'],
])('“%s” beside the call “%s” → “%s”', (words, call, expected) => {
  expect(withoutCall(words, call)).toBe(expected)
})
