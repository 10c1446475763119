import { LEAST_ARCMINUTES, PHONE_SHARE, readingDistance } from './legibility.ts'
import type { PageKind } from './paging/paper.ts'

/** Where lengths are said in inches. */
const INCH_LANDS = /-(US|LR|MM)$/i
const INCHES_PER_METRE = 1000 / 25.4

/**
 * From how far away a page can be read, said of the smallest capitals on it: at the least angle for
 * reading, and rounded down.
 *
 * @param cap millimetres on the page; a screen is shown smaller than that
 * @param language of whoever reads it, "en-US"
 */
export function readableWords(cap: number, page: PageKind, language: string): string {
  const metres = readingDistance(page === 'phone' ? cap * PHONE_SHARE : cap, LEAST_ARCMINUTES)
  const inches = INCH_LANDS.test(language)
  // A capital of exactly the least height is not read from a hair less than its distance.
  const distance = Math.floor(metres * (inches ? INCHES_PER_METRE : 100) + 0.05)
  return `Readable from about ${distance} ${inches ? 'in' : 'cm'}${page === 'phone' ? ' on a phone' : ''}.`
}
