import { numberWords } from '#engine/speech/english/numberWords.ts'
import { singular } from './singular.ts'
import { ORDINALS, PLURALS } from './words.ts'

/** A whole number in figures or in words, as the one before it was said. */
export const sayWhole = (value: number, figures: boolean): string => (figures ? String(value) : numberWords(value))

/** "second", "2nd"; null beyond the twelfth. */
export function sayOrdinal(value: number, figures: boolean): string | null {
  if (!figures) return value >= 1 ? (ORDINALS[value] ?? null) : null
  const last = value % 100 >= 11 && value % 100 <= 13 ? 0 : value % 10
  return `${value}${['th', 'st', 'nd', 'rd'][last] ?? 'th'}`
}

/** "fours", "4s"; null for counts no plural is used for. */
export function sayPlural(value: number, figures: boolean): string | null {
  if (figures) return `${value}s`
  for (const [word, counts] of PLURALS) if (counts === value) return word
  return null
}

/** A noun as it stands after a number: "push" and "pushes". */
export function agreeing(noun: string, value: number): string {
  const single = singular(noun)
  if (value === 1) return single
  return /(?:sh|ch|s|x)$/i.test(single) ? `${single}es` : `${single}s`
}

/** "a" or "an" before a number as it is spoken: "an eighty-second push". */
export const articleFor = (words: string): 'a' | 'an' => (/^(?:eight|eleven|8|11(?!\d)|18(?!\d))/i.test(words) ? 'an' : 'a')
