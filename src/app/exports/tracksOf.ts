import type { RideReport } from '#engine/report.ts'
import type { Track } from '#formats/playlist/track.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'

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
        ...(bpm !== undefined && { note: words.measures.bpm(bpm, 0) }),
      },
    ]
  })
}
