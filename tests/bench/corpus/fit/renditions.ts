import { cutOf, cutSong, type KnownSong, knownSongs, loadSong } from '#tests/bench/corpus/corpus.ts'
import { composedSong } from '#tests/support/composed/composedSong.ts'

/** A song as it is listened to for fitting. */
export interface Rendition extends Omit<KnownSong, 'file'> {
  samples: Float32Array
  sampleRate: number
  /** How much it counts: music made by people most, each song in several renditions. */
  weight: number
  /** Whether it is one of those the analysis is judged by: at its own tempo, its beginning cut off. */
  judged: boolean
}

/** Seeds of the composed songs that are fitted to, and of those that are only listened to afterwards. */
export const FITTED_SEEDS = { from: 5000, to: 5800 }
export const FRESH_SEEDS = { from: 9000, to: 9150 }

const SECONDS = 50

/** Each of a corpus's songs four times, cut, whole, and cut again a little slower and faster. */
export function* corpusRenditions(folder: string): Generator<Rendition> {
  for (const known of knownSongs(folder)) {
    const song = loadSong(folder, known)
    const weight = known.kind === 'synth' ? 0.3 : 0.6
    yield { ...cutSong(song, cutOf(song.id)), weight, judged: true }
    yield { ...song, weight, judged: false }
    yield { ...cutSong(song, cutOf(`${song.id}b`), 0.92), weight, judged: false }
    yield { ...cutSong(song, cutOf(`${song.id}c`), 1.08), weight, judged: false }
  }
}

/** Composed songs, every second of them cut. */
export function* composedRenditions({ from, to }: { from: number; to: number }): Generator<Rendition> {
  for (let seed = from; seed < to; seed++) {
    const id = `seed ${seed}`
    const { eights, meter, ...made } = composedSong(seed, { seconds: SECONDS })
    const song = { ...made, meter, id, kind: 'composed', file: '', phrases8: meter === '3/4' ? null : eights }
    yield { ...cutSong(song, seed % 2 === 0 ? 0 : cutOf(`s${seed}`, 0, 8)), weight: 0.5, judged: true }
  }
}
