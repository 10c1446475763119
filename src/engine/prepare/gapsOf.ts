import type { Ride } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'

/**
 * How the player has to join the songs so that the plan's times hold: what every lead-in between
 * two songs says, the most common one first.
 */
export function gapsOf({ sections }: Pick<Ride, 'sections'>): { text: Text; detail?: Text } {
  const joints = sections.flatMap(({ song, leadInSeconds }, index) =>
    index > 0 && song && sections[index - 1]!.song ? [{ leadInSeconds, number: index + 1 }] : [],
  )
  if (joints.length === 0) return { text: say('prepare.crossfadeOff') }
  const most = mostCommon(joints.map(({ leadInSeconds }) => leadInSeconds))
  const gaps = joints.flatMap(({ leadInSeconds: seconds, number: place }) => (seconds === most ? [] : [{ seconds, place }]))
  return {
    text: most < 0 ? say('prepare.playerSetTo', { seconds: most }) : say('prepare.crossfadeOffGap', { seconds: most }),
    detail: say('prepare.otherGaps', { gaps }),
  }
}

function mostCommon(values: readonly number[]): number {
  const times = new Map<number, number>()
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1)
  return [...times].reduce((best, one) => (one[1] > best[1] ? one : best))[0]
}
