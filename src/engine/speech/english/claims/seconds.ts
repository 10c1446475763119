import type { Meaning, MeaningOf } from '#engine/cues/claims/claim.ts'
import { afterAdjectives } from './describing.ts'
import { type NumberPhrase, numberAt } from './numberAt.ts'
import {
  claim,
  closes,
  endsAt,
  isKnob,
  type Meanings,
  numberSlot,
  type Reader,
  type Rule,
  read,
  says,
  slot,
  wordAfter,
  wordAt,
  wordBefore,
} from './reader.ts'
import { type Role, roleOf } from './role.ts'
import { type TimePhrase, timeAt } from './timeAt.ts'
import { BODY, ENDS_UP, MINUTE_UNITS } from './words.ts'

/** "forty seconds to go", "a minute down", "a thirty-second push", "in ten seconds we go": a time with its unit. */
export const readSeconds: Rule = (reader, at) => {
  const time = timeAt(reader, at)
  if (time === null) return null
  const role = roleOf(reader, at, time.next, time.more === true, time.last === true)
  // One second is no time that anybody plans, and an hour is told of the class where it is told at all.
  if (role.kind === 'none' || time.low < 2 || (time.low >= HOUR && role.kind !== 'gone' && role.kind !== 'left')) return read(time.next)
  // "Two-second check": nobody plans as little, and what is no effort is no block.
  if (role.kind === 'length' && (time.low < 4 || (time.form.adjective && !isEffort(reader, time.next)))) return read(time.next)
  // A range, "a couple" and "nearly a minute" are guesses and limits, which no single number takes the place of.
  const exact = time.low === time.high && !time.near && role.bound === undefined
  const slots = exact ? [slot(reader, at, time.next - 1, time.form)] : []
  return read(role.next, claim(reader, role.first, role.next - 1, meaningsOf(time, role), slots))
}

/** Whether a noun may name what is ridden: a "thirty-second blast", but no "two-minute warning". */
const isEffort = (reader: Reader, at: number): boolean => {
  const word = wordAt(reader, at)
  const noun = afterAdjectives(reader, at)
  return EFFORT.test(word) || (noun > at && EFFORT.test(wordAt(reader, noun)))
}

const EFFORT =
  /^(?:push|sprint|burst|blast|climb|hill|effort|surge|rest|break|breather|recovery|recover|interval|hold|finish|finale|jump|jumps|ride|song|track|flush|cool|cooldown|warm|warmup|chase|attack|kick|grind|all|hard|easy|standing|seated|run|race|round|set|piece|block|drill|reset|float|stand|press|work|roll|flat|tempo|mountain|dash|test|stretch|stint|power|max|fast|heavy|seat|pushes|sprints|surges|climbs|hills|efforts|rounds|intervals|bursts|breaks|push-out|out|over|spurt|rip|burn|burner|opener|closer|rush|go|turn)s?$/

const HOUR = 3600
/** As much of one thing is hardly planned: the class so far may be meant. */
const LONG = 300

function meaningsOf({ low, high, near }: TimePhrase, role: Role): Meanings {
  const of = role.of && { of: role.of }
  const bound = role.bound ?? (near && 'near')
  const length: Meaning = {
    about: 'length',
    unit: 'seconds',
    low,
    high,
    ...(bound && { bound }),
    ...(role.on && Object.keys(role.on).length > 0 && { on: role.on }),
    ...(role.of === 'song' && { song: true as const }),
    ...(role.of === 'class' && { class: true as const }),
  }
  const left: Meaning = { about: 'left', unit: 'seconds', value: low, ...of, ...((near || role.bound) && { near: true as const }) }
  switch (role.kind) {
    case 'gone':
      return [{ about: 'gone', value: low, ...of, ...(role.bound && { near: true as const }) }]
    case 'until':
      // What is named is waited for; else what there is may end.
      return [{ about: 'until', unit: 'seconds', value: low, ...role.target }, ...(role.open && !role.target ? [left] : [])]
    case 'left':
      return [left, ...(role.open ? [{ ...length, on: { ahead: true as const } }] : [])]
    default:
      if (role.change && role.target) return [{ about: 'until', unit: 'seconds', value: low, ...role.target }]
      if (role.open) return [{ ...left, of: 'block' }, length]
      if (role.change) return [length, { ...left, of: 'block' }, { about: 'until', unit: 'seconds', value: low }]
      // What is left of the block may be told without "left", what is left of the song is not.
      if (low >= LONG && role.on?.quality !== 'easy')
        return [length, { ...left, of: 'block', midway: true }, { about: 'gone', value: low, of: 'class' }]
      return role.on?.quality || role.on?.kind || bound ? [length] : [length, { ...left, of: 'block', midway: true }]
  }
}

