import { shortCall } from '#engine/anotherBike/spokenOnBike.ts'
import { withoutCall } from '#engine/cues/withoutCall.ts'
import { withoutName } from '#engine/cues/withoutName.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { isInside } from '#plan/cueStart.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Seconds } from '#units/units.ts'
import type { NextSlot } from './view.ts'

interface NextWords {
  texts: Record<NextSlot, string>
  soon: boolean
}

/** The change is near: two eights, without beats eight seconds. */
const SOON_EIGHTS = 2
const SOON_SECONDS: Seconds = 8
/** Counts that are counted in. */
const COUNT_IN = 4

/** What comes next, with its call, its length and its time. */
export function nextWords(led: LedClass, state: LeadState): NextWords {
  const { ride, report } = led
  const { next } = state
  if (!next) return atEnd(led, state)
  const played = report.blocks[next.block]!
  const newSong = played.section !== state.section || state.phase === 'leadIn'
  const song = newSong && state.phase !== 'leadIn' ? `“${shortened(nameOfSection(ride, ride.sections[played.section]!))}”: ` : ''
  const counts = state.countsLeft
  return {
    texts: {
      nextWhen: counts !== undefined && counts <= COUNT_IN && state.held === undefined ? `in ${counts}` : 'then',
      nextName: `${song}${shortened(nameOfItem(played.block))}`,
      nextRest: restOf(led, played, newSong, isSaid(led, state, next.block)),
      nextTime: `${lengthOf(led, played)} · ${formatClock(startsAt(played, state))}`,
    },
    soon: state.eights ? state.eights.left <= SOON_EIGHTS : next.in <= SOON_SECONDS,
  }
}

/** ", three quarters on to 1½, right foot — “Up light.”" */
function restOf({ report }: LedClass, { index, block, ledger, foot, footSpoken }: PlayedBlock, newSong: boolean, said: boolean): string {
  const call =
    ledger.call === 'stay' ? `stay at ${ledger.total}` : saysTotal(ledger.call) ? ledger.call : `${ledger.call}, to ${ledger.total}`
  const side = foot && footSpoken && !newSong ? `, ${foot} foot leads` : ''
  const own = report.cues.lines.filter((line) => line.block === index)
  const spoken = (own.find((line) => !isInside(line)) ?? own[0])?.cue.text.trim() ?? ''
  const words = withoutName(withoutCall(spoken, shortCall(ledger)), nameOfItem(block))
  return `, ${call}${side}${words && !said ? ` — “${words}”` : ''}`
}

/** When the next block begins; while something is held, at the soonest. */
const startsAt = ({ from }: PlayedBlock, { at, held, next }: LeadState): Seconds => (held === undefined ? from : at + next!.in)

/** Characters of a name, so that the call after it is never what is cut. */
const LONGEST_NAME = 32

/** A name up to the last whole word that fits. */
function shortened(name: string): string {
  const characters = [...name]
  if (characters.length <= LONGEST_NAME) return name
  const cut = characters.slice(0, LONGEST_NAME).join('')
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), LONGEST_NAME / 2)).trimEnd()}…`
}

/** Words that are due stand large already. */
const isSaid = ({ report }: LedClass, { cue }: LeadState, next: number): boolean =>
  cue !== undefined && report.cues.lines[cue]!.block === next

/** Calls that say the total themselves. */
const saysTotal = (call: string): boolean => call.startsWith('to ') || call.startsWith('by feel') || call === 'all off'

function lengthOf({ report }: LedClass, { section, countFrom, countTo, from, to }: PlayedBlock): string {
  const counts = countFrom === undefined || countTo === undefined ? Number.NaN : countTo - countFrom
  return Number.isInteger(counts) ? formatEights(counts, report.sections[section]!.unit.eight) : formatDuration(to - from)
}

function atEnd({ report, ride }: LedClass, { phase, total }: LeadState): NextWords {
  const nothing = { nextWhen: '', nextName: '', nextRest: '', nextTime: '' }
  if (phase === 'finished' || phase === 'clearUp') return { texts: nothing, soon: false }
  // A hold that goes on puts this off as well.
  const end = (report.sections.at(-1)?.to ?? 0) + total - report.overall.total
  const name = ride.clearUpSeconds > 0 ? 'clear up' : 'the end'
  return { texts: { ...nothing, nextWhen: 'then', nextName: name, nextTime: formatClock(end) }, soon: false }
}
