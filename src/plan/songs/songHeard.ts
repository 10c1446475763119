import { patched } from '#plan/edits.ts'
import { type BeatGrid, type Song, tempoOf } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import { gridOfTempo } from './beatGrid.ts'
import { bendsOf, HEARD } from './bendsOf.ts'
import type { Beats, HeardSong } from './heardSong.ts'
import { rescaledGrid } from './rescaledSong.ts'
import { strikesForTempo } from './sectionsFromPlaylist.ts'

/**
 * A song with what was heard in its file: length, tempo, first beat and bars. A song that is there keeps what its
 * leader wrote, its title first of all; a new one is called as the file is. Count 0 is the first that starts an eight,
 * or else a bar, so that eights begin where the parts of the song do. Six eighths are counted in their two beats, which is what legs follow, so they
 * make bars of four. Half and double are one sound, so a tempo the song had before settles which of them it is.
 */
export function songHeard(heard: HeardSong, old: Song | null | undefined, newId: () => string): Song {
  const song: Song = old ?? { id: newId(), title: heard.title, artist: heard.artist, lengthSeconds: 0, strikesPerBeat: null }
  const lengthSeconds = Number(heard.lengthSeconds.toFixed(2))
  const { beats, fingerprint } = heard
  if (!beats) return patched(song, { lengthSeconds, fingerprint })
  return patched(song, {
    lengthSeconds,
    fingerprint,
    grid: inOctaveOf(song.grid, gridHeard(beats)),
    strikesPerBeat: song.grid ? song.strikesPerBeat : strikesForTempo(beats.bpm),
  })
}

/** How far a tempo may be from exactly half or double another to be that, as a share of it: what a hand-typed whole number is off by. */
const OCTAVE_ERROR = 0.04

/** A heard grid, read at the half or the double where that is the tempo the song had before. */
function inOctaveOf(old: BeatGrid | undefined, heard: BeatGrid): BeatGrid {
  if (!old) return heard
  const ratio = tempoOf(old) / tempoOf(heard)
  const factor = ([2, 0.5] as const).find((each) => Math.abs(ratio / each - 1) < OCTAVE_ERROR)
  return factor ? rescaledGrid(heard, factor) : heard
}

function gridHeard({ bpm, beats, downbeats, eights, beatsPerBar, firstBeat, steady }: Beats): BeatGrid {
  const bar = beatsPerBar === 6 ? 4 : beatsPerBar
  const one = eights[0] ?? downbeats[0] ?? firstBeat
  if (steady) return gridOfTempo(bpm, exact(one), bar)
  const anchors = beats.filter((second) => second >= one).map((second, count): [number, Seconds] => [count, exact(second)])
  if (anchors.length < 2) return gridOfTempo(bpm, exact(one), bar)
  // A beat nobody played between two that were heard is over, and no slower tempo.
  const odd = bendsOf(anchors, HEARD)
  return { anchors, beatsPerBar: bar, ...(odd.length > 0 && { odd }) }
}

/** A tenth of a millisecond, which is finer than a file's own clock is trusted. */
const exact = (second: Seconds): Seconds => Number(second.toFixed(4))
