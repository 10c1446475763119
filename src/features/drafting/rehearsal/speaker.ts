import type { Plan } from '#engine/leading/led.ts'
import { type Spoken, spokenCues, USUAL_PACE } from '#engine/rehearsal/spokenCues.ts'
import type { AppStore } from '#store/state.ts'
import type { Seconds } from '#units/units.ts'
import type { Language } from '#words/language.ts'

/** Nobody speaks slower or faster. */
const PACES = { from: 80, to: 360 } as const
/** Words that are later than this are not said any more. */
const TOO_LATE: Seconds = 1

/** Says the cues of a ride while it plays. */
interface Speaker {
  /** A stretch of the ride has been played: whatever begins in it is said. */
  played: (plan: Plan, from: Seconds, to: Seconds) => void
  /** What was being said is broken off. */
  hush: () => void
}

/** Speaks with the voice and the habits of the store. How fast that voice is, it learns from every sentence. */
export function createSpeaker(store: AppStore): Speaker {
  let pace = USUAL_PACE
  let known: { plan: Plan; pace: number; speed: number; cues: Spoken[] } | null = null

  function cuesOf(plan: Plan): Spoken[] {
    const { speed } = store.getState().rehearsalHabits
    if (known?.plan !== plan || known.pace !== pace || known.speed !== speed)
      known = { plan, pace, speed, cues: spokenCues(plan, pace, speed) }
    return known.cues
  }

  function say({ text, words, rate }: Spoken, language: Language): void {
    const { voice, rehearsalHabits } = store.getState()
    voice?.say(text, {
      voice: rehearsalHabits.voice,
      language,
      rate,
      onSaid: (seconds) => {
        // A word or two says nothing: most of it is the pause around it.
        if (words < 4 || seconds <= 0) return
        const heard = (60 * words) / seconds / rate
        pace = Math.min(PACES.to, Math.max(PACES.from, (pace + heard) / 2))
      },
    })
  }

  return {
    played: (plan, from, to) => {
      if (!store.getState().rehearsalHabits.speaks) return
      for (const cue of cuesOf(plan)) if (cue.at >= from && cue.at < to && to - cue.at < TOO_LATE) say(cue, plan.ride.language ?? 'en')
    },
    hush: () => store.getState().voice?.hush(),
  }
}
