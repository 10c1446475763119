import type { Bound, Claim, Meaning, Slot, Subject, Unit } from '#engine/cues/claims/claim.ts'
import { EASY, HARD, knownKind, MUSIC, POSTURE, TIMES } from './lexicon.ts'
import { numberAt } from './numberAt.ts'
import { after, before, claim, closes, endsAt, one, type Reader, type Rule, range, wholeSlot, wordAt } from './reader.ts'

/** "dreißig Sekunden", "anderthalb Minuten", "1:30": seconds, and the token after it. */
function timeAt(reader: Reader, at: number): { seconds: number; next: number; slot: Slot } | null {
  const { tokens } = reader
  const clock = /^(\d{1,2}):(\d{2})$/.exec(wordAt(reader, at))
  const slot = (last: number, figures: boolean, unit: 'seconds' | 'minutes' | 'clock'): Slot => ({
    ...range(reader, at, last),
    figure: 'low',
    form: { as: 'duration', figures, unit, adjective: false },
  })
  if (clock) return { seconds: Number(clock[1]) * 60 + Number(clock[2]), next: at + 1, slot: slot(at, true, 'clock') }
  const number = numberAt(tokens, at)
  if (!number || endsAt(reader, number.next - 1)) return null
  const per = TIMES.get(wordAt(reader, number.next))
  if (per === undefined) return null
  return { seconds: number.value * per, next: number.next + 1, slot: slot(number.next, number.figures, per === 60 ? 'minutes' : 'seconds') }
}

export function readTime(reader: Reader, at: number): ReturnType<Rule> {
  const time = timeAt(reader, at)
  if (!time || time.seconds <= 0) return null
  const isClock = time.slot.form.as === 'duration' && time.slot.form.unit === 'clock'
  // "1:30" alone may be a time of day.
  if (isClock && !/^(?:noch|für|letzten)$/.test(before(reader, at))) return one(time.next)
  return lasting(reader, at, time.next, 'seconds', time.seconds, [time.slot])
}

/** "zwei Achter", "sechzehn Zählzeiten", "vier Takte", "eine Phrase"; and "in acht" of what comes on the beat. */
export function readMusic(reader: Reader, at: number): ReturnType<Rule> {
  const number = numberAt(reader.tokens, at)
  if (!number || number.fraction) return null
  const noun = endsAt(reader, number.next - 1) ? '' : wordAt(reader, number.next)
  const music = MUSIC.get(noun)
  if (music) {
    const slot = wholeSlot(reader, at, number, music.per, number.next)
    return lasting(reader, at, number.next + 1, music.unit, number.value * music.per, [slot])
  }
  const isIn = before(reader, at) === 'in' && [4, 8, 16, 32].includes(number.value) && closes(reader, number.next - 1)
  if (!isIn) return null
  const meaning: Meaning = { about: 'until', unit: 'counts', low: number.value, high: number.value, value: number.value } as Meaning
  return one(number.next, claim(reader, at, number.next - 1, [meaning], [wholeSlot(reader, at, number)]))
}

/** What a length of time or music is said of, by the words around it. */
function lasting(reader: Reader, at: number, next: number, unit: Unit, value: number, slots: readonly Slot[]): ReturnType<Rule> {
  const lead = before(reader, at)
  const behind = after(reader, next - 1)
  const left: Meaning = { about: 'left', unit, value }
  const length = (on: Subject, bound?: Bound): Meaning => ({
    about: 'length',
    unit,
    low: value,
    high: value,
    ...(Object.keys(on).length > 0 && { on }),
    ...(bound && { bound }),
  })
  const claimed = (...meanings: Claim['meanings']) => one(next, claim(reader, at, next - 1, meanings, slots))
  if (/^(?:geschafft|vorbei|rum|hinter|gefahren)$/.test(behind) || lead === 'seit') {
    return unit === 'seconds' ? claimed({ about: 'gone', value }) : one(next)
  }
  if (lead === 'in') return claimed({ about: 'until', unit, value } as Meaning)
  if (behind === 'bis' || lead === 'bis') return claimed({ about: 'until', unit, value, ...targetAfter(reader, next) } as Meaning)
  if (/^(?:noch|letzten|letzte|übrig)$/.test(lead) || /^(?:noch|übrig|bleiben)$/.test(behind)) return claimed(left, length({}))
  const on = subjectAfter(reader, next)
  if (/^(?:etwa|rund|circa|ca|ungefähr|fast|knapp)$/.test(lead)) return claimed(length(on, 'near'), { ...left, near: true })
  if (/^(?:unter|maximal|höchstens)$/.test(lead)) return claimed(length(on, 'under'))
  if (/^(?:über|mindestens)$/.test(lead)) return claimed(length(on, 'over'))
  return claimed(length(on), left)
}

/** "bis zum Berg", "bis zur Pause". */
function targetAfter(reader: Reader, at: number): { kind?: string } {
  const noun = /^(?:zum|zur|zu|die|der|den|das)$/.test(after(reader, at)) ? wordAt(reader, at + 2) : ''
  const kind = knownKind(noun)
  return kind === undefined || kind === 'recover' ? {} : { kind }
}

/** "dreißig Sekunden Push", "eine Minute locker", "zwei Minuten im Stehen". */
function subjectAfter(reader: Reader, next: number): Subject {
  const words: string[] = []
  for (let at = next - 1; words.length < 2 && !endsAt(reader, at); at++) words.push(wordAt(reader, at + 1))
  for (const word of words) {
    if (EASY.has(word)) return { quality: 'easy' }
    if (HARD.has(word)) return { quality: 'hard' }
    if (POSTURE.has(word)) return { posture: true }
    const kind = knownKind(word)
    if (kind !== undefined) return { kind }
  }
  return {}
}
