import type { Meaning } from '#engine/cues/claims/claim.ts'
import { numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  type Reader,
  type Reading,
  type Rule,
  read,
  says,
  slot,
  startsAt,
  wordAfter,
  wordAt,
  wordBefore,
} from './reader.ts'
import { wordSet } from './words.ts'

/** Words that tell when the class ends; the time stands after them in the same clause. */
const ENDING = wordSet('finish finishes finished done end ends ended out over home close closes wrap stop stops')
const PAST = new Map([
  ['past', 1],
  ['after', 1],
  ['to', -1],
  ['before', -1],
  ['of', -1],
  ['till', -1],
])

interface WallTime {
  /** Minutes of the day, or of half a day. */
  minute: number
  of24: boolean
  next: number
}

/** "it's 6:34", "we finish at five to seven", "done by seven o'clock": the clock on the wall. Where it is not said what is then, nothing is claimed. */
export const readClock: Rule = (reader, at) => {
  const time = wallTime(reader, at)
  if (time === null) return null
  const bare = bareTime(reader, at, time)
  if (bare !== null) return bare
  const first = leadOf(reader, at)
  const said = first === null ? null : first.at
  if (first === null || said === null) return null
  const { minute, of24 } = time
  const slots = /\d/.test(wordAt(reader, at)) ? [slot(reader, at, at, { as: 'wallClock', of24 })] : []
  return read(time.next, claim(reader, first.from, time.next - 1, [{ about: 'clock', minute, of24, at: said }], slots))
}

/** "6:08 on the clock", "6:08, and we climb", "already 6:08": what stands there now; it may be the time that is gone or left too. */
function bareTime(reader: Reader, at: number, { minute, of24, next }: WallTime): Reading | null {
  const figures = /^(\d{1,2}):([0-5]\d)$/.exec(wordAt(reader, at))
  const tail = endsAt(reader, next - 1) ? 0 : says(reader, next, 'on the clock|dot|nose|wall') ? 3 : says(reader, next, 'already') ? 1 : 0
  const already = wordBefore(reader, at) === 'already' && startsAt(reader, at - 1)
  if (!startsAt(reader, at) && !already) return null
  // "Quarter past six, let's jump."
  const named = /^(?:quarter|half)$/.test(wordAt(reader, at)) && wordAfter(reader, at) === 'past' && closes(reader, next - 1)
  // "1:30, all yours" is a length.
  if (tail === 0 && !named && (!figures || Number(figures[1]) < 5 || !closes(reader, at))) return null
  const seconds = figures ? 60 * Number(figures[1]) + Number(figures[2]) : null
  // "6:45 and we're done" is of the end.
  const end: Meaning[] = tail === 0 && !already ? [{ about: 'clock', minute, of24, at: 'end' }] : []
  const told: Meaning[] =
    seconds === null
      ? []
      : [
          { about: 'gone', value: seconds },
          { about: 'left', unit: 'seconds', value: seconds },
        ]
  const slots = figures ? [slot(reader, at, at, { as: 'wallClock', of24 })] : []
  return read(
    next + tail,
    claim(reader, already ? at - 1 : at, next + tail - 1, [{ about: 'clock', minute, of24, at: 'now' }, ...end, ...told], slots),
  )
}

/** "it is", "it's", "the clock says" before a time of now; "finish at", "done by" before one of the end. */
function leadOf(reader: Reader, start: number): { from: number; at: 'now' | 'end' } | null {
  let at = start
  // "It's just after 6:08".
  while (at > 0 && /^(?:just|about|almost|nearly|already|only|now|gone|exactly)$/.test(wordBefore(reader, at))) at--
  if (at > 1 && /^(?:after|past|before)$/.test(wordBefore(reader, at)) && /^(?:just|shortly|right)$/.test(wordBefore(reader, at - 1)))
    at -= 2
  const before = wordBefore(reader, at)
  if (before === "it's" || before === 'its') return { from: at - 1, at: 'now' }
  if (/^(?:is|says|reads|shows)$/.test(before) && /^(?:it|time|clock|that)$/.test(wordBefore(reader, at - 1)))
    return { from: at - 2, at: 'now' }
  // "The clock on the wall says".
  if (/^(?:says|reads|shows|say)$/.test(before)) {
    for (let place = at - 2; place >= at - 6 && place >= 0 && !endsAt(reader, place); place--) {
      if (/^(?:clock|watch|wall)$/.test(wordAt(reader, place))) return { from: place, at: 'now' }
    }
  }
  if (!/^(?:at|by|around|about|before)$/.test(before)) return null
  for (let place = at - 2; place >= at - 5 && place >= 0 && !endsAt(reader, place); place--) {
    if (ENDING.has(wordAt(reader, place))) return { from: place, at: 'end' }
    if (startsAt(reader, place)) break
  }
  return null
}

function wallTime(reader: Reader, at: number): WallTime | null {
  const figures = /^(\d{1,2}):([0-5]\d)$/.exec(wordAt(reader, at))
  if (figures) {
    const hours = Number(figures[1])
    // "1:30 of climbing" is a length.
    if (hours > 23 || wordAfter(reader, at) === 'of') return null
    const half = /^[ap]m$/.test(wordAfter(reader, at)) ? 1 : 0
    return { minute: (hours % 24) * 60 + Number(figures[2]), of24: hours > 12, next: at + 1 + half }
  }
  const past = quarterOrMinutes(reader, at)
  if (past !== null) {
    const hour = hourAt(reader, past.next)
    return hour && { minute: 60 * hour.value + past.minutes, of24: false, next: hour.next }
  }
  const hour = hourAt(reader, at)
  if (hour === null || endsAt(reader, hour.next - 1)) return null
  if (/^o'clock$/.test(wordAt(reader, hour.next))) return { minute: 60 * hour.value, of24: false, next: hour.next + 1 }
  const zero = wordAt(reader, hour.next) === 'oh' ? 1 : 0
  const minutes = numberAt(reader.tokens, hour.next + zero)
  if (minutes === null || minutes.fraction || minutes.value > 59 || (minutes.value < 10 && zero === 0)) return null
  return { minute: 60 * hour.value + minutes.value, of24: false, next: minutes.next }
}

/** "quarter past", "half past", "five to". */
function quarterOrMinutes(reader: Reader, at: number): { minutes: number; next: number } | null {
  const start = wordAt(reader, at) === 'a' ? at + 1 : at
  const part = wordAt(reader, start) === 'quarter' ? 15 : wordAt(reader, start) === 'half' ? 30 : null
  const number = part === null ? numberAt(reader.tokens, start) : null
  const minutes = part ?? (number && !number.fraction && number.value < 60 ? number.value : null)
  const next = part === null ? number?.next : start + 1
  if (minutes === null || minutes === 0 || next === undefined || endsAt(reader, next - 1)) return null
  const joint = next + (says(reader, next, 'minutes past|to|after|before') ? 1 : 0)
  const way = PAST.get(wordAt(reader, joint))
  // "It's two to one" is a score; "two past one" and "two minutes to one" are not.
  if (joint === next && minutes % 5 > 0 && wordAt(reader, joint) !== 'past') return null
  return way === undefined || endsAt(reader, joint) ? null : { minutes: way * minutes, next: joint + 1 }
}

function hourAt(reader: Reader, at: number): { value: number; next: number } | null {
  const number = numberAt(reader.tokens, at)
  return number && !number.fraction && number.value >= 1 && number.value <= 12 && number.next === at + 1 ? number : null
}
