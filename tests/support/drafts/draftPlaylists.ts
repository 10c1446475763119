import type { SongDrive } from '#engine/loudness/energyOf.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { pick, type Random, seededRandom } from '#engine/roughIn/seededRandom.ts'
import type { Level, Ride, Song } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo, secondAt } from '#plan/songs/beatGrid.ts'
import type { Bpm, Seconds } from '#units/units.ts'

/** A class to be drafted: open songs that about fill the slot, and what is known of their sound. */
export interface DraftTask {
  ride: Ride
  seed: number
  drives: ReadonlyMap<string, SongDrive>
  /** Where each song's music builds towards something louder, in seconds of the song; only where its loudness is known. */
  builds: ReadonlyMap<string, readonly Build[]>
  make: Make
}

export interface Build {
  from: Seconds
  to: Seconds
}

const MAKES = ['steady', 'mixed', 'pop', 'slow', 'driving', 'club'] as const
type Make = (typeof MAKES)[number]
const KNOWN = ['nothing', 'energy', 'loudness', 'marks', 'all'] as const
type Known = (typeof KNOWN)[number]
const LENGTHS = [20, 30, 45, 60] as const
const LEVELS: readonly Level[] = ['beginner', 'mixed', 'advanced']

/**
 * 360 classes: thirty playlists of tempi from 60 to 180, six makes by five kinds of knowledge, each at four class lengths
 * and three levels. Drawn from a number: another one gives playlists nothing was tuned on.
 */
export function draftTasks(set: number): DraftTask[] {
  return MAKES.flatMap((make, m) =>
    KNOWN.flatMap((known, k) =>
      LENGTHS.flatMap((minutes) => {
        const songs = playlist(make, known, minutes, seededRandom(set * 10_007 + m * 101 + k * 11))
        return LEVELS.map((level, l) => taskOf(songs, { make, minutes, level, seed: 1 + m * 5 + k + 31 * l }))
      }),
    ),
  )
}

interface Made {
  song: Song
  drive: SongDrive
  builds: Build[]
}

function taskOf(
  made: readonly Made[],
  { make, minutes, level, seed }: { make: Make; minutes: number; level: Level; seed: number },
): DraftTask {
  const title = `${make}, ${minutes} minutes, ${level}`
  const ride: Ride = {
    ...blankRide({ newId: () => 'playlist', title, slotMinutes: minutes, level }),
    sections: made.map(({ song }, i) => ({ id: `s${i}`, song, leadInSeconds: i === 0 ? 0 : 2, blocks: [] })),
  }
  return {
    ride,
    seed,
    make,
    drives: new Map(made.map(({ song, drive }) => [song.id, drive])),
    builds: new Map(made.map(({ song, builds }) => [song.id, builds])),
  }
}

/** Songs one after another until hardly one more would fit. */
function playlist(make: Make, known: Known, minutes: number, random: Random): Made[] {
  const tempo = tempiOf(make, random)
  const songs: Made[] = []
  for (let seconds = 0; seconds < minutes * 60 - 60; ) {
    const left = minutes * 60 - seconds
    const length = left < 270 ? left + Math.round(20 * random()) : Math.round(165 + 90 * random())
    const made = madeSong(songs.length, Math.round(10 * tempo()) / 10, length, known, random)
    songs.push(made)
    seconds += length + 2
  }
  return songs
}

/** How a playlist's tempi are spread, always from 60 to 180. */
function tempiOf(make: Make, random: Random): () => Bpm {
  const within = (bpm: Bpm) => Math.min(180, Math.max(60, bpm))
  const between = (from: Bpm, to: Bpm) => from + (to - from) * random()
  const middle = between(62, 178)
  // The sum of four draws is near enough a bell.
  const bell = () => random() + random() + random() + random() - 2
  switch (make) {
    case 'steady':
      return () => within(middle + 3 * (2 * random() - 1))
    case 'mixed':
      return () => between(60, 180)
    case 'pop':
      return () => within(118 + 45 * bell())
    case 'slow':
      return () => between(60, 104)
    case 'driving':
      return () => between(138, 180)
    case 'club':
      return () => (random() < 0.75 ? between(122, 132) : between(85, 100))
  }
}

/** Parts of a song with their lengths in eights and how loud they are, LUFS; a build rises by so much. */
const FORM = [
  { label: 'intro', eights: [4, 8], level: -19 },
  { label: 'verse', eights: [8, 12, 16], level: -16 },
  { label: 'build', eights: [4, 8], level: -17, rise: 6 },
  { label: 'chorus', eights: [8, 12], level: -9 },
  { label: 'verse', eights: [8, 12], level: -16 },
  { label: 'build', eights: [4, 8], level: -17, rise: 6 },
  { label: 'chorus', eights: [8, 12, 16], level: -9 },
  { label: 'break', eights: [8], level: -20 },
  { label: 'chorus', eights: [8, 12], level: -8 },
  { label: 'verse', eights: [8, 12], level: -15 },
  { label: 'chorus', eights: [8], level: -8.5 },
] as const

function madeSong(index: number, bpm: Bpm, lengthSeconds: Seconds, known: Known, random: Random): Made {
  const grid = gridOfTempo(bpm, Math.round(20 * random()) / 10)
  const loudness: number[] = Array.from({ length: lengthSeconds }, () => -21 + random())
  const marks: { count: number; label: string }[] = []
  const builds: Build[] = []
  let count = 0
  for (const part of FORM) {
    const from = secondAt(grid, count)
    if (from > lengthSeconds - 25) break
    const end = count + 8 * pick(random, part.eights)
    const to = Math.min(secondAt(grid, end), lengthSeconds)
    marks.push({ count, label: part.label })
    for (let second = Math.floor(from); second < to; second++) {
      const share = Math.min(1, Math.max(0, (second + 0.5 - from) / (to - from)))
      loudness[second] = part.level + ('rise' in part ? part.rise * share : 0) + 0.8 * (random() - 0.5)
    }
    if ('rise' in part) builds.push({ from, to })
    count = end
  }
  const energy = (1 + Math.floor(5 * random())) as Energy
  const hears = known === 'loudness' || known === 'all'
  return {
    song: {
      id: `song${index}`,
      title: `song ${index + 1}`,
      grid,
      lengthSeconds,
      strikesPerBeat: 1,
      ...((known === 'marks' || known === 'all') && { marks }),
    },
    drive: { ...((known === 'energy' || known === 'all') && { energy }), ...(hears && { loudness }) },
    builds: hears ? builds : [],
  }
}
