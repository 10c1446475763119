import { contentRevision } from '#plan/document/contentRevision.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'

/** Digits that are printed: enough to tell two versions of one ride apart at a glance. */
const STAMP_DIGITS = 4

/** When a page was printed, and which version of what is taught it shows: the same stamp for a copy another leader keeps. */
export const stampOf = (ride: Ride, date: string): string =>
  words.printed.version({ date, version: contentRevision(ride).slice(0, STAMP_DIGITS) })
