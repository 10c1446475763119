const UNDER_TWENTY =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']

/** A whole number from 0 to 999 in words: 24 → "twenty-four", 120 → "one hundred and twenty". Larger ones stay figures. */
export function numberWords(value: number): string {
  if (value < 20) return UNDER_TWENTY[value]!
  if (value < 100) {
    const rest = value % 10
    return `${TENS[Math.floor(value / 10)]}${rest === 0 ? '' : `-${UNDER_TWENTY[rest]}`}`
  }
  if (value > 999) return String(value)
  const rest = value % 100
  return `${UNDER_TWENTY[Math.floor(value / 100)]} hundred${rest === 0 ? '' : ` and ${numberWords(rest)}`}`
}
