import type { CueLine } from '#engine/cues/placeCues.ts'
import { inSpokenOrder } from '#engine/cues/spokenOrder.ts'
import { withoutCall } from '#engine/cues/withoutCall.ts'
import { withoutName } from '#engine/cues/withoutName.ts'
import { shortTotal } from '#engine/ledger/sayCall.ts'
import { sayOwnTotal } from '#engine/ledger/sayOwnTotal.ts'
import type { LedgerEntry, PlayedBlock, SectionReport } from '#engine/played.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { formatEightsInput } from '#units/formatEights.ts'
import { clock, effortRange } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { cadenceWords } from './cadenceWords.ts'
import type { Row, SongClock } from './contents.ts'
import { handOverOf, type LeadHands } from './handOver.ts'
import { moveWords } from './moveWords.ts'
import { sentence, stopped } from './sentence.ts'

interface RowSource {
  ride: Ride
  section: SectionReport
  block: PlayedBlock
  /** What is said of the block, by its start. */
  lines: readonly CueLine[]
  /** The change before it in the same section. */
  before: PlayedBlock | undefined
  songClock: SongClock
  /** Id of the leader the sheet is made for. */
  reader?: string
  hands: LeadHands
}

/** One change as it stands on the sheet. */
export function rowOf({ ride, section, block: played, lines, before, songClock, reader, hands }: RowSource): Row {
  const { block, ledger } = played
  const roles = rolesOf(ride, block)
  const spoken = spokenWords(block, lines)
  return {
    id: `${played.index}`,
    rideClock: clock(played.from),
    songClock: clock(songClock === 'left' ? Math.max(0, section.to - played.from) : played.sectionFrom),
    length: lengthOf(played, section),
    posture: block.posture,
    hands: block.hands,
    total: tell(ledger.reading?.small ?? shortTotal(ledger.total)),
    ...callAndWords(spoken, tell(itemName(block)), ledger, speechOf(ride)),
    mine: reader === undefined || roles.leads === reader,
    // What changes hands with the song stands in its head.
    handOver: before && hands === 'change' ? handOverOf(ride, roles, rolesOf(ride, before.block), reader) : undefined,
    foot: before && played.footSpoken && played.foot ? played.foot : undefined,
    effort: block.effort,
    level: effortRange(block.effort),
    name: tell(itemName(block)),
    notes: notesOf(ride, played, before),
    feel: feelOf(block, ledger, spoken),
    easier: block.easier && !saysAlready(spoken, block.easier.text) ? block.easier.text : undefined,
    water: block.water === true,
  }
}

/** The block's own words for it; on another bike, where a total is only about right, at least those of the scale. */
function feelOf({ feel }: Block, { reading }: LedgerEntry, spoken: string): string | undefined {
  return feel && !saysAlready(spoken, feel) ? feel : reading && tell(reading.feel)
}

function lengthOf({ countFrom, countTo, from, to }: PlayedBlock, section: SectionReport): string {
  const counts = countFrom === undefined || countTo === undefined ? Number.NaN : countTo - countFrom
  return Number.isInteger(counts) ? formatEightsInput(counts, section.unit.eight) : clock(to - from)
}

/** Round, move, cadence where it leaves the one before, who leads, and what else changes the room. */
function notesOf(ride: Ride, played: PlayedBlock, before: PlayedBlock | undefined): string[] {
  const { block, set, cadence } = played
  const name = tell(itemName(block))
  const spoken = cadenceWords(cadence)
  const said = [
    set && set.part === 1 && set.set.rounds > 1 ? words.printed.round({ round: set.round, of: set.set.rounds }) : undefined,
    block.move && moveWords(block.move, name),
    before && spoken !== cadenceWords(before.cadence) ? spoken : undefined,
    block.allOut ? words.printed.allOut : undefined,
    block.walk ? words.printed.walk : undefined,
    ledgerCheck(played, ride),
    tell(sayOwnTotal(played, ride.bike)) || undefined,
  ]
  return said.filter((word) => word !== undefined)
}

/** The checkpoint riders are told: "you should be at". */
function ledgerCheck({ ledger }: PlayedBlock, ride: Ride): string | undefined {
  const { checkpoint, reading } = ledger
  if (reading?.checkpoint) return words.printed.beAt({ range: tell(reading.checkpoint) })
  return checkpoint && words.printed.beAt({ range: words.measures.settingRange(checkpoint, ride.bike.stepsPerUnit) })
}

/** Longest call that keeps to its column: "+1½", "stay", "all off". */
const LONGEST_CALL = 7

/** The call in its column or, where it is longer, before the words, and the words beside it, which follow the block's name. */
function callAndWords(spoken: string, name: string, ledger: LedgerEntry, speech: Speech): Pick<Row, 'call' | 'words' | 'shortWords'> {
  const { call } = ledger
  const change = tell(ledger.change)
  if (spoken === '')
    return change.length > LONGEST_CALL
      ? { call: '', words: sentence(call), shortWords: sentence(call) }
      : { call: change, words: sentence(call), shortWords: '' }
  const long = withoutName(spoken, name, speech)
  const shortWords = withoutName(withoutCall(spoken, call, speech), name, speech)
  if (change.length <= LONGEST_CALL) return { call: change, words: long, shortWords }
  return { call: '', words: `${change}. ${long}`.trim(), shortWords: `${change}. ${shortWords}`.trim() }
}

/** The words of a block in the order they are said; empty where nothing is written. */
const spokenWords = ({ cues }: Block, lines: readonly CueLine[]): string =>
  inSpokenOrder(cues, lines)
    .map(withCountIn)
    .filter((text) => text !== '')
    .join(' ')

/** True where the spoken words hold the option or the feel already ("Option: stay seated."). */
const saysAlready = (spoken: string, text: string): boolean => spoken.toLowerCase().includes(text.trim().toLowerCase())

/** What a cue says, and that it is counted in; a count that is written out already is not said again. */
function withCountIn({ text, count }: Cue): string {
  const said = text.trim()
  if (count === undefined || COUNTED_OUT.test(said)) return said
  const countIn = words.printed.countIn({ counts: count })
  return said === '' ? countIn : `${stopped(said)} ${countIn}`
}

/** "four, three, two", "4 3 2", "vier, drei, zwei" */
const COUNTED_OUT = /\b(?:four|vier|4)\W+(?:three|drei|3)\W+(?:two|zwei|2)\b/i
