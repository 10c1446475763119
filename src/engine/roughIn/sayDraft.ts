import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { secondAt } from '#plan/beatGrid.ts'
import { type Ride, tempoOf } from '#plan/model.ts'
import { joinWords, nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'
import type { Arc } from './arc.ts'
import { isRounds } from './chunks.ts'
import type { SongDraft } from './roughIn.ts'
import type { Style } from './styles.ts'

/** What a draft is made of, in words. */
export function sayDraft(ride: Ride, arc: Arc, drafts: readonly SongDraft[]) {
  return {
    arc: sayArc(ride, arc),
    songs: drafts.map((draft) => ({ sectionId: draft.stretch.section.id, text: saySong(ride, draft, arc) })),
  }
}

function sayArc(ride: Ride, { warmUpEnd, coolDownStart, waves, places }: Arc): string[] {
  const { total, sections } = layTimeline(ride)
  const end = total - ride.clearUpSeconds
  const rests = places.flatMap(({ role }, index) => (role === 'recovery' ? [sections[index]!] : []))
  const finish = places.findIndex(({ role }) => role === 'finish')
  const share = (at: number) => `${Math.round((100 * (at - ride.briefingSeconds)) / Math.max(1, end - ride.briefingSeconds))} %`
  const slack = ride.slotMinutes * 60 - total
  return [
    `Warm-up of ${formatDuration(warmUpEnd - ride.briefingSeconds)}, ${waves === 1 ? 'one wave' : `${waves} waves`} of work, cool-down of ${formatDuration(end - coolDownStart)}.`,
    ...rests.map(({ one, to }) => `A recovery song at ${share((one + to) / 2)} of the class.`),
    ...(finish < 0 ? [] : [`The finish is the song that ends at ${share(sections[finish]!.to)}.`]),
    ...(slack < -0.5 ? [`The songs are ${formatDuration(-slack)} longer than the slot; take one out, or let some end earlier.`] : []),
    ...(slack > 150 ? [`The songs leave ${formatDuration(slack)} of the slot open; there is room for another one.`] : []),
  ]
}

const NAMES: Record<Style, string> = {
  climb: 'hill, seated and standing',
  jumps: 'hill with jumps',
  run: 'flat and standing runs',
  tempo: 'tempo',
  surge: 'tempo with surges',
  push: 'pushes with recoveries',
  warmUp: 'warm-up on the flat',
  lowHill: 'warm-up on a low hill',
  recover: 'recovery',
  coolDown: 'roll out',
}

function saySong(ride: Ride, draft: SongDraft, arc: Arc): string {
  const { part, planned, index, energy } = draft
  const { section } = draft.stretch
  const place = `${arc.places[index]!.role === 'finish' ? ', the finish' : ''}${energy === undefined ? '' : `, energy ${energy} of 5`}`
  const hill = part.style === 'jumps' && !planned.some((one) => !isRounds(one) && one.pattern === 'jumps-8')
  const what = `${nameOfSection(ride, section)}: ${hill ? 'seated hill' : NAMES[part.style]}${place}`
  const grid = section.song?.grid
  if (!grid) return `${what}; cadence stated, as no tempo is known.${sayForm(draft)}`
  if (part.strikes === null)
    return `${what}; off the beat, because ${formatNumber(tempoOf(grid), 1)} bpm gives no cadence that suits it.${sayForm(draft)}`
  return `${what}, ${formatNumber((tempoOf(grid) * part.strikes) / 2, 0)} rev/min ${STRIKES[part.strikes]}.${sayForm(draft)}`
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
