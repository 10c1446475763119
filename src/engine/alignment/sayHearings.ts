import { type Hearing, isUnderWay } from '#plan/songs/heardSong.ts'
import { say, type Text } from '#words/said.ts'

/** Where the hearing of a row of files stands, in one sentence; empty without any. */
export function sayHearings(hearings: readonly Hearing[]): Text {
  if (hearings.length === 0) return ''
  const left = hearings.filter(isUnderWay).length
  const count = (...kinds: Hearing['kind'][]) => hearings.filter(({ kind }) => kinds.includes(kind)).length
  const [done, failed, stopped] = [count('heard', 'known'), count('failed'), count('aborted')]
  return say('heard.files', { read: done, of: left > 0 ? hearings.length : null, failed, stopped })
}
