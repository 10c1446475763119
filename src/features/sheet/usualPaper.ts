import type { Paper } from './paging/paper.ts'

/** Where letter paper is in every printer. */
const LETTER_LANDS = /-(US|CA|MX|PH|CL|CO|VE)$/i

/** The paper usual where the page's user lives. */
export const usualPaper = (): Paper => (LETTER_LANDS.test(navigator.language) ? 'letter' : 'a4')
