import { PAPERS, type Paper } from './paging/paper.ts'

const KEY = 'ridewright.paper'
/** Where letter paper is in every printer. */
const LETTER_LANDS = /-(US|CA|MX|PH|CL|CO|VE)$/i

/** The paper chosen last on this machine; at first the one usual where its user lives. */
export function rememberedPaper(): Paper {
  const kept = read()
  return PAPERS.find((paper) => paper === kept) ?? (LETTER_LANDS.test(navigator.language) ? 'letter' : 'a4')
}

/** Keeps the choice for next time, where the browser lets pages keep anything. */
export function rememberPaper(paper: Paper): void {
  try {
    localStorage.setItem(KEY, paper)
  } catch {
    // A private window may refuse; the choice then lasts as long as the page.
  }
}

function read(): string | null {
  try {
    return localStorage.getItem(KEY)
  } catch {
    return null
  }
}
