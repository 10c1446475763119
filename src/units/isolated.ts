/** Letters written from right to left, and the marks that turn a line that way (Unicode 15.1, bidi classes R, AL, RLE, RLO and RLI by block). */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\u200f\u202b\u202e\u2067\ufb1d-\ufdff\ufe70-\ufefe\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u

/** U+2068 first strong isolate and U+2069 pop directional isolate (UAX #9, section 2.4.2). */
const OPEN = '\u2068'
const CLOSE = '\u2069'

/**
 * Somebody's own words, to stand in a sentence of ours: text in a right-to-left script is put
 * between invisible marks, so that it does not turn round the numbers and words beside it.
 * Other text stays as it is. On screen and paper `<bdi>` does the same.
 */
export const isolated = (text: string): string => (RIGHT_TO_LEFT.test(text) ? `${OPEN}${text}${CLOSE}` : text)
