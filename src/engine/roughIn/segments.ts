import type { Loudness } from '#engine/loudness/meanLoudness.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import { heardBuild, heardForm } from './heardForm.ts'
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import { pick, type Random } from './seededRandom.ts'
import type { Stretch } from './stretches.ts'

/** How long the quieter and the louder stretches of a song without marks are taken to be, one of each for a song. */
export interface Form {
  down: readonly Seconds[]
  up: readonly Seconds[]
  /** The quiet stretch a song begins with, where it is shorter than the others. */
  opening?: Seconds
}

/** A block in which the next one can be called in peace (common practice). */
export const SHORTEST_BLOCK: Seconds = 10
/** Parts that build towards the next (common practice). */
const BUILDING = /\b(?:build|build-up|buildup|aufbau|rise|riser|pre-chorus)\b/i
/** Parts of a song that are sung or played out (common practice). */
const LOUD = /\b(?:chorus|hook|drop|peak|refrain|climax|solo)\b/i

/**
 * A song's form: its section marks where it has some on whole eights, else its louder and quieter phrases where its
 * loudness is known and differs, else verses and choruses of whole phrases, as most songs for such rooms have them
 * (common practice). Together they are as many eights as there are to fill, and they end with a quieter one.
 */
export function segmentsOf(stretch: Stretch, eights: number, form: Form, random: Random, loudness?: Loudness): SongForm {
  const { eightSeconds } = stretch
  const shortest = Math.max(PHRASE_EIGHTS, Math.ceil(SHORTEST_BLOCK / eightSeconds))
  const laid = (segments: Segment[]) => easingOut(merged(segments, shortest), shortest)
  const own = marked(stretch, eights)
  if (own) return { segments: laid(loudness ? withBuilds(own, stretch, loudness) : own), known: 'marks' }
  // Drawn either way, so that what is heard of one song changes no other.
  const usual = guessed(eights, eightSeconds, form, random)
  const heard = loudness ? heardForm(stretch, eights, loudness) : null
  return heard ? { segments: laid(heard), known: 'sound' } : { segments: laid(usual) }
}

/** The quieter and louder stretches of a song, and what they are known by; nothing where they are what most songs have. */
interface SongForm {
  segments: Segment[]
  known?: 'marks' | 'sound'
}

function marked({ section, eightAmount }: Stretch, eights: number): Segment[] | null {
  const { song, inCount = 0 } = section
  if (!song?.grid || eightAmount !== eightOf(song.grid)) return null
  const starts = (song.marks ?? [])
    .map(({ count, label }) => ({ at: (count - inCount) / eightAmount, up: isLoud(label), builds: BUILDING.test(label) }))
    .filter(({ at }) => Number.isInteger(at) && at >= 0 && at < eights)
    .sort((a, b) => a.at - b.at)
  if (starts.length < 2 || !starts.some(({ up }) => up)) return null
  const all = starts[0]!.at === 0 ? starts : [{ at: 0, up: false, builds: false }, ...starts]
  return all
    .map(({ at, up, builds }, index): Segment => {
      const size = (all[index + 1]?.at ?? eights) - at
      return { eights: size, up, ...(builds && { build: size }) }
    })
    .filter((segment) => segment.eights > 0)
}

/** Marks say where a song is loud, its sound where it builds towards that. */
function withBuilds(segments: readonly Segment[], stretch: Stretch, loudness: Loudness): Segment[] {
  let from = 0
  return segments.map((segment, index) => {
    const to = from + segment.eights
    const build = !segment.up && !segment.build && segments[index + 1]?.up ? heardBuild(stretch, from, to, loudness) : 0
    from = to
    return build > 0 ? { ...segment, build } : segment
  })
}

const isLoud = (label: string): boolean => LOUD.test(label) && !BUILDING.test(label)

function guessed(eights: number, eightSeconds: Seconds, form: Form, random: Random): Segment[] {
  const phrases = (seconds: Seconds) => Math.max(1, Math.round(seconds / eightSeconds / PHRASE_EIGHTS)) * PHRASE_EIGHTS
  const verse = phrases(pick(random, form.down))
  const chorus = phrases(pick(random, form.up))
  const opening = form.opening === undefined ? verse : phrases(form.opening)
  const segments: Segment[] = []
  let left = eights
  for (let up = false; left > 0; up = !up) {
    const size = Math.min(left, up ? chorus : left === eights ? Math.min(verse, opening) : verse)
    segments.push({ eights: size, up })
    left -= size
  }
  return segments
}

/** Neighbours of a kind are one segment, and what is too short belongs to the segment before it, or at the start to the one after. */
function merged(segments: readonly Segment[], shortest: number): Segment[] {
  const result: Segment[] = []
  for (const segment of segments) {
    const before = result.at(-1)
    if (before && (before.up === segment.up || segment.eights < shortest)) result[result.length - 1] = joinedTo(before, segment)
    else if (before && before.eights < shortest) result[result.length - 1] = { eights: before.eights + segment.eights, up: segment.up }
    else result.push({ ...segment })
  }
  return result
}

/** Two segments as one of the first one's kind; it builds where the second one does to its end. */
function joinedTo({ eights, up, build: first = 0 }: Segment, segment: Segment): Segment {
  const { build = 0 } = segment
  const rising = build === segment.eights ? first + build : build
  return { eights: eights + segment.eights, up, ...(!up && rising > 0 && { build: rising }) }
}

/** Riders come down before the next song is called. */
function easingOut(segments: Segment[], shortest: number): Segment[] {
  const last = segments.at(-1)
  if (!last?.up) return segments
  const ease = Math.ceil(shortest / PHRASE_EIGHTS) * 2 * PHRASE_EIGHTS
  if (last.eights < ease + shortest) return merged([...segments.slice(0, -1), { eights: last.eights, up: false }], shortest)
  return [...segments.slice(0, -1), { ...last, eights: last.eights - ease }, { eights: ease, up: false }]
}
