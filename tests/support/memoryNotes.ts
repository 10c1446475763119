import type { Notes } from '#app/leavingNotes.ts'

/** A localStorage in memory. */
export function memoryNotes(held: Record<string, string> = {}): Notes {
  const kept = new Map(Object.entries(held))
  return {
    get length() {
      return kept.size
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  }
}
