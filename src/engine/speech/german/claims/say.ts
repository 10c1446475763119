import type { Claim, Figures, Form, Meaning, Slot } from '#engine/cues/claims/claim.ts'
import type { OtherCall } from '#engine/cues/claims/plan/verdict.ts'
import { numberBefore, numberWords, ordinalStem } from '#engine/speech/german/numberWords.ts'
import { placeWords, sizeWords } from '#engine/speech/german/settingWords.ts'
import type { Edit, Scale } from '#engine/speech/speech.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { Seconds } from '#units/units.ts'
import { KIND_WORDS, knownKind } from './lexicon.ts'

/**
 * The changes that make a claim say other numbers, each in the form of the old one; null where the sentence would have
 * to be another one, as where an ending would have to follow.
 */
export function rewrite(text: string, { slots, meanings: [first] }: Claim, figures: Figures, scale: Scale): Edit[] | null {
  if (slots.length === 0) return null
  const turns = first.about === 'change' && Math.sign(first.low) !== Math.sign(figures.low ?? 0)
  if (turns && !slots.some(({ form }) => form.as === 'direction')) return null
  const edits: Edit[] = []
  for (const slot of slots) {
    const value = figures[slot.figure]
    const said = value === undefined ? null : sayIn(text, slot, value, scale)
    if (said === null) return null
    edits.push(...said)
  }
  return edits.filter(({ from, to, text: words }) => text.slice(from, to) !== words)
}

function sayIn(text: string, { from, to, form }: Slot, value: number, scale: Scale): Edit[] | null {
  const old = text.slice(from, to)
  const put = (words: string | null): Edit[] | null => (words === null ? null : [{ from, to, text: cased(old, words) }])
  switch (form.as) {
    case 'number':
      return sayNumber(text, { from, to }, form, value, put)
    case 'ordinal': {
      const stem = ordinalStem(Math.round(value))
      const ending = /(?:e|er|en|es|em)$/i.exec(old.toLowerCase().replace(/^(?:erst|zweit|dritt|[a-zäöüß]+?t)(?=e)/, ''))?.[0]
      return put(stem === null || ending === undefined ? null : stem + ending)
    }
    case 'duration':
      return put(value <= 0 ? null : sayTime(value, form))
    case 'amount':
      return put(sayAmount(Math.round(Math.abs(value) * scale.stepsPerUnit), form, old, scale))
    case 'direction':
      return value === 0 ? null : put(value > 0 ? 'mehr' : 'weniger')
    default:
      return null
  }
}

function sayNumber(
  text: string,
  { from, to }: { from: number; to: number },
  form: Form & { as: 'number' },
  value: number,
  put: (words: string | null) => Edit[] | null,
): Edit[] | null {
  const whole = Math.round(value / form.per)
  if (whole < 1 || whole > 999 || Math.abs(whole * form.per - value) > form.per / 4 + 1e-9) return null
  const noun = form.noun && text.slice(form.noun.from, form.noun.to)
  const old = text.slice(from, to)
  const wasOne = /^(?:1|ein\p{L}*)$/iu.test(old)
  if (noun === undefined || wasOne === (whole === 1))
    return whole === 1 && noun ? null : put(form.figures ? String(whole) : numberWords(whole))
  // One and many of a noun differ in more than the number: only nouns that are known are put right.
  const words = agreeing(noun, whole)
  if (words === null) return null
  const number = form.figures ? String(whole) : whole === 1 ? (FEMININE.test(words) ? 'eine' : null) : numberWords(whole)
  const edit = put(number)
  return edit && form.noun ? [...edit, { ...form.noun, text: words }] : edit
}

const FEMININE = /^(?:Phrase|Zählzeit|Runde|Welle|Attacke|Erholung|Belastung)$/

const NOUNS: readonly (readonly [one: string, many: string])[] = [
  ['Achter', 'Achter'],
  ['Phrase', 'Phrasen'],
  ['Takt', 'Takte'],
  ['Zählzeit', 'Zählzeiten'],
]

/** A noun as it stands after a number; null for one that is not known. */
function agreeing(noun: string, value: number): string | null {
  const kind = knownKind(noun.toLowerCase())
  const forms = (kind && KIND_WORDS[kind]) ?? NOUNS.find((words) => words.some((word) => word.toLowerCase() === noun.toLowerCase()))
  return forms ? forms[value === 1 ? 0 : 1] : null
}

/** The capital of what stood there. */
const cased = (old: string, words: string): string => (/^\p{Lu}/u.test(old) ? words[0]!.toUpperCase() + words.slice(1) : words)

/** A half minute this near is told instead, and longer times in minutes. */
const NEAR: Seconds = 4
const MOST_SECONDS = 110

function rounded(seconds: Seconds): Seconds {
  const half = 30 * Math.round(seconds / 30)
  if (half > 0 && Math.abs(seconds - half) <= NEAR) return half
  const step = seconds >= 180 ? 30 : seconds >= 25 ? 5 : 1
  return Math.max(1, Math.round(seconds / step) * step)
}

