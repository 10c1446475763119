import { words } from '#words/words.ts'
import { LEAST_ARCMINUTES, PHONE_SHARE, readingDistance } from './legibility.ts'
import type { PageKind } from './paging/paper.ts'

/**
 * From how far away a page can be read, said of the smallest capitals on it, at the least angle for reading.
 *
 * @param cap millimeters on the page; a screen is shown smaller than that
 */
export function readableWords(cap: number, page: PageKind): string {
  const onPhone = page === 'phone'
  return words.sheet.readable({ meters: readingDistance(onPhone ? cap * PHONE_SHARE : cap, LEAST_ARCMINUTES), onPhone })
}