/** A round number of seconds, as people leave the unit away. */
const isRound = (value: number): boolean => value >= 10 && value <= 120 && value % 5 === 0

/** "for twenty", "last ten", "forty to go", "thirty hard", "twenty on, forty off": a time without its unit. */
export const readBareSeconds: Rule = (reader, at) => {
  const number = numberAt(reader.tokens, at)
  if (number === null || number.fraction) return null
  if (!isRound(number.value)) return forCounts(reader, at, number)
  const { value, next } = number
  const slots = [slot(reader, at, next - 1, { as: 'duration', figures: number.figures, unit: 'bare', adjective: false })]
  const made = (last: number, first: number, ...meanings: Meanings) => read(last + 1, claim(reader, first, last, meanings, slots))
  const before = wordBefore(reader, at)
  const after = wordAfter(reader, next - 1)
  const left: Meaning = { about: 'left', unit: 'seconds', value }
  const counts: Meaning[] = [8, 16, 32, 64].includes(value) ? [{ about: 'left', unit: 'counts', value, midway: true }] : []
  const ahead = reader.marks[at]!.ahead && { on: { ahead: true as const } }
  const length: MeaningOf<'length'> = { about: 'length', unit: 'seconds', low: value, high: value, ...ahead }
  const alone = closes(reader, next - 1)
  if ((before === 'last' || before === 'final') && alone) return made(next - 1, at - 1, left, ...counts, { ...length, on: { ahead: true } })
  if (says(reader, next, 'to go') && !endsAt(reader, next - 1)) return made(next + 1, at, left, { about: 'more', value }, ...counts, length)
  if (says(reader, next, 'to the') && !endsAt(reader, next - 1) && ENDS_UP.has(wordAt(reader, next + 2)))
    return made(next + 2, at, left, length)
  const posture = MINUTE_UNITS.has(before) ? null : postureEnd(reader, next)
  if (posture !== null) return made(posture - 1, at, { ...length, on: { posture: true } })
  if ((after === 'left' || after === 'remaining') && !BODY.has(wordAfter(reader, next))) {
    return made(next, at, left, { about: 'more', value }, ...counts, length)
  }
  if (after === 'more' && closes(reader, next)) {
    return isKnob(reader) ? made(next, at, left, { about: 'more', value }, ...counts, length) : null
  }
  if (after === 'down' && endsAt(reader, next) && isKnob(reader)) return made(next, at, { about: 'gone', value }, { about: 'done', value })
  if (says(reader, next, 'on the clock') && !endsAt(reader, next - 1)) return made(next + 2, at, length, left)
  if (before === 'another' && value >= 15 && alone) return made(next - 1, at - 1, { ...left, of: 'block' }, ...counts, length)
  const quality = qualityAfter(reader, next)
  if (quality) return made(quality.last, at, { ...length, on: { quality: quality.is } })
  if (before === 'for' && alone) return made(next - 1, at, length, { about: 'length', unit: 'counts', low: value, high: value }, left)
  return null
}

/** "up for sixty-four": counts, where they make whole eights. */
function forCounts(reader: Reader, at: number, { value, next, figures }: NumberPhrase) {
  if (wordBefore(reader, at) !== 'for' || value < 16 || value > 128 || value % 8 > 0 || !closes(reader, next - 1)) return null
  const on = reader.marks[at]!.ahead && { on: { ahead: true as const } }
  const counts: Meaning = { about: 'length', unit: 'counts', low: value, high: value, ...on }
  return read(next, claim(reader, at, next - 1, [counts, { ...counts, unit: 'seconds' }], [numberSlot(reader, at, next, figures)]))
}

/** Where "… in the saddle", "… on your feet", "… standing" ends after a bare number; null without it. */
function postureEnd(reader: Reader, next: number): number | null {
  if (endsAt(reader, next - 1)) return null
  if (says(reader, next, 'in|out the saddle') || says(reader, next, 'on your|our feet')) return next + 3
  if (says(reader, next, 'out of the saddle')) return next + 4
  return /^(?:standing|seated)$/.test(wordAt(reader, next)) && closes(reader, next) ? next + 1 : null
}

/** "thirty hard", "forty easy", "twenty on": a knob is never turned by as much. */
function qualityAfter(reader: Reader, next: number): { is: 'hard' | 'easy'; last: number } | null {
  if (says(reader, next, 'to breathe|recover|chill|rest|relax|ease|settle|reset|sip') && !endsAt(reader, next - 1))
    return { is: 'easy', last: next + 1 }
  if (!closes(reader, next)) return null
  const word = wordAfter(reader, next - 1)
  if (word === 'hard' || word === 'work' || (word === 'on' && isKnob(reader))) return { is: 'hard', last: next }
  if (/^(?:easy|rest|recovery)$/.test(word) || (word === 'off' && isKnob(reader))) return { is: 'easy', last: next }
  return null
}
