import { songKey } from '#plan/songs/shelfSong.ts'
import { type SongPlan, songOf } from './songPlan.ts'

/** Plans whose song, artist or ride has every word of a search, in the order they were in. */
export function findPlans(plans: readonly SongPlan[], search: string): readonly SongPlan[] {
  const sought = folded(search).split(' ')
  return plans.filter((plan) => {
    const text = `${songKey(songOf(plan))} ${folded(plan.rideTitle)}`
    return sought.every((word) => text.includes(word))
  })
}

/** As songs are compared: without case, accents and spaces too many. */
const folded = (text: string): string => songKey({ title: text }).slice(0, -1)
