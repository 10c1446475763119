import { shortCall } from '#engine/anotherBike/spokenOnBike.ts'
import { withoutCall } from '#engine/cues/withoutCall.ts'
import { withoutName } from '#engine/cues/withoutName.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import type { LedgerEntry, PlayedBlock } from '#engine/played.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { isInside } from '#plan/cueStart.ts'
import { itemName, sectionName } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { clock, duration } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
  const song = newSong && state.phase !== 'leadIn' ? shortened(tell(sectionName(ride, ride.sections[played.section]!))) : undefined
  const block = shortened(tell(itemName(played.block)))
  const counts = state.countsLeft
  return {
    texts: {
      nextWhen:
        counts !== undefined && counts <= COUNT_IN && state.held === undefined ? words.leading.inCounts({ counts }) : words.leading.next,
      nextName: song === undefined ? block : words.leading.ofSong({ song, block }),
      nextRest: restOf(led, played, newSong, isSaid(led, state, next.block)),
      nextTime: `${lengthOf(led, played)} · ${clock(startsAt(played, state))}`,
    },
    soon: state.eights ? state.eights.left <= SOON_EIGHTS : next.in <= SOON_SECONDS,
  }
}

/** ", three quarters on (1½), right foot leads — “Up light.”" */
function restOf({ ride, report }: LedClass, played: PlayedBlock, newSong: boolean, said: boolean): string {
  const { index, block, ledger, foot, footSpoken } = played
  const call = saysTotal(ledger) ? ledger.call : words.leading.callTo({ call: ledger.call, total: tell(ledger.total) })
  const side = foot && footSpoken && !newSong ? `, ${words.leading.footLeads({ foot })}` : ''
  const speech = speechOf(ride)
  const own = report.cues.lines.filter((line) => line.block === index)
  const spoken = (own.find((line) => !isInside(line)) ?? own[0])?.cue.text.trim() ?? ''
  const cue = withoutName(withoutCall(spoken, shortCall(ledger), speech), tell(itemName(block)), speech)
  return `, ${call}${side}${cue && !said ? ` — ${words.leading.quote({ words: cue })}` : ''}`
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
const saysTotal = ({ form }: LedgerEntry): boolean => form === 'total' || form === 'byFeel' || form === 'allOff'

function lengthOf({ report }: LedClass, { section, countFrom, countTo, from, to }: PlayedBlock): string {
  const counts = countFrom === undefined || countTo === undefined ? Number.NaN : countTo - countFrom
  return Number.isInteger(counts) ? words.measures.eights(counts, report.sections[section]!.unit.eight) : duration(to - from)
}

function atEnd({ report, ride }: LedClass, { phase, total }: LeadState): NextWords {
  const nothing = { nextWhen: '', nextName: '', nextRest: '', nextTime: '' }
  if (phase === 'finished' || phase === 'clearUp') return { texts: nothing, soon: false }
  // A hold that goes on puts this off as well.
  const end = (report.sections.at(-1)?.to ?? 0) + total - report.overall.total
  const name = ride.clearUpSeconds > 0 ? words.leading.wipeDownNext : words.leading.theEnd
  return { texts: { ...nothing, nextWhen: words.leading.next, nextName: name, nextTime: clock(end) }, soon: false }
}
