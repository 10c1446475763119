import type { Ride } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/**
 * How the player has to join the songs so that the plan's times hold: what every lead-in between
 * two songs says, the most common one first.
 */
export function gapsOf({ sections }: Pick<Ride, 'sections'>): { text: string; detail?: string } {
  const joints = sections.flatMap(({ song, leadInSeconds }, index) =>
    index > 0 && song && sections[index - 1]!.song ? [{ leadInSeconds, number: index + 1 }] : [],
  )
  if (joints.length === 0) return { text: 'crossfade off' }
  const most = mostCommon(joints.map(({ leadInSeconds }) => leadInSeconds))
  const others = joints.filter(({ leadInSeconds }) => leadInSeconds !== most)
  const detail = others.map(({ leadInSeconds, number }) => `${sayGap(leadInSeconds)} before song ${number}`).join(', ')
  const times = 'all times count on it'
  return {
    text: most < 0 ? `player set to a ${sayGap(most)}` : `crossfade off, ${sayGap(most)} between songs`,
    detail: detail === '' ? times : `${detail}; ${times}`,
  }
}

const sayGap = (seconds: number): string => {
  if (seconds === 0) return 'no gap'
  return seconds < 0 ? `crossfade of ${formatNumber(-seconds, 1)} s` : `${formatNumber(seconds, 1)} s`
}

function mostCommon(values: readonly number[]): number {
  const times = new Map<number, number>()
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1)
  return [...times].reduce((best, one) => (one[1] > best[1] ? one : best))[0]
}
