import { countsOf, eightOf } from '#plan/beatGrid.ts'
import { type Section, tempoOf } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { RankedSong } from './rankSongs.ts'

/** Cadences less apart than this are the same to the legs. */
const SAME_RPM = 0.5

/** Why a song stands where it does among those for a section: legs, length and form, in a few words. */
export function sayRank(section: Section, { song, strikesPerBeat }: RankedSong): string {
  const words: string[] = []
  const own = section.song
  if (own?.grid && own.strikesPerBeat !== null && song.grid && strikesPerBeat !== null) {
    const wanted = (tempoOf(own.grid) * own.strikesPerBeat) / 2
    const gives = (tempoOf(song.grid) * strikesPerBeat) / 2
    const apart = gives - wanted
    words.push(
      Math.abs(apart) < SAME_RPM ? 'the same cadence' : `${formatNumber(Math.abs(apart), 1)} rpm ${apart > 0 ? 'faster' : 'slower'}`,
    )
  }
  const have = countsOf({ ...section, song, inCount: undefined, outCount: undefined })
  const need = countsOf(section)
  if (have !== null && need !== null && song.grid) {
    const eights = Math.round((have - need) / eightOf(song.grid))
    words.push(
      eights === 0 ? 'as long' : `${Math.abs(eights)} eight${Math.abs(eights) === 1 ? '' : 's'} ${eights > 0 ? 'longer' : 'shorter'}`,
    )
  }
  if (song.clean) words.push('clean')
  return words.join(', ')
}