/** "dreißig Sekunden", "eine Minute", "anderthalb Minuten", "2:30". */
function sayTime(seconds: Seconds, { figures, unit }: Form & { as: 'duration' }): string | null {
  const value = rounded(seconds)
  if (unit === 'clock') return formatClock(value)
  const whole = (count: number): string => (figures ? String(count) : numberBefore(count))
  if (value % 60 === 0 && !(unit === 'seconds' && value === 60)) return `${whole(value / 60)} ${value === 60 ? 'Minute' : 'Minuten'}`
  if (value <= MOST_SECONDS && !(value === 90 && unit === 'minutes')) return `${whole(value)} ${value === 1 ? 'Sekunde' : 'Sekunden'}`
  if (value % 60 !== 30) return null
  const minutes = Math.floor(value / 60)
  if (figures) return `${minutes}½ Minuten`
  return `${minutes === 1 ? 'anderthalb' : `${numberWords(minutes)}einhalb`} Minuten`
}

/** In the form the other was said in; in a case that changes endings not at all. */
function sayAmount(steps: number, { figures, unit }: Form & { as: 'amount' }, old: string, scale: Scale): string | null {
  if (steps <= 0) return null
  const small = formatSetting(steps, scale.stepsPerUnit).replace('.', ',')
  const noun = /\p{L}+$/u.exec(old)?.[0] ?? ''
  if (figures && !/^(?:halb|viertel|dreiviertel|drittel|achtel)/i.test(noun)) {
    const many = steps > scale.stepsPerUnit
    return unit === undefined ? small : `${small} ${many ? plural(noun) : singular(noun)}`
  }
  if (unit === undefined) return placeWords(steps, scale)
  // "mit einer halben Umdrehung": endings would have to follow.
  if (/^(?:einer|einem|halben|der)(?!\p{L})/iu.test(old)) return null
  return sizeWords(steps, scale)
}

const singular = (noun: string): string => noun.replace(/(drehung|stufe)n?(?:en)?$/i, '$1').replace(/drehungen$/i, 'drehung')
const plural = (noun: string): string => (/drehung$/i.test(noun) ? `${noun}en` : /stufe$/i.test(noun) ? `${noun}n` : noun)

/** What the plan has, in words of its own. */
export function planWords(meaning: Meaning, { low = 0, high, of }: Figures, call: OtherCall | undefined, scale: Scale): string {
  const kind = 'kind' in meaning && meaning.kind !== undefined ? KIND_WORDS[meaning.kind] : undefined
  const counted = (value: number): string => (kind ? `${numberWords(value)} ${kind[value === 1 ? 0 : 1]}` : numberWords(value))
  const inOf = of === undefined ? '' : ` von ${numberWords(of)}`
  switch (meaning.about) {
    case 'change':
    case 'stay':
      if (call === 'allOff') return 'alles raus'
      return low === 0 ? 'gleicher Widerstand' : `${sizeWords(stepsOf(low, scale), scale)} ${low > 0 ? 'mehr' : 'weniger'}`
    case 'total': {
      const ends = [...new Set([low, high ?? low])].map(
        (value) => `${value < 0 ? 'minus ' : ''}${placeWords(stepsOf(value, scale), scale)}`,
      )
      return `${call === 'orMore' ? 'mindestens ' : call === 'orLess' ? 'höchstens ' : ''}${ends.join(' bis ')}`
    }
    case 'length':
      return meaning.unit === 'seconds' ? time(low) : music(low, meaning.unit)
    case 'left':
      return `noch ${meaning.unit === 'seconds' ? time(low) : music(low, meaning.unit)}`
    case 'gone':
      return `${time(low)} vorbei`
    case 'until':
      return `in ${meaning.unit === 'seconds' ? time(low) : music(low, meaning.unit)}`
    case 'share':
      return `${Math.round(100 * low)} Prozent geschafft`
    case 'clock':
      return formatClock(low)
    case 'rounds':
      return low === 1 ? 'eine Runde' : `${numberWords(low)} Runden`
    case 'ahead':
      return counted(low)
    case 'more':
      return low === 0 ? 'keine mehr' : `noch ${counted(low)}`
    case 'done':
      return low === 0 ? 'noch keine geschafft' : `${numberWords(low)}${inOf} geschafft`
    case 'place':
      return `${kind?.[0] ?? 'Nummer'} ${numberWords(low)}${inOf}`
    case 'last':
      if (high === undefined) return `Nummer ${numberWords(low)}`
      return high <= 0 ? `die letzte${inOf}` : `danach noch ${numberWords(high)}`
    case 'moveCounts':
      return `auf ${numberWords(Math.round(low))}`
    case 'each':
    case 'repeats':
      return `${numberWords(Math.round(low))} Mal`
    case 'effort':
      return `${Number.isInteger(low) ? numberWords(low) : String(low).replace('.', ',')} von zehn`
    case 'cadence':
      return `${Math.round(low)} U/min`
    case 'tempo':
      return `${Math.round(low)} bpm`
  }
}

const stepsOf = (value: number, { stepsPerUnit }: Scale): number => Math.round(Math.abs(value) * stepsPerUnit)
const time = (seconds: Seconds): string =>
  sayTime(Math.max(1, seconds), { as: 'duration', figures: false, unit: 'seconds', adjective: false }) ?? `${Math.round(seconds)} Sekunden`
function music(value: number, unit: 'counts' | 'bars'): string {
  const whole = Math.max(0, Math.round(value))
  if (unit === 'bars') return `${numberWords(whole)} ${whole === 1 ? 'Takt' : 'Takte'}`
  return `${numberWords(whole)} ${whole === 1 ? 'Zählzeit' : 'Zählzeiten'}`
}

/** A call put in the place of another, without an "auf" that stands before it already. */
export const fitting = (_old: string, before: string, words: string): string =>
  /(?<!\p{L})auf\s+$/iu.test(before) ? words.replace(/^auf /i, '') : words
