const UNDER_TWENTY =
  'null eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn'.split(
    ' ',
  )
const TENS = ['', '', 'zwanzig', 'dreißig', 'vierzig', 'fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig']

/** A whole number from 0 to 999 in German words: 24 → "vierundzwanzig", 120 → "hundertzwanzig". Larger ones stay figures. */
export function numberWords(value: number): string {
  if (value < 20) return UNDER_TWENTY[value]!
  if (value < 100) {
    const rest = value % 10
    return `${rest === 0 ? '' : `${linked(rest)}und`}${TENS[Math.floor(value / 10)]}`
  }
  if (value > 999) return String(value)
  const rest = value % 100
  return `${value < 200 ? '' : linked(Math.floor(value / 100))}hundert${rest === 0 ? '' : numberWords(rest)}`
}

/** "einundzwanzig", "zweihundert". */
const linked = (value: number): string => (value === 1 ? 'ein' : UNDER_TWENTY[value]!)

/** The same before a feminine noun: "eine Minute", "zwei Minuten". */
export const numberBefore = (value: number): string => (value === 1 ? 'eine' : numberWords(value))

/** "erst", "zweit", "siebt": an ordinal without its ending; up to the nineteenth. */
export function ordinalStem(value: number): string | null {
  if (value < 1 || value > 19) return null
  return { 1: 'erst', 3: 'dritt', 7: 'siebt', 8: 'acht' }[value] ?? `${numberWords(value)}t`
}
