import type { RideReport } from '#engine/report.ts'
import type { Track } from '#formats/playlist/track.ts'
import type { Ride } from '#plan/model.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** The songs in the order they are played, as long as their files are. */
export function tracksOf(ride: Ride, { sections }: RideReport): Track[] {
  return ride.sections.flatMap(({ song }, index) => {
    if (!song) return []
    const bpm = sections[index]!.bpm
    return [
      {
        title: song.title,
        artist: song.artist,
        seconds: song.lengthSeconds,
        ...(bpm !== undefined && { note: `${formatNumber(bpm, 0)} bpm` }),
      },
    ]
  })
}
