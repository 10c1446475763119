import type { RideInText } from '#plan/link/rideInText.ts'

type Found = Extract<RideInText, { ok: true }>
type Refused = Extract<RideInText, { ok: false }>

/** "“Ridge and Return”, mixed, 45 min" */
export function foundWords({ ride: { title, level, slotMinutes }, others }: Found): string {
  const place = others === 0 ? '' : `, the first of ${others + 1} links in this text`
  return `“${title || 'untitled ride'}”, ${level}, ${slotMinutes} min${place}`
}

/** Why a text opens no ride, in a sentence or two. */
export function refusedWords({ fault, problems: [first] }: Refused): string {
  if (fault === 'notOurs') return 'There is no link to a ride in this text. Such a link has “#r1.” in it, and many letters after that.'
  return fault === 'ride' ? `The ride in this link cannot be opened. ${first!.sentence}` : first!.sentence
}
