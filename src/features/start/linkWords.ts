import type { RideInText } from '#plan/link/rideInText.ts'
import { tell, words } from '#words/words.ts'

type Found = Extract<RideInText, { ok: true }>
type Refused = Extract<RideInText, { ok: false }>

/** "“Ridge and Return”, mixed, 45 min" */
export const foundWords = ({ ride: { title, level, slotMinutes }, others }: Found): string =>
  words.start.found({
    title: title || words.names.untitled,
    level: words.names.level({ level }),
    minutes: slotMinutes,
    links: others + 1,
  })

/** Why a text opens no ride, in a sentence or two. */
export function refusedWords({ fault, problems: [first] }: Refused): string {
  if (fault === 'notOurs') return words.start.noLink
  const reason = tell(first!.text)
  return fault === 'ride' ? words.start.badRideInLink({ reason }) : reason
}
