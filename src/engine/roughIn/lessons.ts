import type { Level } from '#plan/model.ts'
import { lessonOf, type MoveName } from './recipes.ts'

/** How often each move has been ridden so far: what was shown slowly may be layered. */
export type Lessons = ReadonlyMap<MoveName, number>

/** A move as a song takes it on from what was taught before it: each showing may be a lesson further. */
export function teaching(move: MoveName, level: Level, lessons: Lessons) {
  let lesson = lessons.get(move) ?? 0
  return {
    next: () => lessonOf(move, level, lesson++),
    after: (): Lessons => new Map([...lessons, [move, lesson]]),
  }
}
