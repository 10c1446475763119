import { grouped } from '#words/forms.ts'

/** What is wrong with a link to a ride, and what is said as one is opened. */
export const links = {
  notOurs: 'This isn’t a link to a ride.',
  tooLong: 'This link is far longer than any ride, so it wasn’t opened.',
  tooNew: 'This link was made with a newer version. Update to open it.',
  truncated: 'The end of this link is missing. Copy the whole link and try again.',
  truncatedBy: ({ missing, of }: { missing: number; of: number }) =>
    `The end of this link is missing: ${grouped(missing)} of its ${grouped(of)} characters. Copy the whole link and try again.`,
  recased: 'This link is damaged: an app changed its capital and small letters. Ask for the ride as a file instead.',
  damaged: 'This link is damaged. Ask for it again.',
  tooLarge: 'This link holds far more than a ride, so it wasn’t opened.',

  // As one is opened
  /** Of a link that is opened: what it holds is not the open ride. */
  opened: ({ title }: { title: string }) => `Shared ride “${title}”, read-only`,
  otherLinks: ({ others }: { others: number }) =>
    `There ${others === 1 ? 'was another link' : `were ${others} other links`} to a ride in that text. This is the first one.`,
  refused: ({ why }: { why: string }) => `${why} Your rides on this device are untouched.`,
  refusedRide: 'The ride in this link can’t be opened. Your rides on this device are untouched.',
}
