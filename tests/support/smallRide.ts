import type { Block, Ride, Section, SetBlock, Song } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'

/** Ids "n1", "n2" … in order. */
export function countedIds(prefix = 'n'): () => string {
  let last = 0
  return () => `${prefix}${++last}`
}

export const aBlock = (id: string, change: Partial<Block> = {}): Block => ({
  id,
  label: id,
  terrain: 'flat',
  length: { counts: 64 },
  posture: 'seated',
  hands: 'centre',
  resistance: { kind: 'keep' },
  effort: { from: 4, to: 4 },
  cues: [],
  ...change,
})

export const aSet = (id: string, parts: Block[], change: Partial<SetBlock> = {}): SetBlock => ({
  id,
  label: id,
  rounds: 3,
  parts,
  ...change,
})

/** 120 beats a minute, so that a count lasts half a second; four minutes long. */
export const aSong = (id: string, change: Partial<Song> = {}): Song => ({
  id,
  title: id,
  grid: gridOfTempo(120),
  lengthSeconds: 240,
  strikesPerBeat: 1,
  ...change,
})

export const aSection = (id: string, change: Partial<Section> = {}): Section => ({
  id,
  song: null,
  leadInSeconds: 0,
  blocks: [],
  ...change,
})

export const inSeconds = (seconds: number): Partial<Block> => ({ length: { seconds } })

/**
 * Three sections: "song" in counts with blocks a, b, c; "clock" in seconds with blocks x and
 * y; "waves" in counts with a set "set" of push and ease, and a block z.
 */
export function smallRide(): Ride {
  return {
    ...blankRide({ newId: () => 'ride', title: 'small ride' }),
    sections: [
      aSection('song', { song: aSong('first'), blocks: [aBlock('a'), aBlock('b'), aBlock('c')] }),
      aSection('clock', { blocks: [aBlock('x', inSeconds(60)), aBlock('y', inSeconds(45))] }),
      aSection('waves', { song: aSong('second'), blocks: [aSet('set', [aBlock('push'), aBlock('ease')]), aBlock('z')] }),
    ],
  }
}

/** The ids of a section's items, sets written with their parts: "set(push ease)". */
export function layout(ride: Ride, sectionId: string): string {
  const section = ride.sections.find(({ id }) => id === sectionId)
  const names = section?.blocks.map((item) => ('parts' in item ? `${item.id}(${item.parts.map(({ id }) => id).join(' ')})` : item.id))
  return names?.join(' ') ?? ''
}
