import type { Form } from '#engine/cues/claims/claim.ts'
import { placeWords, sizeWords } from '#engine/speech/english/settingWords.ts'
import type { Scale } from '#engine/speech/speech.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { KnobSteps } from '#units/units.ts'
import { agreeing } from './sayWhole.ts'

/**
 * A size or place on the bike's scale in the form another was said in: "half a turn" → "three quarters of a turn", "Quarter
 * on" → "half", "1.5 turns" → "0.75 turns", "3/4" → "1/2"; null where the words around it would not fit it.
 *
 * @param steps above nothing
 * @param old how the other was said
 * @param more true where "another" or "more" stands before or in it
 */
export function sayAmount(
  steps: KnobSteps,
  { figures, decimal, unit, article }: Form & { as: 'amount' },
  old: string,
  more: boolean,
  scale: Scale,
): string | null {
  if (steps <= 0) return null
  const value = steps / scale.stepsPerUnit
  if (figures) return sayFigures(steps, decimal, old, scale)
  // "One more turn" may be "two more turns", and no part of one.
  if (/\bmore\b/i.test(old))
    return Number.isInteger(value) ? old.replace(/^\w+/, placeWords(steps, scale)).replace(/\w+$/, (noun) => agreeing(noun, value)) : null
  if (unit === undefined) return withoutUnit(steps, article, old, scale)
  return withUnit(steps, unitIn(old, unit), article, more, scale)
}

/** "one and a quarter", "a half": without its unit where that was left away, and where it says enough by itself. */
function withoutUnit(steps: KnobSteps, article: boolean, old: string, scale: Scale): string {
  const words = placeWords(steps, scale)
  if (scale.unit !== 'turn') return words
  const part = /\b(?:half|quarters?)\b/i.test(old)
  const small = part && !/\band\b/i.test(old)
  const value = steps / scale.stepsPerUnit
  if (Number.isInteger(value) ? part : value < 1 && !small) return sizeWords(steps, scale)
  return article ? words : words.replace(/^an? /, '')
}

/** The unit as it was called, in the singular: "two turns and a half" is turns. */
function unitIn(old: string, unit: string): string {
  const words = old.match(/\p{L}+/gu) ?? []
  const noun = words.findLast(
    (word, i) => i > 0 && !/^(?:and|an?|the|of|half|quarters?|thirds?|eighths?|sixths?|three|two|five|seven)$/i.test(word),
  )
  return noun === undefined ? unit : agreeing(noun.toLowerCase(), 1)
}

/** "half a turn", "three quarters of a turn", "one turn", "one and a quarter turns". */
function withUnit(steps: KnobSteps, unit: string, article: boolean, more: boolean, scale: Scale): string {
  const value = steps / scale.stepsPerUnit
  const words = placeWords(steps, scale)
  if (value === 1) return more ? unit : `one ${unit}`
  if (value > 1) return `${words} ${agreeing(unit, 2)}`
  if (/^an? (?:half|quarter)$/.test(words)) {
    const part = words.replace(/^an? /, '')
    if (more || !article) return `${part} ${unit}`
    return part === 'half' ? `half a ${unit}` : `a quarter ${unit}`
  }
  return `${words} of a ${unit}`
}

/** "1½ turns", "1.5 turns", "1 1/2 turns": the number as it was written, and the unit agreeing with it. */
function sayFigures(steps: KnobSteps, decimal: boolean, old: string, scale: Scale): string | null {
  const match = /^([\d.,/\s½⅓⅔¼¾⅛⅜⅝⅞]*[\d½⅓⅔¼¾⅛⅜⅝⅞])(\s*)(.*)$/u.exec(old)
  if (!match) return null
  const [, written, gap, rest] = match
  const value = steps / scale.stepsPerUnit
  const small = formatSetting(steps, scale.stepsPerUnit)
  const number = decimal ? formatNumber(value, 3) : /\//.test(written!) ? withSlash(small) : small
  if (rest === '') return number
  const noun = /(\p{L}+)$/u.exec(rest!)?.[1]
  return noun ? `${number}${gap || ' '}${agreeing(noun, value > 1 || (decimal && value < 1) ? 2 : 1)}` : null
}

/** "1¾" → "1 3/4". */
const withSlash = (small: string): string => {
  const sign = /[½⅓⅔¼¾⅛⅜⅝⅞⅙⅚]$/u.exec(small)?.[0]
  if (!sign) return small
  const whole = small.slice(0, -1)
  return `${whole === '' ? '' : `${whole} `}${sign.normalize('NFKD').replace('⁄', '/')}`
}
