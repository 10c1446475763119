/** A call put in the place of another, without an article or a "to" that stands before it already. */
export function fitting(old: string, before: string, words: string): string {
  const led = /\bto\s+$/i.test(before) ? words.replace(/^to /i, '') : words
  return /^an? /i.test(led) && !/^an? /i.test(old) ? led.replace(/^an? /i, '') : led
}
