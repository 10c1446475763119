import { words } from '#words/words.ts'

/**
 * Longest link that passes through mail programs and messengers unbroken, in characters.
 * Common practice, no source: 2,000 is the length people keep to, and what mail links are cut at.
 */
export const COMFORTABLE_LINK = 2000

/** Whether a link of this many characters should travel as a file instead. */
export const isLongLink = (characters: number): boolean => characters > COMFORTABLE_LINK

/**
 * The address a mail program opens with: a subject, and a body with the link on a line of its own.
 * Where the whole would pass the comfortable length, since a mail program may cut it there without
 * a word, the body leaves the link to be pasted; `holdsLink` says which of the two it is.
 */
export function mailFor(title: string, link: string): { address: string; holdsLink: boolean } {
  const short = [...title].slice(0, 80).join('')
  const address = (lastLine: string) =>
    `mailto:?subject=${encodeURIComponent(words.handover.mailSubject({ title: short }))}&body=${encodeURIComponent(`${words.handover.mailBody({ title: short })}\r\n\r\n${lastLine}\r\n`)}`
  const whole = address(link)
  return whole.length > COMFORTABLE_LINK
    ? { address: address(words.handover.mailPaste), holdsLink: false }
    : { address: whole, holdsLink: true }
}
