import type { Block, Resistance, Ride, Section } from '#plan/model.ts'
import { keptCalls } from './keptCalls.ts'
import { type Led, type LedItem, type LedSection, type Plan, sectionOf } from './led.ts'
import { type LedTimes, ledTimes } from './ledTimes.ts'
import type { WordsAnew } from './wordsAnew.ts'

const AS_PLANNED: WordsAnew = new Map()

/**
 * The class as it comes, written as a ride: songs that are gone are missing, what is repeated,
 * held or shortened stands there as such, and lead-ins are as long as they were heard, so that
 * the timeline of this ride is the class clock. Totals stay what was planned; the calls that lead
 * to them are worded anew. With nothing led otherwise it is the very ride of the plan.
 *
 * @param words texts of cues that are said otherwise, by block as they come
 */
export function ledRide(plan: Plan, led: Led, words: WordsAnew = AS_PLANNED): Ride {
  const { ride } = plan
  const times = ledTimes(plan, led)
  const calls = keptCalls(plan, led)
  let next = 0
  const sections = led.sections.map((section, i) => {
    const leadIn = leadInOf(plan, section, times, i)
    const anew = section.items.map((_, item) => words.get(next + item))
    next += section.items.length
    const asPlanned =
      !section.changed && section.items.every(({ planned }, item) => calls.led[i]![item] === calls.planned[planned] && !anew[item])
    if (!asPlanned) return written(plan, section, { calls: calls.led[i]!, words: anew }, leadIn)
    const own = sectionOf(plan, section)
    return leadIn === own.leadInSeconds ? own : { ...own, leadInSeconds: leadIn }
  })
  const same = sections.length === ride.sections.length && sections.every((section, i) => section === ride.sections[i])
  const briefing = briefingOf(plan, times)
  if (same && led.clearUp === ride.clearUpSeconds && briefing === ride.briefingSeconds) return ride
  return { ...ride, briefingSeconds: briefing, clearUpSeconds: led.clearUp, sections }
}

/** The briefing as long as it was: a first song heard before its end ends it. */
const briefingOf = ({ ride }: Plan, [first]: readonly LedTimes[]): number =>
  first ? Math.min(ride.briefingSeconds, first.one) : ride.briefingSeconds

/** The lead-in that puts count one where it was heard; the one it has where nothing was. */
function leadInOf(plan: Plan, { one, leadIn }: LedSection, times: readonly LedTimes[], index: number): number {
  if (one === undefined) return leadIn
  return one - (times[index - 1]?.end ?? briefingOf(plan, times))
}

/** What is said of a section's items, by item. */
interface Said {
  calls: readonly Resistance[]
  words: readonly (ReadonlyMap<string, string> | undefined)[]
}

/** A section with its blocks one by one as they come, sets played out. */
function written(plan: Plan, led: LedSection, { calls, words }: Said, leadInSeconds: number): Section {
  const section = sectionOf(plan, led)
  const times = new Map<number, number>()
  const blocks = led.items.map((item, i) => {
    const time = (times.get(item.planned) ?? 0) + 1
    times.set(item.planned, time)
    return withWords(writtenBlock(plan, led, item, calls[i]!, time), words[i])
  })
  return { ...section, leadInSeconds, ...endOf(section, led), blocks }
}

/** Where the music ends: an out-point in counts, or the length of a song without beats. */
function endOf({ song, inCount = 0 }: Section, { counted, end }: LedSection): Partial<Section> {
  if (counted) return { outCount: inCount + end }
  return song ? { song: { ...song, lengthSeconds: end } } : {}
}

/** Lengths nearer than this are one. */
const SAME = 1e-9

function writtenBlock({ report }: Plan, { counted }: LedSection, item: LedItem, resistance: Resistance, time: number): Block {
  const { block, set, countFrom = 0, countTo = 0 } = report.blocks[item.planned]!
  const drafted = counted ? countTo - countFrom : secondsOf(block)
  const length = Math.abs(item.length - drafted) < SAME ? block.length : counted ? { counts: item.length } : { seconds: item.length }
  const played = [...(set ? [`r${set.round}`] : []), ...(time > 1 ? [`t${time}`] : [])]
  if (played.length === 0) return { ...block, length, resistance }
  const own = (id: string) => [id.slice(0, 48), ...played].join('.')
  return { ...block, id: own(block.id), cues: block.cues.map((cue) => ({ ...cue, id: own(cue.id) })), length, resistance }
}

/** The block with cues said otherwise. */
function withWords(block: Block, words: ReadonlyMap<string, string> | undefined): Block {
  if (!words) return block
  return { ...block, cues: block.cues.map((cue) => ({ ...cue, text: words.get(cue.text) ?? cue.text })) }
}

const secondsOf = ({ length }: Block): number => ('seconds' in length ? length.seconds : Number.NaN)
