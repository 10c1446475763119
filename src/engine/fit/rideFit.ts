import { constantsOf } from '#engine/constants.ts'
import { countingUnit } from '#engine/timeline/countingUnit.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSections } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { quotedSectionName, sectionName } from '#plan/names.ts'
import { countsOf, lastCountOf, secondAt } from '#plan/songs/beatGrid.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { type Choice, cheapestSum, type Picked } from './cheapestSum.ts'
import { type LengthChange, lengthsFor, sayChange, withLengths } from './sectionFit.ts'

/** A song that ends at another phrase, with the blocks that give. */
export interface SongTrim {
  sectionId: string
  name: Text
  from: Counts
  to: Counts
  seconds: Seconds
  blocks: LengthChange[]
  /** In one sentence. */
  text: Text
}

/** One way to end near the slot. */
export interface RideTrim {
  trims: SongTrim[]
  total: Seconds
  /** Slot less total. */
  slack: Seconds
  command: Command
}

type RideFit = ({ ok: true } & RideTrim) | { ok: false; reason: Text; nearest: RideTrim[] }

/** A song cut below this share of what it plays is another song (common practice). */
const LEAST_SHARE = 0.5

interface Way extends Choice {
  trim?: { out: Counts; lengths: ReadonlyMap<string, Counts>; song: SongTrim }
}

/**
 * Ends the ride inside its slot, never over and at most the allowed seconds under, by letting
 * songs end at another phrase (none cut below half of what it plays) and their blocks fill them with the least change (the sum of the
 * section fits' costs). Songs that were cut short may be played longer again. Where no
 * combination ends inside, the nearest on either side, with the reason.
 *
 * @param stays ids of sections that keep their length
 */
export function fitRide(ride: Ride, stays: ReadonlySet<string> = NONE): RideFit {
  const { fitUnder } = constantsOf(ride)
  const slot = ride.slotMinutes * 60
  const { total } = layTimeline(ride)
  const longer = total < slot - fitUnder
  const ways = ride.sections.map((section) => (stays.has(section.id) ? [AS_IT_IS] : waysOf(ride, section, longer)))
  const low = slot - fitUnder - total
  const sums = cheapestSum(ways, low, slot - total)
  const trimOf = (picked: Picked) => rideTrim(ride, ways, picked, slot)
  const inside = sums.inside && trimOf(sums.inside)
  // A crossfade may swallow part of what a song gains or loses; the timeline has the last word.
  if (inside && inside.slack >= -1e-6 && inside.slack <= fitUnder + 1e-6) return { ok: true, ...inside }
  const nearest = [sums.below, sums.above].flatMap((picked) => (picked ? [trimOf(picked)] : []))
  return { ok: false, reason: reasonFor(nearest, fitUnder, ways), nearest }
}

const NONE: ReadonlySet<string> = new Set()
const AS_IT_IS: Way = { seconds: 0, cost: 0 }

/** As it is, and every other phrase end the blocks can fill. */
function waysOf(ride: Ride, section: Section, longer: boolean): Way[] {
  const grid = section.song?.grid
  const counts = countsOf(section)
  if (!grid || counts === null || section.blocks.length === 0) return [AS_IT_IS]
  const { phrase, eight } = countingUnit(section)
  const from = section.inCount ?? 0
  const songEnd = Math.floor((lastCountOf(section.song!, grid) - from) / eight) * eight
  // Phrases count from the song's first beat where the section starts on an eight of it.
  const offset = from % eight === 0 ? from : 0
  const played = playedSeconds(section, grid, from, counts)
  const ways: Way[] = [AS_IT_IS]
  for (let end = Math.floor((songEnd + offset) / phrase) * phrase - offset; end >= counts * LEAST_SHARE && end > 0; end -= phrase) {
    const grows = end > counts
    if (grows !== longer || end === counts) continue
    const fitted = lengthsFor(section, end)
    if (!fitted.ok || fitted.leftOver > 0) continue
    const seconds = secondAt(grid, from + end) - secondAt(grid, from) - played
    const song = songTrim(ride, section, counts, end, seconds, fitted.changes)
    ways.push({ seconds, cost: fitted.cost, trim: { out: from + end, lengths: fitted.lengths, song } })
  }
  return ways
}

/** What the section lasts as it is: to the end of its song's stretch, or of the blocks that run past it. */
function playedSeconds(section: Section, grid: NonNullable<NonNullable<Section['song']>['grid']>, from: Counts, counts: Counts): Seconds {
  let covered = 0
  for (const item of section.blocks) {
    const parts = 'parts' in item ? item.parts : [item]
    const rounds = 'parts' in item ? item.rounds : 1
    for (const { length } of parts) covered += rounds * ('counts' in length ? length.counts : 0)
  }
  return secondAt(grid, from + Math.max(covered, counts)) - secondAt(grid, from)
}

function songTrim(ride: Ride, section: Section, from: Counts, to: Counts, seconds: Seconds, blocks: LengthChange[]): SongTrim {
  const { eight } = countingUnit(section)
  const changes = blocks.map((change) => sayChange(change, eight))
  const text = say('fit.trimmed', { song: quotedSectionName(ride, section), from, to, unit: eight, seconds, changes })
  return { sectionId: section.id, name: sectionName(ride, section), from, to, seconds, blocks, text }
}

function rideTrim(ride: Ride, ways: readonly (readonly Way[])[], { choices }: Picked, slot: Seconds): RideTrim {
  const chosen = new Map(
    choices.flatMap((choice, i) => {
      const { trim } = ways[i]![choice]!
      return trim ? [[ride.sections[i]!.id, trim] as const] : []
    }),
  )
  const apply = (before: Ride): Ride =>
    editSections(before, (section) => {
      const trim = chosen.get(section.id)
      return trim ? { ...withLengths(section, trim.lengths), outCount: trim.out } : section
    })
  const { total } = layTimeline(apply(ride))
  const trims = [...chosen.values()].map(({ song }) => song)
  return { trims, total, slack: slot - total, command: makeCommand(say('fit.fittedRide', { seconds: slot }), apply) }
}

const reasonFor = (nearest: readonly RideTrim[], under: Seconds, ways: readonly (readonly Way[])[]): Text =>
  ways.every(({ length }) => length === 1)
    ? say('fit.nothingGives')
    : say('fit.noneInside', { under, slacks: nearest.map(({ slack }) => slack) })
