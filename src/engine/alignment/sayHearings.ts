import { type Hearing, isUnderWay } from '#plan/songs/heardSong.ts'
import { plural } from '#units/plural.ts'

/** Where the hearing of a row of files stands, in one sentence; empty without any. */
export function sayHearings(hearings: readonly Hearing[]): string {
  if (hearings.length === 0) return ''
  const left = hearings.filter(isUnderWay).length
  const count = (...kinds: Hearing['kind'][]) => hearings.filter(({ kind }) => kinds.includes(kind)).length
  const [done, failed, stopped] = [count('heard', 'known'), count('failed'), count('aborted')]
  const words = [
    left > 0 ? `${done} of ${plural(hearings.length, 'file')} read` : `${plural(done, 'file')} read`,
    failed > 0 && `${failed} cannot be read`,
    stopped > 0 && `${stopped} stopped`,
  ]
  return `${words.filter((word) => typeof word === 'string').join(', ')}.`
}
