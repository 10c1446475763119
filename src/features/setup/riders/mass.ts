import { parseDecimal } from '#units/parseDecimal.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { number, POUNDS } from '#words/forms.ts'
import { usMeasures } from '#words/locale.ts'

/** Lightest and heaviest rider, in kilograms. */
const LEAST = 30
const MOST = 200

const UNITS = [
  { form: /(?:lbs?|pounds?)\.?$/i, inPounds: true },
  { form: /(?:kgs?|kilos?|kilograms?|kilogramm)\.?$/i, inPounds: false },
]

export const massUnit = (): string => (usMeasures ? 'lb' : 'kg')

/** A mass as the page writes it, to a tenth of its unit: "154.3" in the US, else "70". */
export const formatMass = (kilograms: number): string => number(shown(kilograms), 1)

const shown = (kilograms: number): number => (usMeasures ? kilograms * POUNDS : kilograms)

/**
 * A mass as it is typed, in kilograms: a bare number is in the unit of the page, "70 kg" and "154 lb" say their own. It is
 * kept to a gram, which is finer than any tenth that is shown, so what was typed stands as it was typed.
 */
export function parseMass(text: string): Parsed<number> {
  const typed = text.trim()
  const named = UNITS.find(({ form }) => form.test(typed))
  const value = parseDecimal(named ? typed.replace(named.form, '') : typed)
  if (value === null) return refused({ kind: 'notNumber', of: 'mass' })
  const kilograms = (named?.inPounds ?? usMeasures) ? value / POUNDS : value
  if (kilograms < LEAST || kilograms > MOST)
    return refused({ kind: 'outside', of: 'mass', min: Math.ceil(shown(LEAST)), max: Math.floor(shown(MOST)) })
  if (Number(value.toFixed(1)) !== value) return refused({ kind: 'tooFine', of: 'mass', decimals: 1 })
  return parsed(Number(kilograms.toFixed(3)))
}
