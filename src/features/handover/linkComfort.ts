/**
 * Longest link that passes through mail programs and messengers unbroken, in characters.
 * Common practice, no source: 2,000 is the length people keep to, and what mail links are cut at.
 */
export const COMFORTABLE_LINK = 2000

/** Whether a link of this many characters should travel as a file instead. */
export const isLongLink = (characters: number): boolean => characters > COMFORTABLE_LINK

/**
 * The address a mail program opens with: subject and a body that holds the link on a line of
 * its own. Null when the whole address would pass the comfortable length, since a mail program
 * may cut it there without a word.
 */
export function mailAddress(title: string, link: string): string | null {
  const subject = `Ride: ${title}`
  const body = `Here is the ride “${title}”. Open it in a browser; nothing is installed and nothing of yours is changed.\r\n\r\n${link}\r\n`
  const address = `mailto:?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(body)}`
  return address.length > COMFORTABLE_LINK ? null : address
}
