import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { isSet, type Ride, tempoOf } from '#plan/model.ts'
import { quotedSectionName, sectionName } from '#plan/names.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import type { Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import type { Arc } from './arc.ts'
import type { SongDraft } from './draftSongs.ts'
import { nameOf } from './words/labels.ts'
import { movesIn, sayMove, sayRidden } from './words/sayRidden.ts'
import type { NameKey } from './words/voice.ts'

/** What a draft is made of and why, in three sentences and what is to be seen to besides; then a line for each song. */
export function sayDraft(ride: Ride, arc: Arc, drafts: readonly SongDraft[]): { arc: Text[]; songs: { sectionId: string; text: Text }[] } {
  const sections = drafts.map(({ index }) => index)
  return {
    arc: [sayShape(ride, arc), sayPeak(ride, arc), sayGround(ride, arc, sections), ...sayRoom(ride)],
    songs: drafts.map((draft) => ({ sectionId: draft.stretch.section.id, text: saySong(ride, draft, arc) })),
  }
}

function sayShape(ride: Ride, { warmUpEnd, coolDownStart, waves }: Arc): Text {
  const end = layTimeline(ride).total - ride.clearUpSeconds
  return say('drafts.shape', {
    warmUp: warmUpEnd - ride.briefingSeconds,
    waves,
    coolDown: end - coolDownStart,
    level: ride.level,
    minutes: ride.slotMinutes,
  })
}

/** Where the hardest work is and where riders come down before it. */
function sayPeak(ride: Ride, { places }: Arc): Text {
  const { total, sections } = layTimeline(ride)
  const end = total - ride.clearUpSeconds
  const share = (at: Seconds) => (at - ride.briefingSeconds) / Math.max(1, end - ride.briefingSeconds)
  const named = (index: number) => quotedSectionName(ride, ride.sections[index]!)
  const rests = places.flatMap(({ role }, index) =>
    role === 'recovery' ? [{ song: named(index), share: share((sections[index]!.one + sections[index]!.to) / 2) }] : [],
  )
  const finish = places.findIndex(({ role }) => role === 'finish')
  if (finish < 0) return rests.length > 0 ? say('drafts.restsOnly', { rests }) : say('drafts.noFinish')
  return say('drafts.peak', { song: named(finish), share: share(sections[finish]!.to), rests })
}

/** What decides the ground, what is taught, and what only the finish has. */
function sayGround(ride: Ride, { places }: Arc, drafted: readonly number[]): Text {
  const counted = drafted.filter((index) => ride.sections[index]!.song?.grid)
  const onBeat = counted.filter((index) => ride.sections[index]!.song!.strikesPerBeat !== null).length
  const finish = places.findIndex(({ role }) => role === 'finish')
  const own = finish < 0 || !drafted.includes(finish) ? undefined : signatureOf(ride, finish)
  return say('drafts.ground', {
    tempoKnown: counted.length > 0,
    onBeat,
    songs: drafted.length,
    moves: [...new Set(drafted.flatMap((index) => movesIn(ride.sections[index]!)))].map(sayMove),
    own: own ? say('drafts.name', { name: own }) : null,
  })
}

/** What may be the mark of a finish. */
const SIGNATURES: ReadonlySet<NameKey> = new Set([
  'seatedClimb',
  'standingClimb',
  'hoverClimb',
  'standingRun',
  'push',
  'standingPush',
  'surge',
  'standingSurge',
])

/** What is ridden in one section alone, hardest last. */
function signatureOf(ride: Ride, finish: number): NameKey | undefined {
  const keys = (index: number) =>
    ride.sections[index]!.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])).flatMap((block) => {
      const name = nameOf(block)
      return 'key' in name ? [name.key] : []
    })
  const others = new Set(ride.sections.flatMap((_, index) => (index === finish ? [] : keys(index))))
  return keys(finish).findLast((key) => !others.has(key) && SIGNATURES.has(key))
}

function sayRoom(ride: Ride): Text[] {
  const seconds = ride.slotMinutes * 60 - layTimeline(ride).total
  if (seconds < -0.5) return [say('drafts.tooLong', { seconds: -seconds })]
  return seconds > 150 ? [say('drafts.stillOpen', { seconds, songs: Math.max(1, Math.round(seconds / USUAL_SONG)) })] : []
}

/** What a song usually lasts, to say how many are missing (common practice). */
const USUAL_SONG: Seconds = 220

/** A song by what is ridden in it, so that it never says otherwise. */
function saySong(ride: Ride, draft: SongDraft, arc: Arc): Text {
  const { part, index, energy } = draft
  const section = ride.sections[index]!
  const { role } = arc.places[index]!
  const before = new Set(ride.sections.slice(0, index).flatMap(movesIn))
  const grid = section.song?.grid
  return say('drafts.song', {
    song: sectionName(ride, section),
    role,
    ridden: sayRidden(section),
    energy: energy ?? null,
    bpm: grid ? tempoOf(grid) : null,
    strikes: part.strikes,
    fresh: movesIn(section)
      .filter((move) => !before.has(move))
      .map(sayMove),
    ...formOf(draft),
  })
}

/** A stretch this long has room for a story (common practice). */
const STORY_ROOM: Seconds = 20

/** Where in the song it is loud, and where quiet for long, by the song's own clock. */
function formOf({ form, stretch: { section, eightSeconds } }: SongDraft): { loud: Seconds[]; story: Seconds | null } {
  if (!form) return { loud: [], story: null }
  const { song, inCount = 0 } = section
  let at = song?.grid ? secondAt(song.grid, inCount) : 0
  const laid = form.map((segment) => {
    const from = at
    at += segment.eights * eightSeconds
    return { ...segment, from, seconds: at - from }
  })
  const quiet = laid.filter(({ up, seconds }) => !up && seconds >= STORY_ROOM).sort((a, b) => b.seconds - a.seconds)[0]
  return { loud: laid.filter(({ up }) => up).map(({ from }) => Math.round(from)), story: quiet ? Math.round(quiet.from) : null }
}
