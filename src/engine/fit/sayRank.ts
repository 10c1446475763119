import type { Constants } from '#engine/constants.ts'
import { type Section, tempoOf } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'
import { eightsLonger, legsWanted, type RankedSong } from './rankSongs.ts'

/** Cadences less apart than this are the same to the legs. */
const SAME_RPM = 0.5

/** Why a song stands where it does among those for a section: legs, length, drive, and when it was played, in a few words. */
export function sayRank(section: Section, ranked: RankedSong, rules?: Constants): string {
  const words = [sayLegs(section, ranked, rules), sayLength(section, ranked), sayEnergy(ranked)]
  if (ranked.song.clean) words.push('clean')
  if (ranked.recent) words.push('played lately')
  return words.filter((word) => word !== '').join(', ')
}

function sayLegs(section: Section, { song, strikesPerBeat }: RankedSong, rules?: Constants): string {
  const wanted = legsWanted(section, rules)
  if (!wanted || !song.grid || strikesPerBeat === null) return ''
  const gives = (tempoOf(song.grid) * strikesPerBeat) / 2
  const apart = gives - Math.max(wanted.from, Math.min(wanted.to, gives))
  const rpm = `${formatNumber(Math.abs(apart), 1)} rpm ${apart > 0 ? 'faster' : 'slower'}`
  // Of a terrain's window the legs themselves are worth saying.
  if (!section.song?.grid)
    return `${formatNumber(gives, 0)} rpm${Math.abs(apart) < SAME_RPM ? ', as its terrain wants' : `, ${rpm} than its terrain`}`
  return Math.abs(apart) < SAME_RPM ? 'the same cadence' : rpm
}

function sayLength(section: Section, { song }: RankedSong): string {
  const apart = eightsLonger(section, song)
  if (apart === null) return ''
  const eights = Math.abs(Math.round(apart))
  return eights === 0 ? 'as long' : `${plural(eights, 'eight')} ${apart > 0 ? 'longer' : 'shorter'}`
}

function sayEnergy({ energyApart }: RankedSong): string {
  if (energyApart === undefined) return ''
  return energyApart === 0 ? 'as much drive' : energyApart > 0 ? 'more drive' : 'less drive'
}
