import type { Constants } from '#engine/constants.ts'
import { blockOfPattern } from '#engine/cues/blockOfPattern.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import type { NewId } from '#plan/copies.ts'
import { type Block, type Item, type Ride, type Section, tempoOf } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import type { KnobSteps, Rpm, Seconds } from '#units/units.ts'
import { type Chunk, isRounds, type Planned, steadier } from './chunks.ts'
import type { Stretch } from './stretches.ts'
import type { TotalFinder } from './totals.ts'

interface Making {
  ride: Ride
  rules: Constants
  totalFor: TotalFinder
  newId: NewId
}

/** A song filled with blocks, and the total it leaves riders at. */
interface Filled {
  blocks: Item[]
  total: KnobSteps | null
}

/**
 * The blocks of one song: patterns at their lengths, with the resistance that brings their effort
 * for the rider the class is judged for. The clock's odd seconds go to the last block outside rounds.
 *
 * @param before the total the song is entered at; null at the start of the ride
 */
export function makeBlocks(stretch: Stretch, planned: readonly Planned[], before: KnobSteps | null, making: Making): Filled {
  let total = before
  const make = (chunk: Chunk, extra: string, rest: number): Block => {
    const made = madeBlock(chunk, stretch, extra, rest, total, making)
    total = made.total
    return made.block
  }
  const lastPlain = planned.findLastIndex((one) => !isRounds(one))
  const blocks = planned.map((one, index): Item => {
    const rest = index === lastPlain ? stretch.rest : 0
    if (!isRounds(one)) return make(one, comingAfter(planned[index + 1]), rest)
    const parts = one.parts.map((part) => make(part, '', 0))
    return { id: making.newId(), label: 'pushes', rounds: one.rounds, parts }
  })
  return { blocks, total }
}

/** Words on the block before rounds: how many are coming. */
function comingAfter(next: Planned | undefined): string {
  if (!next || !isRounds(next)) return ''
  const words = `${numberWords(next.rounds)} pushes`
  return ` ${words[0]!.toUpperCase()}${words.slice(1)} to come.`
}

function madeBlock(
  chunk: Chunk,
  stretch: Stretch,
  extra: string,
  rest: number,
  before: KnobSteps | null,
  making: Making,
): { block: Block; total: KnobSteps } {
  const { section, eightAmount } = stretch
  const { ride, rules, totalFor, newId } = making
  const pattern = PATTERNS.find(({ id }) => id === chunk.pattern)!
  const base = blockOfPattern(pattern, ride, section, newId)
  const amount = chunk.eights * eightAmount + rest
  const leavesBeat = isLeftOffBeat(base, cadenceOf(base, section), rules)
  const rise = chunk.rise ?? 0
  // One total of the knob carries a build: what its middle asks for.
  const middle = chunk.effort + rise / 2
  const draft: Block = {
    ...base,
    ...(leavesBeat && { strikesPerBeat: null, cadence: pattern.cadence }),
    ...(chunk.terrain && { terrain: chunk.terrain }),
    ...(chunk.counts && base.move && { move: { ...base.move, counts: chunk.counts } }),
    ...(chunk.label && { label: chunk.label }),
    ...(chunk.water && { water: true }),
    ...(chunk.swap && section.song?.grid && section.song.strikesPerBeat !== null && { lead: 'swap' as const }),
    length: 'counts' in base.length ? { counts: amount } : { seconds: amount },
    effort: { from: middle, to: middle },
  }
  const rpm = cadenceOf(draft, section)
  const { total, demand } = totalFor(draft, rpm, before)
  // On some bikes what a push needs under it is already more than the level is meant to ride.
  const steady = demand !== null && demand - middle > rules.intentGap ? steadier(chunk) : undefined
  if (steady) return madeBlock(steady, stretch, extra, rest, before, making)
  const settled = demand === null ? middle : settledEffort(middle, demand, rules)
  const effort = { from: settled - rise / 2, to: settled + rise / 2 }
  const hard = effort.to >= rules.hardEffort
  const opening = before === null && stretch.one < ROOM_FOR_WORDS
  const cues = draft.cues.map((cue) => ({
    ...cue,
    ...(opening && { moment: 'action' as const, lead: 'counts' in base.length ? { counts: 0 } : { seconds: 0 } }),
    text: `${cue.text}${draft.lead === 'swap' ? ' Swap the lead foot.' : ''}${hard ? howLong(draft) : ''}${extra}`,
  }))
  const block: Block = {
    ...draft,
    effort,
    resistance: { kind: 'total', from: total, to: total },
    ...(hard && { easier: { text: 'same legs, a little less on the knob' } }),
    cues,
  }
  return { block, total }
}

/** A block that leaves its song's beat: legs roll out in their own time, and nobody stands where the beat is too fast or too slow to stand on. */
function isLeftOffBeat({ terrain, posture }: Block, rpm: Rpm | null, rules: Constants): boolean {
  if (rpm === null) return false
  if (terrain === 'flush') return rpm < ROLLING.from || rpm > ROLLING.to
  return posture !== 'seated' && (rpm < rules.standingMinRpm - 1e-6 || rpm > rules.standingMaxRpm + 1e-6)
}

/** Legs roll out off the beat where it would have them faster or slower than this (common practice). */
const ROLLING: Readonly<{ from: Rpm; to: Rpm }> = { from: 60, to: 90 }

/** With less time before the first song its call comes as the song begins. */
const ROOM_FOR_WORDS: Seconds = 8

function cadenceOf({ cadence, strikesPerBeat }: Block, { song }: Section): Rpm | null {
  if (cadence === 'legsStill') return null
  if (cadence) return cadence.rpm
  const strikes = strikesPerBeat === undefined ? (song?.strikesPerBeat ?? null) : strikesPerBeat
  return song?.grid && strikes !== null ? (tempoOf(song.grid) * strikes) / 2 : null
}

/** A draft plans what the bike then asks where the two are far apart, without making work or a hard bout of what was none. */
function settledEffort(wanted: number, demand: number, rules: Constants): number {
  if (Math.abs(demand - wanted) <= rules.intentGap - 0.1) return wanted
  const near = Math.round((demand > wanted ? demand - 1 : demand + 1) * 2) / 2
  const ceiling =
    wanted < rules.easyEffort
      ? rules.easyEffort
      : wanted < rules.workEffort
        ? rules.workEffort - 0.5
        : wanted < rules.hardEffort
          ? rules.hardEffort - 0.5
          : 10
  return Math.max(0, Math.min(near, ceiling))
}

/** " Thirty-two counts.", as leaders say how long. */
function howLong({ length }: Block): string {
  const words = 'counts' in length ? `${numberWords(length.counts)} counts` : `${numberWords(Math.round(length.seconds))} seconds`
  return ` ${words[0]!.toUpperCase()}${words.slice(1)}.`
}
