/** Countries that weigh in pounds and measure in inches and feet (CLDR 47, measurement system US). */
const US_MEASURES = new Set(['US', 'LR', 'MM'])

/** The locale everything is written in, as a BCP 47 tag. Only {@link setLocale} changes it. */
export let locale = 'en-US'

/** Whether lengths and masses are in inches, feet, and pounds here. */
export let usMeasures = true

/** Made once for each locale: building one takes longer than all its uses in a drawing. */
const made = new Map<string, unknown>()

export function setLocale(tag: string): void {
  const known = supported(tag)
  if (known === locale) return
  locale = known
  usMeasures = US_MEASURES.has(new Intl.Locale(known).maximize().region ?? '')
  made.clear()
}

/** The tag, or American English where it is none or unknown: it comes from the browser and may be anything. */
function supported(tag: string): string {
  try {
    return Intl.NumberFormat.supportedLocalesOf([tag])[0] ?? 'en-US'
  } catch {
    return 'en-US'
  }
}

/** What `make` makes for the locale, kept under `key`. */
export function ofLocale<T>(key: string, make: (locale: string) => T): T {
  if (!made.has(key)) made.set(key, make(locale))
  return made.get(key) as T
}
