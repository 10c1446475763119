import type { Constants } from '#engine/constants.ts'
import { type Section, tempoOf } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'
import { eightsLonger, legsWanted, type RankedSong } from './rankSongs.ts'

/** Cadences less apart than this are the same to the legs. */
const SAME_RPM = 0.5

/** Why a song stands where it does among those for a section: legs, length, drive, and when it was played, in a few words. */
export function sayRank(section: Section, ranked: RankedSong, rules?: Constants): Text {
  const items: Text[] = [...sayLegs(section, ranked, rules), ...sayLength(section, ranked), ...sayEnergy(ranked)]
  if (ranked.song.clean) items.push(say('fit.clean'))
  if (ranked.recent) items.push(say('fit.playedLately'))
  return say('fit.reasons', { items })
}

function sayLegs(section: Section, { song, strikesPerBeat }: RankedSong, rules?: Constants): Text[] {
  const wanted = legsWanted(section, rules)
  if (!wanted || !song.grid || strikesPerBeat === null) return []
  const rpm = (tempoOf(song.grid) * strikesPerBeat) / 2
  const apart = rpm - Math.max(wanted.from, Math.min(wanted.to, rpm))
  const isSame = Math.abs(apart) < SAME_RPM
  // Of a terrain's window the legs themselves are worth saying.
  if (!section.song?.grid) return [isSame ? say('fit.suitsTerrain', { rpm }) : say('fit.apartFromTerrain', { rpm, apart })]
  return [isSame ? say('fit.sameCadence') : say('fit.cadenceApart', { rpm: apart })]
}

function sayLength(section: Section, { song }: RankedSong): Text[] {
  const apart = eightsLonger(section, song)
  if (apart === null) return []
  const eights = Math.round(apart)
  return [eights === 0 ? say('fit.sameLength') : say('fit.lengthApart', { eights })]
}

const sayEnergy = ({ energyApart: apart }: RankedSong): Text[] => (apart === undefined ? [] : [say('fit.drive', { apart })])
