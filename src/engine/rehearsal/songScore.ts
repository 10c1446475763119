import { startsBar } from '#engine/timeline/startsBar.ts'
import type { BeatGrid, Song } from '#plan/model.ts'
import { beatOf, countAt, countOf, eightOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { Click, Score } from '#plan/sound/score.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { SOFT_EDGE } from './songsOf.ts'

/**
 * One song by itself on the clock of its file, from the first second to the last, with a click on
 * every beat of its grid: the grid held against the music. Eights are counted from where the song is
 * ridden from.
 *
 * @param sounds whether the file can be played; without it the clicks go on alone
 */
export function songScore(song: Song, inCount: Counts, { sounds, clicks }: { sounds: boolean; clicks: boolean }): Score {
  const { grid, fingerprint, lengthSeconds } = song
  const whole = { key: 'song', song: fingerprint ?? '', from: 0, to: lengthSeconds, songFrom: 0, fadeIn: SOFT_EDGE, fadeOut: SOFT_EDGE }
  return {
    end: lengthSeconds,
    clicks: (from, to) => (grid && clicks ? beatsIn(grid, inCount, Math.max(0, from), Math.min(to, lengthSeconds)) : []),
    sounding: (from, to) => (sounds && fingerprint && from < lengthSeconds && to > 0 ? [whole] : []),
  }
}

/** The beats of a grid from one second to another, also before its count 0, where the music may already have begun. */
function beatsIn(grid: BeatGrid, inCount: Counts, from: Seconds, to: Seconds): Click[] {
  const at = (beat: number): Seconds => secondAt(grid, countOf(grid, beat))
  let beat = Math.floor(beatOf(grid, countAt(grid, from)))
  while (at(beat - 1) >= from) beat--
  while (at(beat) < from) beat++
  const clicks: Click[] = []
  for (; at(beat) < to; beat++) clicks.push({ at: at(beat), kind: kindOf(grid, beat, inCount) })
  return clicks
}

function kindOf(grid: BeatGrid, beat: number, inCount: Counts): Click['kind'] {
  const count = countOf(grid, beat)
  if ((count - inCount) % eightOf(grid) === 0) return 'eight'
  return startsBar(count, beat - beatOf(grid, Math.floor(count)), grid.beatsPerBar) ? 'bar' : 'beat'
}
