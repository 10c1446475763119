import { type Reader, says } from './reader.ts'

/** What says that something is still to come, the longest first. */
const COMING: readonly string[] = [
  'still ahead of us|you',
  'ahead of us|you',
  'in front of us|you',
  'coming your|our way',
  'still to come|go',
  'yet to come',
  'on the way',
  'on deck',
  'still ahead',
  'still coming',
  'still waiting',
  'coming up',
  'to do',
  'ahead',
  'coming',
]

/** The token after "ahead of us", "coming up", "in front of you", "still to come"; null without it. */
export function comingEnd(reader: Reader, at: number): number | null {
  const words = COMING.find((one) => says(reader, at, one))
  return words === undefined ? null : at + words.split(' ').length
}
