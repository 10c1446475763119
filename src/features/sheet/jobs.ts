import { capHeight } from '#units/capHeight.ts'
import { LARGE_METERS, LARGEST_CAP, LEAST_CAP, PHONE_SHARE } from './legibility.ts'
import { DETAILS, type FitJob } from './paging/fitSheet.ts'
import { LAYOUTS, type Layout } from './paging/paper.ts'

/** How one kind of sheet is laid out: all of a fitting job but the measuring. */
export type SheetJob = Omit<FitJob, 'measure'>

const UPRIGHT: Layout = { page: 'sheet', orientation: 'portrait', columns: 1, words: 'beside', ease: 1 }
const STACKED: Layout = { ...UPRIGHT, words: 'below', ease: 0.9 }
const roundUp = (cap: number) => Math.ceil(cap * 100) / 100

/** Clipped to the bar and read by a rider who can look closely. */
export const COMPACT: SheetJob = { layouts: LAYOUTS, details: DETAILS, least: LEAST_CAP, largest: LARGEST_CAP }

/** Capitals of the large-type sheet in millimetres: 22 minutes of arc at 0.7 m, from the saddle in the dark. */
const LARGE_CAP = roundUp(capHeight(LARGE_METERS, 22))

/** As many pages as the songs need; no song is split that a page can hold. */
export const LARGE: SheetJob = {
  layouts: [
    UPRIGHT,
    { ...UPRIGHT, orientation: 'landscape', ease: 0.95 },
    STACKED,
    { ...STACKED, orientation: 'landscape', columns: 2, ease: 0.85 },
  ],
  details: ['short', 'words'],
  least: LARGE_CAP,
  largest: 6.2,
  whole: true,
}

/** One song a card, as large as all of them allow. */
export const CARDS: SheetJob = {
  layouts: [
    { ...UPRIGHT, page: 'card' },
    { ...STACKED, page: 'card' },
  ],
  details: DETAILS,
  least: LEAST_CAP,
  largest: 3.6,
  whole: true,
  alone: true,
}

/** A page of prose and short lines: held in the hand, or lying on the desk. */
export const READING: SheetJob = {
  layouts: [UPRIGHT, { ...UPRIGHT, columns: 2, ease: 0.9 }, { ...UPRIGHT, orientation: 'landscape', columns: 2, ease: 0.9 }],
  details: ['full'],
  least: LEAST_CAP,
  largest: 3.2,
}

/** Ten lines on one page, as large as it takes them: read in the dark with nothing playing. */
export const PLAIN: SheetJob = {
  layouts: [UPRIGHT, { ...UPRIGHT, orientation: 'landscape' }],
  details: ['full'],
  least: LARGE_CAP,
  largest: 8,
}

/**
 * Capitals on a telephone in millimetres of the page: a screen of 360 CSS pixels is about 66 mm wide,
 * so they are 3.3 mm high there, 22 minutes of arc at half a metre.
 */
const PHONE_CAP = roundUp(capHeight(0.5, 22) / PHONE_SHARE)

/** Screen after screen, nothing to scroll. */
export const PHONE_SCREENS: SheetJob = {
  layouts: [{ ...STACKED, page: 'phone' }],
  details: ['words'],
  least: PHONE_CAP,
  largest: PHONE_CAP + 1,
}
