import { bareText } from '#engine/log/pattern.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { dayWords } from './clock.ts'

/**
 * The classes that hold every word looked for, in their order: in the title, the day, the room, the
 * note, or a song that was played. Capitals, accents and marks make no difference.
 */
export function findTaught(log: readonly TaughtClass[], search: string): readonly TaughtClass[] {
  const words = bareText(search).split(' ').filter(Boolean)
  return words.length === 0 ? log : log.filter((entry) => holds(entry, words))
}

function holds({ title, day, room, note = '', sections }: TaughtClass, words: readonly string[]): boolean {
  const songs = sections.flatMap((section) => (section.outcome === 'skipped' ? [] : [section.title, section.artist ?? '']))
  const text = bareText([title, dayWords(day), day, room, note, ...songs].join(' '))
  return words.every((word) => text.includes(word))
}
