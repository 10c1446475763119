import type { Beats, Hearing } from '#plan/songs/heardSong.ts'
import { say, type Text } from '#words/said.ts'

/** Below this the analysis itself is in doubt, and says so. */
const SURE = 0.6

/** Where the hearing of a file stands, or what it gave, in words. */
export function sayHearing(name: string, hearing: Hearing): Text {
  switch (hearing.kind) {
    case 'waiting':
      return say('heard.waiting', { name })
    case 'decoding':
      return say('heard.opening', { name })
    case 'analysing':
      return say('heard.listening', { name })
    case 'known':
      return say('heard.known', { name })
    case 'aborted':
      return say('heard.stopped', { name })
    case 'failed':
      return hearing.sentence
    case 'heard': {
      const { beats, lengthSeconds } = hearing.song
      const length = Math.round(lengthSeconds)
      if (!beats) return say('heard.noBeat', { name, length })
      const { bpm, beatsPerBar } = beats
      return say('heard.beat', { name, bpm, beatsPerBar, length, doubt: doubtOf(beats) })
    }
  }
}

/** Whether what was heard should be looked at before it is relied on. */
export const isDoubtful = (hearing: Hearing): boolean =>
  hearing.kind === 'heard' && (hearing.song.beats === null || doubtOf(hearing.song.beats) !== null)

function doubtOf({ confidence, steady, drifts }: Beats) {
  if (!steady) return 'changes'
  const [first] = drifts
  if (first) return { from: Math.round(first.from), to: Math.round(first.to) }
  return confidence < SURE ? 'unsure' : null
}
