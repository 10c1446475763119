import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { isSet, type Ride, tempoOf } from '#plan/model.ts'
import { joinWords, nameOfSection } from '#plan/names.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'
import type { Arc } from './arc.ts'
import type { SongDraft } from './draftSongs.ts'
import { labelOf } from './words/labels.ts'
import { movesIn, sayRidden } from './words/sayRidden.ts'

/** What a draft is made of and why, in three sentences and what is to be seen to besides; then a line for each song. */
export function sayDraft(ride: Ride, arc: Arc, drafts: readonly SongDraft[]) {
  const sections = drafts.map(({ index }) => index)
  return {
    arc: [sayShape(ride, arc), sayPeak(ride, arc), sayGround(ride, arc, sections), ...sayRoom(ride)],
    songs: drafts.map((draft) => ({ sectionId: draft.stretch.section.id, text: saySong(ride, draft, arc) })),
  }
}

function sayShape(ride: Ride, { warmUpEnd, coolDownStart, waves }: Arc): string {
  const { total } = layTimeline(ride)
  const end = total - ride.clearUpSeconds
  const work = waves === 0 ? 'steady riding' : waves === 1 ? 'one wave of work' : `${waves} waves of work, each higher than the one before`
  return `Warm-up of ${formatDuration(warmUpEnd - ride.briefingSeconds)}, ${work}, and a cool-down of ${formatDuration(end - coolDownStart)}: what ${ride.level === 'advanced' ? 'an' : 'a'} ${ride.level} class of ${ride.slotMinutes} minutes needs at either end.`
}

/** Where the hardest work is and where riders come down before it. */
function sayPeak(ride: Ride, { places }: Arc): string {
  const { total, sections } = layTimeline(ride)
  const end = total - ride.clearUpSeconds
  const share = (at: Seconds) => `${Math.round((100 * (at - ride.briefingSeconds)) / Math.max(1, end - ride.briefingSeconds))} %`
  const named = (index: number) => `“${nameOfSection(ride, ride.sections[index]!)}”`
  const rests = places.flatMap(({ role }, index) => (role === 'recovery' ? [index] : []))
  const finish = places.findIndex(({ role }) => role === 'finish')
  const easy = joinWords(rests.map((index) => `${named(index)} at ${share((sections[index]!.one + sections[index]!.to) / 2)}`))
  if (finish < 0)
    return rests.length > 0 ? `Riders come down in ${easy} of the class.` : 'No song is a finish: the songs of work are too few for one.'
  const peak = `The finish is ${named(finish)}, which ends at ${share(sections[finish]!.to)} of the class, late enough to be the peak and early enough to come down from`
  return rests.length > 0
    ? `${peak}; ${easy} ${rests.length === 1 ? 'is' : 'are'} ridden easy, so that riders reach it with legs left.`
    : `${peak}.`
}

/** What decides the ground, what is taught, and what only the finish has. */
function sayGround(ride: Ride, { places }: Arc, drafted: readonly number[]): string {
  const counted = drafted.filter((index) => ride.sections[index]!.song?.grid)
  const onBeat = counted.filter((index) => ride.sections[index]!.song!.strikesPerBeat !== null).length
  const beat =
    onBeat === drafted.length
      ? 'every song is ridden on its beat'
      : onBeat === 0
        ? 'the songs are ridden off the beat'
        : `${onBeat} of ${drafted.length} songs are ridden on the beat`
  const moves = joinWords([...new Set(drafted.flatMap((index) => movesIn(ride.sections[index]!)))])
  const taught = moves === '' ? '' : `; ${moves} are shown plainly first and added to later`
  const finish = places.findIndex(({ role }) => role === 'finish')
  const own = finish < 0 || !drafted.includes(finish) ? undefined : signatureOf(ride, finish)
  const ground =
    counted.length === 0
      ? 'No tempo is known, so variety decides what is climbed, run, or pushed, and every cadence is stated'
      : `Tempo decides what is climbed, run, or pushed: ${beat}`
  return `${ground}${taught}${own ? `; the finish ends on a ${own} that no other song has` : ''}.`
}

/** What is ridden in one section alone, hardest last. */
function signatureOf(ride: Ride, finish: number): string | undefined {
  const labels = (index: number) => ride.sections[index]!.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])).map(labelOf)
  const others = new Set(ride.sections.flatMap((_, index) => (index === finish ? [] : labels(index))))
  return labels(finish).findLast((label) => !others.has(label) && /climb|run|push|surge/.test(label))
}

function sayRoom(ride: Ride): string[] {
  const slack = ride.slotMinutes * 60 - layTimeline(ride).total
  if (slack < -0.5) return [`The songs are ${formatDuration(-slack)} longer than the slot; take one out, or let some end earlier.`]
  return slack > 150 ? [`The songs leave ${formatDuration(slack)} of the slot open; there is room for another one.`] : []
}

/** A song by what is ridden in it, so that it never says otherwise. */
function saySong(ride: Ride, draft: SongDraft, arc: Arc): string {
  const { part, index, energy } = draft
  const section = ride.sections[index]!
  const { role } = arc.places[index]!
  const place = `${role === 'finish' ? ', the finish' : role === 'warmUp' ? ', to warm up' : ''}${energy === undefined ? '' : `, energy ${energy} of 5`}`
  const what = `${nameOfSection(ride, section)}: ${role === 'recovery' ? 'recovery, ' : ''}${sayRidden(section)}${place}`
  const before = new Set(ride.sections.slice(0, index).flatMap(movesIn))
  const news = joinWords(movesIn(section).filter((move) => !before.has(move)))
  const said = `${news === '' ? '' : ` New here: ${news}.`}${sayForm(draft)}`
  const grid = section.song?.grid
  if (!grid) return `${what}; cadence stated, as no tempo is known.${said}`
  if (part.strikes === null)
    return `${what}; off the beat, because ${formatNumber(tempoOf(grid), 1)} bpm gives no cadence that suits it.${said}`
  return `${what}, ${formatNumber((tempoOf(grid) * part.strikes) / 2, 0)} rev/min ${STRIKES[part.strikes]}.${said}`
}

/** A stretch this long has room for a story (common practice). */
const STORY_ROOM: Seconds = 20

/** Where in the song it is loud, and where quiet for long, by the song's own clock. */
function sayForm({ form, stretch: { section, eightSeconds } }: SongDraft): string {
  if (!form) return ''
  const { song, inCount = 0 } = section
  let at = song?.grid ? secondAt(song.grid, inCount) : 0
  const laid = form.map((segment) => {
    const from = at
    at += segment.eights * eightSeconds
    return { ...segment, from, seconds: at - from }
  })
  const loud = laid.filter(({ up }) => up).map(({ from }) => formatClock(Math.round(from)))
  const quiet = laid.filter(({ up, seconds }) => !up && seconds >= STORY_ROOM).sort((a, b) => b.seconds - a.seconds)[0]
  const story = quiet ? `; quiet longest from ${formatClock(Math.round(quiet.from))}, with room for a story` : ''
  return loud.length === 0 ? '' : ` It is loud from ${joinWords(loud)}, where the work is${story}.`
}

const STRIKES = { 0.5: 'on every other beat', 1: 'on the beat', 2: 'at double time' } as const
