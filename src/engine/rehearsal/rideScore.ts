import type { Plan } from '#engine/leading/led.ts'
import type { Click, Score, Sounding } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'
import { clicksOf } from './clicksOf.ts'
import { type Course, lengthOf, type Piece, piecesOf } from './course.ts'
import { SOFT_EDGE, songsOf } from './songsOf.ts'

interface Rehearsed {
  /** Whether a song's file can be played, by its fingerprint. */
  isThere: (fingerprint: string) => boolean
  /** Clicks over the songs that play; where no song plays, beats click anyway. */
  clickOver: boolean
  /** A tick each second where there are no beats. */
  ticks: boolean
}

/** A ride as it is played on a course through it, on the course's own clock. */
export function rideScore(plan: Plan, course: Course, { isThere, clickOver, ticks }: Rehearsed): Score {
  const songs = songsOf(plan, isThere)
  const playing = new Set(songs.map(({ key }) => key))
  const clicking = plan.ride.sections
    .map(({ id }, i) => ({ index: i, clicks: clickOver || !playing.has(id) }))
    .filter(({ clicks }) => clicks)
  return {
    end: lengthOf(course),
    clicks: (from, to) =>
      piecesOf(course, from, to).flatMap((piece) => clicking.flatMap(({ index }) => clicksIn(plan, index, piece, ticks))),
    sounding: (from, to) => piecesOf(course, from, to).flatMap((piece) => songs.flatMap((song) => soundIn(song, piece, course))),
  }
}

function clicksIn({ ride, report }: Plan, section: number, piece: Piece, ticks: boolean): Click[] {
  const clicks = clicksOf(ride.sections[section]!, report.sections[section]!, piece.from, piece.to, ticks)
  return clicks.map(({ at, kind }) => ({ at: piece.at + (at - piece.from), kind }))
}

/** What a whole leg has of a song, where the piece has some of it: the same answer for every piece of the leg. */
function soundIn(song: Sounding, piece: Piece, { legs }: Course): Sounding[] {
  if (song.to <= piece.from || song.from >= piece.to) return []
  const leg = legs[piece.leg % legs.length]!
  const [from, to] = [Math.max(song.from, leg.from), Math.min(song.to, leg.to)]
  const onCourse = (at: Seconds) => piece.legAt + (at - leg.from)
  return [
    {
      ...song,
      key: `${piece.leg} ${song.key}`,
      from: onCourse(from),
      to: onCourse(to),
      songFrom: song.songFrom + (from - song.from),
      fadeIn: from === song.from ? song.fadeIn : SOFT_EDGE,
      fadeOut: to === song.to ? Math.min(song.fadeOut, to - from) : SOFT_EDGE,
    },
  ]
}
