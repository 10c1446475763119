import type { Block, Song } from '#plan/model.ts'

/** How the cadence of a block is decided: by the song, by strikes of its own, stated, or not at all. */
export type CadenceKind = 'song' | 'half' | 'one' | 'two' | 'stated' | 'still'

const STRIKES = { half: 0.5, one: 1, two: 2 } as const

export function cadenceKindOf(block: Block): CadenceKind {
  if (block.cadence === 'legsStill') return 'still'
  if (block.cadence !== undefined) return 'stated'
  if (block.strikesPerBeat === 0.5) return 'half'
  if (block.strikesPerBeat === 1) return 'one'
  if (block.strikesPerBeat === 2) return 'two'
  return 'song'
}

/**
 * The fields of a block that make its cadence of another kind. A stated cadence leaves the beat,
 * so it clears the strikes of a song that is ridden on it.
 *
 * @param rpm what the legs do now, kept where a cadence becomes a stated one
 */
export function cadenceOfKind(kind: CadenceKind, song: Song | null | undefined, rpm: number): Pick<Block, 'cadence' | 'strikesPerBeat'> {
  if (kind === 'still') return { cadence: 'legsStill', strikesPerBeat: undefined }
  if (kind === 'song') return { cadence: undefined, strikesPerBeat: undefined }
  if (kind === 'stated') {
    const onBeat = song?.grid !== undefined && song.strikesPerBeat !== null
    return { cadence: { rpm: Math.round(rpm) }, strikesPerBeat: onBeat ? null : undefined }
  }
  return { cadence: undefined, strikesPerBeat: STRIKES[kind] }
}
