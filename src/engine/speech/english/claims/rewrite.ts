import type { Claim, Figures, Slot } from '#engine/cues/claims/claim.ts'
import type { Edit, Scale } from '#engine/speech/speech.ts'
import { sayAmount } from './sayAmount.ts'
import { sayTime, sayWallClock } from './sayTime.ts'
import { agreeing, articleFor, sayOrdinal, sayPlural, sayWhole } from './sayWhole.ts'

/**
 * The changes that make a claim say other numbers, each in the form of the old one; null where the sentence would have to
 * be another one.
 *
 * @param figures in the unit of the claim's first meaning
 */
export function rewrite(text: string, { slots, meanings: [first] }: Claim, figures: Figures, scale: Scale): Edit[] | null {
  if (slots.length === 0) return null
  // "Add" takes nothing off: the other way needs other words, but for "on" and "off" themselves.
  const turns = first.about === 'change' && Math.sign(first.low) !== Math.sign(figures.low ?? 0)
  if (turns && !slots.some(({ form }) => form.as === 'direction')) return null
  const edits: Edit[] = []
  for (const slot of slots) {
    const value = figures[slot.figure]
    if (value === undefined) return null
    const said = sayIn(text, slot, value, scale)
    if (said === null) return null
    edits.push(...said)
  }
  return edits.filter(({ from, to, text: words }) => text.slice(from, to) !== words)
}

function sayIn(text: string, { from, to, form }: Slot, value: number, scale: Scale): Edit[] | null {
  const old = text.slice(from, to)
  const put = (words: string | null): Edit[] | null =>
    words === null ? null : [...articleBefore(text, from, words), { from, to, text: cased(old, words) }]
  switch (form.as) {
    case 'number': {
      const whole = Math.round(value / form.per)
      // Eights and phrases have no parts.
      if (whole < 1 || whole > 999 || Math.abs(whole * form.per - value) > form.per / 4 + 1e-9) return null
      const noun = form.noun && { ...form.noun, text: agreeing(text.slice(form.noun.from, form.noun.to), whole) }
      return [...put(sayWhole(whole, form.figures))!, ...(noun ? [noun] : [])]
    }
    case 'ordinal':
      return put(sayOrdinal(Math.round(value), form.figures))
    case 'plural':
      return put(sayPlural(Math.round(value), form.figures))
    case 'duration':
      return put(value <= 0 ? null : sayTime(value, form, old))
    case 'amount': {
      const more = /\b(?:another|extra|more)\s*$/i.test(text.slice(0, from)) || /\b(?:more|another)\b/i.test(old)
      return put(sayAmount(Math.round(Math.abs(value) * scale.stepsPerUnit), form, old, more, scale))
    }
    case 'wallClock':
      return put(sayWallClock(value, form.of24))
    case 'direction':
      return value === 0 ? null : put(value > 0 ? 'on' : 'off')
  }
}

/** The capital of what stood there. */
const cased = (old: string, words: string): string => (/^\p{Lu}/u.test(old) ? words[0]!.toUpperCase() + words.slice(1) : words)

/** "a" before a number that now starts with a vowel, and the other way round. */
function articleBefore(text: string, at: number, words: string): Edit[] {
  const match = /\b(an?)(\s+)$/i.exec(text.slice(Math.max(0, at - 4), at))
  if (!match) return []
  const from = at - match[0].length
  const right = articleFor(words)
  return [{ from, to: from + match[1]!.length, text: cased(match[1]!, right) }]
}
