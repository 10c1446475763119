import { afterEach, describe, expect, it } from 'vitest'
import type { Problem } from '#units/problem.ts'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'
import { say } from '#words/said.ts'
import { setWords, tellRefusal } from '#words/words.ts'

afterEach(() => setWords('en', en, 'en-US'))

const CASES: readonly (readonly [Problem, string, string])[] = [
  [
    { kind: 'notNumber', of: 'tempo' },
    'Tempo must be a number, such as 128 or 127.6.',
    'Das Tempo muss eine Zahl sein, zum Beispiel 128 oder 127,6.',
  ],
  [
    { kind: 'outside', of: 'tempo', min: 30, max: 300 },
    'Tempo must be between 30 and 300 bpm.',
    'Das Tempo muss zwischen 30 und 300 bpm liegen.',
  ],
  [
    { kind: 'outside', of: 'rounds', min: 1, max: 100 },
    'The number of rounds must be between 1 and 100.',
    'Die Zahl der Runden muss zwischen 1 und 100 liegen.',
  ],
  [{ kind: 'notWhole', of: 'age' }, 'Age must be a whole number.', 'Das Alter muss eine ganze Zahl sein.'],
  [
    { kind: 'tooFine', of: 'mass', decimals: 1 },
    'Weight can have at most one decimal place.',
    'Das Gewicht darf höchstens eine Nachkommastelle haben.',
  ],
  [{ kind: 'notNumber', of: 'mass' }, 'Weight must be a number, such as 154.', 'Das Gewicht muss eine Zahl sein, zum Beispiel 70.'],
  [{ kind: 'notSetting', unit: 'turn', example: 6, stepsPerUnit: 4 }, 'Write turns, such as 1½.', 'Schreib Umdrehungen, zum Beispiel 1½.'],
  [{ kind: 'notSetting', unit: 'notch', example: 2, stepsPerUnit: 1 }, 'Write notchs, such as 2.', 'Schreib notch, zum Beispiel 2.'],
  [
    { kind: 'noSuchStep', low: 13, high: 14, stepsPerUnit: 10 },
    'This bike has no such step: the nearest are 1.3 and 1.4.',
    'So genau lässt sich dieses Rad nicht einstellen: am nächsten sind 1,3 und 1,4.',
  ],
  [
    { kind: 'partOfCount', below: 10, above: 11, unit: 8 },
    'A length is whole counts: the nearest are 1 eight + 2 and 1 eight + 3.',
    'Eine Länge besteht aus ganzen Zählzeiten: am nächsten sind 1 Achter + 2 und 1 Achter + 3.',
  ],
]

describe('why a typed text is not taken', () => {
  it.each(CASES)('%j is told in English and in German', (problem, english, german) => {
    setWords('en', en, 'en-US')
    expect(tellRefusal(problem)).toBe(english)
    setWords('de', de, 'de-DE')
    expect(tellRefusal(problem)).toBe(german)
  })

  it('may be a text of ours or of somebody else', () => {
    expect(tellRefusal(say('names.untitled'))).toBe('untitled ride')
    expect(tellRefusal('Not today.')).toBe('Not today.')
  })
})
